package holdcurve.ui.problem;

import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.logging.SimpleFormatter;

/** All that the program notes while it is open, down to what it usually keeps to itself. */
public final class Notes implements AutoCloseable {
  private static final Logger OURS = Logger.getLogger("holdcurve");

  /** A fault that repeats a thousand times is told by its first few. */
  private static final int LONGEST = 500_000;

  private final StringBuilder text = new StringBuilder();
  private final SimpleFormatter formatter = new SimpleFormatter();
  private final Level levelBefore = OURS.getLevel();
  private final boolean aloudBefore = OURS.getUseParentHandlers();

  private final Handler handler =
      new Handler() {
        @Override
        public void publish(LogRecord record) {
          add(formatter.format(record));
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}
      };

  private Notes() {}

  /** Begins to take notes; nothing is printed meanwhile. */
  public static Notes open() {
    Notes notes = new Notes();
    OURS.setLevel(Level.ALL);
    OURS.setUseParentHandlers(false);
    OURS.addHandler(notes.handler);
    return notes;
  }

  /** Notes a line. */
  public synchronized void add(String line) {
    if (text.length() < LONGEST) {
      text.append(line).append(line.endsWith("\n") ? "" : "\n");
    }
  }

  /** Notes a failure with all that led to it. */
  public void add(Throwable failure) {
    java.io.StringWriter trace = new java.io.StringWriter();
    failure.printStackTrace(new java.io.PrintWriter(trace, true));
    add(trace.toString());
  }

  public synchronized String text() {
    return text.toString();
  }

  @Override
  public void close() {
    OURS.removeHandler(handler);
    OURS.setLevel(levelBefore);
    OURS.setUseParentHandlers(aloudBefore);
  }
}
