package holdcurve.ui.window;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import javafx.application.Platform;

/**
 * Watches how long the thread of the screen works without a pause. Counts its CPU time, not the
 * clock, so that a busy machine doesn't fail the test.
 */
final class FxWatch implements AutoCloseable {
  private static final long BEAT_MS = 5;

  private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
  private final AtomicLong longest = new AtomicLong();
  private final Thread beating = new Thread(this::beat, "beat");
  private volatile boolean done;
  private long last = -1;

  FxWatch() {
    beating.setDaemon(true);
    beating.start();
  }

  private void beat() {
    while (!done) {
      Platform.runLater(this::listen);
      try {
        TimeUnit.MILLISECONDS.sleep(BEAT_MS);
      } catch (InterruptedException e) {
        return;
      }
    }
  }

  private void listen() {
    long now = threads.getCurrentThreadCpuTime();
    if (last >= 0) {
      longest.accumulateAndGet(now - last, Math::max);
    }
    last = now;
  }

  /** Longest work without a pause so far [ms of CPU]. */
  long longest() {
    return TimeUnit.NANOSECONDS.toMillis(longest.get());
  }

  @Override
  public void close() {
    done = true;
  }
}
