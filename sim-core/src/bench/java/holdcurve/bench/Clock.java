package holdcurve.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;

/** Times work by the processor time of this thread: other work on the machine counts little. */
public final class Clock {
  private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();
  private static final int REPEATS = 31;
  private static final double WARM_UP = 0.15e9;
  private static final double BATCH = 1e6;

  private Clock() {}

  /** The fastest of many repeats, after a warm-up [µs]. */
  public static double fastest(Runnable work) {
    long start = now();
    int count = 0;
    while (now() - start < WARM_UP) {
      work.run();
      count++;
    }
    int batch = (int) Math.max(1, count * BATCH / WARM_UP);
    double best = Double.POSITIVE_INFINITY;
    for (int repeat = 0; repeat < REPEATS; repeat++) {
      long from = now();
      for (int i = 0; i < batch; i++) {
        work.run();
      }
      best = Math.min(best, (now() - from) / 1e3 / batch);
    }
    return best;
  }

  /** The fastest of a few runs of something long, without a warm-up of its own [s]. */
  public static double fastestOf(int runs, Runnable work) {
    double best = Double.POSITIVE_INFINITY;
    for (int run = 0; run < runs; run++) {
      long from = System.nanoTime();
      work.run();
      best = Math.min(best, (System.nanoTime() - from) / 1e9);
    }
    return best;
  }

  private static long now() {
    return THREADS.getCurrentThreadCpuTime();
  }
}
