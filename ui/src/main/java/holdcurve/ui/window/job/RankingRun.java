package holdcurve.ui.window.job;

import holdcurve.common.work.Progress;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * One ranking under way. However often the work reports, at most one report waits for the screen.
 */
final class RankingRun implements Progress {
  private final Executor screen;
  private final Consumer<RankingRun> watcher;
  private final AtomicBoolean waiting = new AtomicBoolean();
  private volatile boolean cancelled;
  private Thread worker;
  private volatile double share;
  private volatile String what = "";

  /**
   * @param screen runs things on the thread of the screen
   * @param watcher called there after progress
   */
  RankingRun(Executor screen, Consumer<RankingRun> watcher) {
    this.screen = screen;
    this.watcher = watcher;
  }

  @Override
  public void at(double newShare, String newWhat) {
    share = newShare;
    what = newWhat;
    if (waiting.compareAndSet(false, true)) {
      screen.execute(
          () -> {
            waiting.set(false);
            watcher.accept(this);
          });
    }
  }

  @Override
  public boolean isCancelled() {
    return cancelled;
  }

  /** Tells the work's thread to stop. */
  synchronized void cancel() {
    cancelled = true;
    if (worker != null) {
      worker.interrupt();
    }
  }

  /**
   * Does the work on the calling thread, which {@link #cancel} may interrupt until it ends.
   *
   * @throws CancellationException if it was cancelled
   */
  <T> T run(Supplier<T> work) {
    begin();
    try {
      return work.get();
    } finally {
      end();
    }
  }

  private synchronized void begin() {
    if (cancelled) {
      throw new CancellationException("cancelled before it began");
    }
    worker = Thread.currentThread();
  }

  /** Whatever the thread does next is not interrupted. */
  private synchronized void end() {
    worker = null;
    Thread.interrupted();
  }

  double share() {
    return share;
  }

  String what() {
    return what;
  }
}
