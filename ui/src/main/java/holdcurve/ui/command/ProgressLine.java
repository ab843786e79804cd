package holdcurve.ui.command;

import holdcurve.common.work.Progress;
import java.io.PrintWriter;
import java.util.Locale;

/** Progress on one line of a terminal; silent where the output isn't one. */
final class ProgressLine implements Progress {
  private static final int WIDTH = 72;

  private final PrintWriter err;
  private final boolean terminal = System.console() != null;

  ProgressLine(PrintWriter err) {
    this.err = err;
  }

  @Override
  public synchronized void at(double share, String what) {
    if (terminal) {
      String line = String.format(Locale.ROOT, "%3.0f %%  %s", 100 * share, what);
      err.print("\r" + fitted(line));
      err.flush();
    }
  }

  /** Leaves the line empty. */
  void clear() {
    if (terminal) {
      err.print("\r" + " ".repeat(WIDTH) + "\r");
      err.flush();
    }
  }

  private static String fitted(String line) {
    return line.length() > WIDTH
        ? line.substring(0, WIDTH)
        : line + " ".repeat(WIDTH - line.length());
  }

  @Override
  public boolean isCancelled() {
    return Thread.currentThread().isInterrupted();
  }
}
