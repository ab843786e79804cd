package holdcurve.ui.window;

import java.io.IOException;
import java.lang.System.Logger.Level;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.logging.FileHandler;
import java.util.logging.Logger;
import java.util.logging.SimpleFormatter;

/** What went wrong in a window, kept in a small file, for a report of a problem. */
final class WindowLog {
  private static final System.Logger LOG = System.getLogger(WindowLog.class.getName());

  /** Two files of this size at most [bytes]. */
  private static final int LONGEST = 200_000;

  private static final int FILES = 2;

  /** Held so that its handler lasts. */
  private static final Logger OURS = Logger.getLogger("holdcurve");

  private final FileHandler file;

  private WindowLog(FileHandler file) {
    this.file = file;
  }

  /** Begins to keep it; where nothing can be written, a window without is better than none. */
  static WindowLog in(Path folder) {
    FileHandler handler = null;
    try {
      Files.createDirectories(folder);
      handler = new FileHandler(folder.resolve("window.%g.log").toString(), LONGEST, FILES, true);
      handler.setFormatter(new SimpleFormatter());
      handler.setEncoding("UTF-8");
      OURS.addHandler(handler);
    } catch (IOException e) {
      LOG.log(Level.WARNING, "no log can be kept in " + folder, e);
    }
    Thread.setDefaultUncaughtExceptionHandler(
        (thread, e) -> LOG.log(Level.ERROR, "on thread " + thread.getName(), e));
    return new WindowLog(handler);
  }

  void close() {
    if (file != null) {
      OURS.removeHandler(file);
      file.close();
    }
  }
}
