package holdcurve.ui.window.job;

import holdcurve.infer.Progress;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.Consumer;

/**
 * One ranking under way. However often the work reports, at most one report waits for the screen.
 */
final class RankingRun implements Progress {
  private final Executor screen;
  private final Consumer<RankingRun> watcher;
  private final AtomicBoolean waiting = new AtomicBoolean();
  private volatile boolean cancelled;
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

  void cancel() {
    cancelled = true;
  }

  double share() {
    return share;
  }

  String what() {
    return what;
  }
}
