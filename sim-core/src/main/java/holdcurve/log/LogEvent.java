package holdcurve.log;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * Something that happened during the log, in the user's own words.
 *
 * @param kind what the words were taken to mean
 * @param text the words, with runs of blanks and line breaks made one blank; never empty
 */
public record LogEvent(Kind kind, String text) {
  /** What an event means to the program. */
  public enum Kind {
    PUMP_ON,
    PUMP_STOP,
    /** A hose clamp was put on or taken off. */
    CLAMP,
    /** Anything else: kept, shown, not acted on. */
    NOTE
  }

  /** A person says what happened in so many characters; the rest of a longer text is a note. */
  private static final int LISTENED = 200;

  private static final Pattern BLANKS = Pattern.compile("[\\s\\p{Cc}\\u00a0\\ufeff]+");
  private static final Pattern PUMP_STOP =
      Pattern.compile("(stop|off|stopped)|.*\\bpump\\b.*\\b(stop|stops|stopped|off)\\b.*");
  private static final Pattern PUMP_STOP_JOINED = Pattern.compile("pump[ _-]?(stop|off)");
  private static final Pattern PUMP_ON =
      Pattern.compile("(start|on)|.*\\bpump\\b.*\\b(on|start|starts|started|runs|running)\\b.*");
  private static final Pattern PUMP_ON_JOINED = Pattern.compile("pump[ _-]?(on|start)");

  public LogEvent {
    text = tidy(text);
    if (text.isEmpty()) {
      throw new IllegalArgumentException("an event needs a text");
    }
  }

  /** Reads the meaning from the words: {@code "pump off"} is a {@link Kind#PUMP_STOP}. */
  public static LogEvent of(String text) {
    String words = tidy(text).toLowerCase(Locale.ROOT);
    return new LogEvent(kindOf(words.substring(0, Math.min(LISTENED, words.length()))), text);
  }

  /** Like {@link #of}; empty where the text has no words. */
  static Optional<LogEvent> maybe(String text) {
    return text.isBlank() || tidy(text).isEmpty() ? Optional.empty() : Optional.of(of(text));
  }

  private static Kind kindOf(String words) {
    if (PUMP_STOP.matcher(words).matches() || PUMP_STOP_JOINED.matcher(words).matches()) {
      return Kind.PUMP_STOP;
    }
    if (PUMP_ON.matcher(words).matches() || PUMP_ON_JOINED.matcher(words).matches()) {
      return Kind.PUMP_ON;
    }
    return words.contains("clamp") ? Kind.CLAMP : Kind.NOTE;
  }

  private static String tidy(String text) {
    return BLANKS.matcher(text).replaceAll(" ").strip();
  }
}
