package holdcurve.record.log;

import java.util.Arrays;
import java.util.List;
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
    /** Injectors were opened or shut, or the engine ran. */
    INJECTORS,
    /** A hose clamp was put on or taken off: shown, not acted on. */
    CLAMP,
    /** Anything else: kept, shown, not acted on. */
    NOTE
  }

  /** A person says what happened in so many characters; the rest of a longer text is a note. */
  private static final int LISTENED = 200;

  /** Marks a note in an event column whose words would pass for an event. */
  private static final String NOTED = "note: ";

  private static final Pattern BLANKS = Pattern.compile("[\\s\\p{Cc}\\u00a0\\ufeff]+");
  private static final Pattern CLAUSES =
      Pattern.compile("\\s*(?:[,;:!/()+&]| - | and | then )\\s*");

  /** Words behind the one that counts that leave it as it is: "pump off at 2.1 bar". */
  private static final Pattern AFTERWARDS =
      Pattern.compile(
          "(?: (?:now|again|here|by|hand|at|after|for|about|[0-9.]+|s|sec|min|bar|psi|kpa))+$");

  private static final Pattern STOP_ALONE = Pattern.compile("stop|off|stopped");
  private static final Pattern ON_ALONE = Pattern.compile("start|on");
  private static final Pattern PUMP_STOP = pump("stop|stops|stopped|off", "stop|stopped", "off");
  private static final Pattern PUMP_ON =
      pump("on|start|starts|started|runs|running", "start|started", "on");
  private static final Pattern INJECTORS =
      Pattern.compile(
          "(?:all )?injectors? (?:are )?(?:open|opened|on|shut|closed|off|[0-9.,]+ ?(?:%|percent))"
              + "|engine (?:on|off|start|started|runs|running|idles|idling|stop|stopped)");

  public LogEvent {
    text = tidy(text);
    if (text.isEmpty()) {
      throw new IllegalArgumentException("an event needs a text");
    }
  }

  /**
   * Reads the meaning from words in an event column, where a part of them may say what happened:
   * {@code "pump off, clamp on"} is a {@link Kind#PUMP_STOP}.
   */
  public static LogEvent of(String text) {
    String whole = tidy(text);
    return whole.startsWith(NOTED) && whole.length() > NOTED.length()
        ? new LogEvent(Kind.NOTE, whole.substring(NOTED.length()))
        : new LogEvent(kindOf(listened(whole)), whole);
  }

  /** Reads a remark: an event only where nothing else is said, such as {@code "pump off"}. */
  static LogEvent remark(String text) {
    String words = listened(tidy(text));
    Kind other = words.contains("clamp") ? Kind.CLAMP : Kind.NOTE;
    boolean injectors = INJECTORS.matcher(words).matches();
    return new LogEvent(pump(words).orElse(injectors ? Kind.INJECTORS : other), text);
  }

  /** Whether a text from a file has no words. */
  static boolean isBlank(String text) {
    return text.isBlank() || tidy(text).isEmpty();
  }

  /** Whether something follows from it. */
  boolean counts() {
    return kind != Kind.NOTE && kind != Kind.CLAMP;
  }

  /** Words for an event column out of which {@link #of} reads this event again. */
  String written() {
    return of(text).equals(this) ? text : NOTED + text;
  }

  private static Kind kindOf(String words) {
    return pump(words)
        .or(() -> pumpIn(CLAUSES.split(words)))
        .orElseGet(
            () -> {
              if (words.contains("injector") || words.contains("engine")) {
                return Kind.INJECTORS;
              }
              return words.contains("clamp") ? Kind.CLAMP : Kind.NOTE;
            });
  }

  /** A stop goes before a start: "pump on for 20 s, pump off" ends with the pump off. */
  private static Optional<Kind> pumpIn(String... clauses) {
    List<String> bare =
        Arrays.stream(clauses).map(clause -> AFTERWARDS.matcher(clause).replaceFirst("")).toList();
    if (bare.stream().anyMatch(clause -> PUMP_STOP.matcher(clause).matches())) {
      return Optional.of(Kind.PUMP_STOP);
    }
    return bare.stream().anyMatch(clause -> PUMP_ON.matcher(clause).matches())
        ? Optional.of(Kind.PUMP_ON)
        : Optional.empty();
  }

  /** What words say of the pump that say nothing else. */
  private static Optional<Kind> pump(String words) {
    if (STOP_ALONE.matcher(words).matches() || PUMP_STOP.matcher(words).matches()) {
      return Optional.of(Kind.PUMP_STOP);
    }
    return ON_ALONE.matcher(words).matches() || PUMP_ON.matcher(words).matches()
        ? Optional.of(Kind.PUMP_ON)
        : Optional.empty();
  }

  /** "Pump off", "the pump was switched off", "stopped the pump", "switched the pump off". */
  private static Pattern pump(String states, String verbs, String end) {
    String pump = "(?:the )?(?:fuel )?pump";
    String was = "(?:[ _-]?|(?: (?:is|was|has|been|switched|turned|shut|now|just))+ )";
    String turned = "(?:switched|turned|shut) ";
    return Pattern.compile(
        ("(?:(?:now|then) )?%1$s%2$s(?:%3$s)|(?:%4$s) %1$s|%5$s%1$s %6$s|%5$s%6$s %1$s")
            .formatted(pump, was, states, verbs, turned, end));
  }

  private static String listened(String whole) {
    String words = whole.toLowerCase(Locale.ROOT);
    return words.substring(0, Math.min(LISTENED, words.length()));
  }

  private static String tidy(String text) {
    return BLANKS.matcher(text).replaceAll(" ").strip();
  }
}
