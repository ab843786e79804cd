package holdcurve.ui.window;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicLong;
import java.util.concurrent.locks.LockSupport;
import javafx.application.Platform;
import org.testfx.util.WaitForAsyncUtils;

/**
 * Watches how long the thread of the screen works without a pause. Counts its CPU time, not the
 * clock, so that a busy machine doesn't fail the test. It queues itself again each time it has had
 * its turn, so that it stands between any two pieces of work.
 */
final class FxWatch implements AutoCloseable {
  private static final long REST_NS = 200_000;

  private final ThreadMXBean threads = ManagementFactory.getThreadMXBean();
  private final AtomicLong longest = new AtomicLong();
  private volatile boolean done;
  private long last = -1;

  /** Returns once it watches. */
  FxWatch() {
    WaitForAsyncUtils.asyncFx(this::listen);
    WaitForAsyncUtils.waitForFxEvents();
  }

  private void listen() {
    long now = threads.getCurrentThreadCpuTime();
    if (last >= 0) {
      longest.accumulateAndGet(now - last, Math::max);
    }
    LockSupport.parkNanos(REST_NS);
    last = threads.getCurrentThreadCpuTime();
    if (!done) {
      Platform.runLater(this::listen);
    }
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
