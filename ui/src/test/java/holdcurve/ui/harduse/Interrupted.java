package holdcurve.ui.harduse;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.stream.Collectors;

/**
 * Work that was told to stop somewhere on its way.
 *
 * @param wasRunning whether there was still something to stop
 * @param clockMs from then to its end [ms]
 * @param processorMs what the whole process took of the processors meanwhile [ms]
 * @param where what it did when a fifth of a second had gone by; empty if it had ended
 */
record Interrupted(boolean wasRunning, double clockMs, double processorMs, String where) {
  private static final OperatingSystemMXBean SYSTEM =
      (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();

  /** When work told to stop must have ended [ms]. */
  static final int LIMIT_MS = 200;

  /** What no load of the machine excuses [ms]. */
  private static final int LONGEST_MS = 5000;

  private static final int GIVE_UP_MS = 60_000;

  /** Stops work after a while. */
  static Interrupted after(int milliseconds, Runnable work) throws InterruptedException {
    Thread worker = new Thread(work, "interrupted work");
    worker.setDaemon(true);
    worker.start();
    worker.join(1 + milliseconds);
    boolean running = worker.isAlive();
    long clock = System.nanoTime();
    long processor = SYSTEM.getProcessCpuTime();
    worker.interrupt();
    worker.join(LIMIT_MS);
    String where =
        Arrays.stream(worker.getStackTrace())
            .limit(25)
            .map(Object::toString)
            .collect(Collectors.joining("\n  "));
    worker.join(GIVE_UP_MS);
    return new Interrupted(
        running,
        (System.nanoTime() - clock) / 1e6,
        (SYSTEM.getProcessCpuTime() - processor) / 1e6,
        where);
  }

  /**
   * In time by the clock; on a machine that has other things to do, by what the process needed of
   * the processors.
   */
  boolean inTime() {
    return clockMs < LIMIT_MS || clockMs < LONGEST_MS && processorMs < LIMIT_MS;
  }

  /** The smaller of the two [ms]. */
  double taken() {
    return Math.min(clockMs, processorMs);
  }
}
