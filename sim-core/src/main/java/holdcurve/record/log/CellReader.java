package holdcurve.record.log;

import holdcurve.common.message.PressureUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;

/**
 * Turns cells into SI values, and remembers which forms, units and assumptions it met, so that they
 * can be told to the user.
 */
final class CellReader {
  private static final double LOWEST = -1e5;
  private static final double HIGHEST = 20e5;
  private static final double LOWEST_ASSUMED = 0;
  private static final double HIGHEST_ASSUMED = 10;
  private static final double COLDEST = 213.15;
  private static final double HOTTEST = 423.15;

  /** What stands behind the number where an O was typed for a nought. */
  private static final Pattern LETTERS_FOR_FIGURES = Pattern.compile("[OoIl][OoIl0-9]*");

  /** A cell that gives no value; the reason goes after "Line 9". */
  static final class Unreadable extends Exception {
    private static final long serialVersionUID = 1;

    Unreadable(String reason) {
      super(reason, null, false, false);
    }
  }

  /**
   * A pressure that can't be used.
   *
   * @param line where it stands
   * @param problem with the value found
   * @param remedy what would be right
   */
  record Unusable(int line, String problem, String remedy) {}

  private final Layout layout;

  final List<Unusable> unusable = new ArrayList<>();
  Optional<Boolean> decimalComma;
  boolean bothMarks;
  boolean barAssumed;

  /** First line with a time that has neither colon nor unit and isn't zero; 0 for none. */
  int plainTime;

  /** Forms of times with colons, and the first line of each. */
  final Map<String, Integer> timeForms = new TreeMap<>();

  final Set<String> unitsInCells = new TreeSet<>();
  int lostTemperatures;
  int firstLostTemperature;

  CellReader(Layout layout) {
    this.layout = layout;
    this.decimalComma = layout.decimalComma();
  }

  /**
   * @param line for messages
   * @return [s]
   */
  double time(int line, String cell) throws Unreadable {
    if (ClockTime.hasColon(cell)) {
      boolean hours = layout.timeUnit().equals(Optional.of(TimeUnit.HOURS_AND_MINUTES));
      ClockTime clock =
          ClockTime.parse(cell, hours).orElseThrow(() -> new Unreadable("has no readable time"));
      timeForms.putIfAbsent(clock.form(), line);
      return clock.seconds();
    }
    Quantity quantity = quantity(cell, "time");
    Optional<TimeUnit> own = TimeUnit.of(quantity.unit());
    requireKnown(quantity, own, "time");
    own.ifPresent(found -> unitsInCells.add(found.words()));
    Optional<TimeUnit> unit = own.or(layout::timeUnit);
    double seconds = unit.orElse(TimeUnit.SECONDS).toSeconds(quantity.value());
    if (Double.isNaN(seconds)) {
      throw new Unreadable("has a time without a colon");
    }
    if (unit.isEmpty() && seconds != 0 && plainTime == 0) {
      plainTime = line;
    }
    return seconds;
  }

  /** A pressure as it was written, not yet in pascals. */
  Quantity pressure(String cell) throws Unreadable {
    return quantity(cell, "pressure");
  }

  /**
   * @param line for messages
   * @return [Pa]
   */
  double pascals(int line, String cell, Quantity quantity) throws Unreadable {
    Optional<PressureUnit> own = PressureUnit.of(quantity.unit());
    requireKnown(quantity, own, "pressure");
    own.ifPresent(found -> unitsInCells.add(found.symbol()));
    Optional<PressureUnit> unit = own.or(layout::pressureUnit);
    if (unit.isEmpty()) {
      barAssumed = true;
      keepBar(line, cell, quantity.value());
    }
    double pascals = unit.orElse(PressureUnit.BAR).toPascal(quantity.value());
    if (unit.isPresent() && (pascals < LOWEST || pascals > HIGHEST)) {
      String symbol = own.isPresent() ? "" : " " + unit.get().symbol();
      keepOutside(line, "'" + cell + "'" + symbol, unit.get());
    }
    return pascals;
  }

  /**
   * A temperature that can't be used costs the temperature, not the reading.
   *
   * @return [K]; NaN for none
   */
  double kelvins(int line, String cell) {
    if (cell.isEmpty()) {
      return Double.NaN;
    }
    double kelvins = kelvins(cell);
    if (Double.isNaN(kelvins)) {
      firstLostTemperature = lostTemperatures++ == 0 ? line : firstLostTemperature;
    }
    return kelvins;
  }

  private double kelvins(String cell) {
    try {
      Quantity quantity = quantity(cell, "temperature");
      Optional<TemperatureUnit> own = TemperatureUnit.of(quantity.unit());
      requireKnown(quantity, own, "temperature");
      own.ifPresent(found -> unitsInCells.add(found.symbol()));
      TemperatureUnit unit = own.or(layout::temperatureUnit).orElse(TemperatureUnit.CELSIUS);
      double kelvins = unit.toKelvin(quantity.value());
      return kelvins >= COLDEST && kelvins <= HOTTEST ? kelvins : Double.NaN;
    } catch (Unreadable e) {
      return Double.NaN;
    }
  }

  private Quantity quantity(String cell, String what) throws Unreadable {
    if (cell.isEmpty()) {
      throw new Unreadable("has no " + what);
    }
    Quantity quantity = Quantity.parse(cell).orElseThrow(() -> new Unreadable(reason(cell, what)));
    if (quantity.huge()) {
      throw new Unreadable("has a " + what + " too large to be meant");
    }
    requireOneMark(quantity);
    return quantity;
  }

  private static String reason(String cell, String what) {
    boolean foreign = cell.codePoints().anyMatch(c -> c > '9' && Character.isDigit(c));
    return (foreign ? "has other figures than 0 to 9 in its " : "has no readable ") + what;
  }

  private void requireOneMark(Quantity quantity) throws Unreadable {
    if (quantity.mark() == 0) {
      return;
    }
    boolean comma = quantity.mark() == ',';
    if (decimalComma.isEmpty()) {
      decimalComma = Optional.of(comma);
    }
    if (comma != decimalComma.get()) {
      if (quantity.threeDecimals()) {
        throw new Unreadable("has a number that can be read in two ways");
      }
      bothMarks = true;
    }
  }

  private static void requireKnown(Quantity quantity, Optional<?> unit, String what)
      throws Unreadable {
    if (unit.isEmpty() && !quantity.unit().isEmpty()) {
      boolean letters = LETTERS_FOR_FIGURES.matcher(quantity.unit()).matches();
      throw new Unreadable(
          (letters ? "has a letter among the figures of its " : "has no readable ") + what);
    }
  }

  /** Refused once all lines are known, since one slip and a wrong unit need other remedies. */
  private void keepBar(int line, String cell, double value) {
    if (value < LOWEST_ASSUMED || value > HIGHEST_ASSUMED) {
      unusable.add(
          new Unusable(
              line,
              "no unit of pressure is given, and '" + cell + "' is not between 0 and 10 bar",
              "name the unit in a heading line such as time_s,pressure_kPa"));
    }
  }

  private void keepOutside(int line, String value, PressureUnit unit) {
    String lowest = NumberText.few(unit.fromPascal(LOWEST));
    String highest = NumberText.few(unit.fromPascal(HIGHEST));
    unusable.add(
        new Unusable(
            line,
            "the pressure %s is outside %s to %s %s"
                .formatted(value, lowest, highest, unit.symbol()),
            "check the value and the unit in the heading"));
  }
}
