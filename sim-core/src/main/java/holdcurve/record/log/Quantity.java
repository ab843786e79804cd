package holdcurve.record.log;

import holdcurve.common.message.PressureUnit;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as a person writes it into a table: with a decimal point or comma, perhaps with a unit
 * behind it, perhaps marked as uncertain ({@code "2,31 bar"}, {@code "~2.3"}, {@code "2.31?"}).
 *
 * @param value the number alone, in the unit it was written in
 * @param mark the decimal mark found: '.', ',' or 0 for none
 * @param threeDecimals whether exactly three digits follow the mark, as after a thousands mark
 * @param unit what stands behind the number; empty for nothing
 * @param doubtful whether it carries a question mark or a tilde
 */
record Quantity(double value, char mark, boolean threeDecimals, String unit, boolean doubtful) {

  /** Above this a number can't be meant, whatever its unit: 1e10 seconds are 300 years. */
  static final double HUGE = 1e10;

  /** No number and unit is longer [characters]. */
  private static final int LONGEST = 400;

  private static final Pattern SHAPE =
      Pattern.compile(
          "(~|ca\\.?)?\\s*"
              + "([+-]?(?:\\d+([.,]?)(\\d*)|([.,])(\\d+))(?:[eE][+-]?\\d{1,4})?)"
              + "\\s*([\\p{L}°º].*?)?\\s*(\\?+)?");

  /** Reads a cell; empty if it isn't a number. */
  static Optional<Quantity> parse(String cell) {
    return isPlain(cell) ? Optional.of(plain(cell)) : parseAny(cell);
  }

  /** Digits, at most one point among them, perhaps a minus: most cells, so worth a short way. */
  private static boolean isPlain(String cell) {
    int digits = 0;
    int points = 0;
    int signs = cell.startsWith("-") ? 1 : 0;
    for (int i = signs; i < cell.length(); i++) {
      char c = cell.charAt(i);
      digits += c >= '0' && c <= '9' ? 1 : 0;
      points += c == '.' ? 1 : 0;
    }
    return digits > 0 && points <= 1 && signs + digits + points == cell.length();
  }

  private static Quantity plain(String cell) {
    int point = cell.indexOf('.');
    boolean three = point >= 0 && point == cell.length() - 4;
    return new Quantity(Double.parseDouble(cell), point < 0 ? 0 : '.', three, "", false);
  }

  private static Optional<Quantity> parseAny(String cell) {
    if (cell.length() > LONGEST) {
      return Optional.empty();
    }
    Matcher m = SHAPE.matcher(cell.replace('−', '-'));
    if (!m.matches()) {
      return Optional.empty();
    }
    String found = m.group(3) != null ? m.group(3) : m.group(5);
    return Optional.of(
        new Quantity(
            Double.parseDouble(m.group(2).replace(',', '.')),
            found.isEmpty() ? 0 : found.charAt(0),
            decimals(m) == 3,
            m.group(7) == null ? "" : m.group(7),
            m.group(1) != null || m.group(8) != null));
  }

  private static int decimals(Matcher m) {
    String decimals = m.group(3) == null ? m.group(6) : m.group(4);
    return decimals == null ? 0 : decimals.length();
  }

  boolean huge() {
    return !(Math.abs(value) <= HUGE);
  }

  /** Whether a unit known for any column, or none, stands behind the number. */
  boolean plausible() {
    return unit.isEmpty()
        || PressureUnit.of(unit).isPresent()
        || TemperatureUnit.of(unit).isPresent()
        || TimeUnit.of(unit).isPresent();
  }
}
