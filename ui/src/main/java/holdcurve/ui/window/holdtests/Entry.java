package holdcurve.ui.window.holdtests;

import holdcurve.common.message.PressureUnit;
import holdcurve.ui.window.job.PressureFormat;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What was typed for a reading: {@code 1.85}, or with its time {@code 1:30 1.85} or {@code 90
 * 1.85}; a question mark behind it marks it as doubtful. A unit may follow; without one it is in
 * the unit shown.
 *
 * @param time since the pump stopped [s]; absent if not typed
 * @param pressure [Pa gauge]
 */
record Entry(OptionalDouble time, double pressure, boolean doubtful) {
  private static final Pattern SHAPE =
      Pattern.compile("(?:([0-9:.,]+s?)[\\s;=]+)?([0-9.,]+)\\s*(bar|kPa|psi)?\\s*(\\?)?");
  private static final Pattern CLOCK = Pattern.compile("(?:(\\d{1,3}):)?(\\d{1,5}(?:[.,]\\d)?)s?");
  private static final double LATEST = 86_400;

  /** Empty if it can't be understood. */
  static Optional<Entry> parse(String typed, PressureFormat pressures) {
    Matcher m = SHAPE.matcher(typed.strip());
    if (!m.matches()) {
      return Optional.empty();
    }
    OptionalDouble pressure =
        PressureFormat.parse(m.group(2), unit(m.group(3)).orElse(pressures.unit()));
    OptionalDouble time = m.group(1) == null ? OptionalDouble.empty() : seconds(m.group(1));
    if (pressure.isEmpty() || m.group(1) != null && time.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(new Entry(time, pressure.getAsDouble(), m.group(4) != null));
  }

  private static Optional<PressureUnit> unit(String symbolOrNull) {
    return PressureFormat.CHOICES.stream().filter(u -> u.symbol().equals(symbolOrNull)).findFirst();
  }

  /**
   * @param typed seconds, or minutes and seconds with a colon
   * @return [s]
   */
  static OptionalDouble seconds(String typed) {
    Matcher m = CLOCK.matcher(typed);
    if (!m.matches()) {
      return OptionalDouble.empty();
    }
    double seconds = Double.parseDouble(m.group(2).replace(',', '.'));
    double all = m.group(1) == null ? seconds : 60 * Double.parseDouble(m.group(1)) + seconds;
    boolean good = all <= LATEST && (m.group(1) == null || seconds < 60);
    return good ? OptionalDouble.of(all) : OptionalDouble.empty();
  }

  /** A time as it is typed and shown, such as {@code 1:30}. */
  static String clock(double seconds) {
    long tenths = Math.round(10 * Math.abs(seconds));
    String sign = seconds < 0 && tenths > 0 ? "−" : "";
    String whole = String.format(Locale.ROOT, "%s%d:%02d", sign, tenths / 600, tenths / 10 % 60);
    return tenths % 10 == 0 ? whole : whole + "." + tenths % 10;
  }
}
