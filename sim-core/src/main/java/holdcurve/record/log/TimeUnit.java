package holdcurve.record.log;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;

/** How a time column is counted, as its heading says. */
enum TimeUnit {
  SECONDS("seconds", 1, "s", "sec", "secs", "second", "seconds", "sek"),
  MINUTES("minutes", 60, "min", "mins", "minute", "minutes"),
  HOURS("hours", 3600, "h", "hr", "hrs", "hour", "hours"),
  MILLISECONDS("milliseconds", 1e-3, "ms", "msec", "millisecond", "milliseconds"),
  /** Only values with colons: the factor is never used. */
  CLOCK("mm:ss", Double.NaN),
  HOURS_AND_MINUTES("h:mm", Double.NaN, "h:mm", "hh:mm");

  private static final Pattern COLONS =
      Pattern.compile("(hh?:)?(?:mm?|min):(?:ss?|sec)([.,]\\w+)?");

  private final String words;
  private final double seconds;
  private final Set<String> spellings;

  TimeUnit(String words, double seconds, String... spellings) {
    this.words = words;
    this.seconds = seconds;
    this.spellings = Set.of(spellings);
  }

  String words() {
    return words;
  }

  /**
   * @param value in this unit
   * @return [s]; NaN where a plain number has no meaning in this unit, except zero
   */
  double toSeconds(double value) {
    return value == 0 ? 0 : value * seconds;
  }

  static Optional<TimeUnit> of(String written) {
    if (written.isEmpty()) {
      return Optional.empty();
    }
    String plain = written.strip().toLowerCase(Locale.ROOT);
    if (COLONS.matcher(plain).matches()) {
      return Optional.of(CLOCK);
    }
    return Arrays.stream(values()).filter(unit -> unit.spellings.contains(plain)).findFirst();
  }
}
