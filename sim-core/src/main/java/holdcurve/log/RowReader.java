package holdcurve.log;

import holdcurve.file.InputException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Reads the lines below the headings one by one and keeps account of each. */
final class RowReader {
  private static final double LOWEST = -1e5;
  private static final double HIGHEST = 20e5;
  private static final double LOWEST_ASSUMED = 0;
  private static final double HIGHEST_ASSUMED = 10;
  private static final double COLDEST = 213.15;
  private static final double HOTTEST = 423.15;

  /** A reading and the line it came from. */
  record Row(int line, Reading reading) {}

  /** An event, the line it came from, and whether a reading stands in that line. */
  record EventLine(int line, TimedEvent event, boolean beside) {}

  /** A cell that gave no value; the reason goes after "Line 9". */
  private static final class Unreadable extends Exception {
    private static final long serialVersionUID = 1;

    Unreadable(String reason) {
      super(reason, null, false, false);
    }
  }

  private final LogText source;
  private final Layout layout;
  private Optional<Boolean> decimalComma;
  private boolean bothMarks;
  private int plainTime;
  private boolean barAssumed;
  private final Set<String> unitsInCells = new TreeSet<>();
  private final Map<String, Integer> timeForms = new TreeMap<>();
  private int lostTemperatures;
  private int firstLostTemperature;
  private int extraCells;
  private boolean trailingNotes;

  final List<Row> rows = new ArrayList<>();
  final List<EventLine> events = new ArrayList<>();
  final List<PassedOver> passedOver = new ArrayList<>();

  RowReader(LogText source, Layout layout) {
    this.source = source;
    this.layout = layout;
    this.decimalComma = layout.decimalComma();
  }

  /** Takes one line that is neither blank nor a comment. */
  void read(int line, String text) {
    List<String> cells = layout.separator().split(text);
    try {
      String pressure = cell(cells, layout.pressure());
      requireSomeNumber(cell(cells, layout.time()), pressure);
      double time = time(line, cell(cells, layout.time()));
      Optional<LogEvent> event = event(cells);
      if (!pressure.isEmpty()) {
        rows.add(new Row(line, reading(line, time, pressure, event, cells)));
      } else if (event.isEmpty()) {
        throw new Unreadable("has no pressure");
      }
      boolean beside = !pressure.isEmpty();
      event.ifPresent(e -> events.add(new EventLine(line, new TimedEvent(time, e), beside)));
    } catch (Unreadable e) {
      passedOver.add(new PassedOver(line, e.getMessage(), text));
    }
  }

  private static void requireSomeNumber(String time, String pressure) throws Unreadable {
    boolean timed = ClockTime.hasColon(time) || Quantity.parse(time).isPresent();
    if (!timed && Quantity.parse(pressure).isEmpty()) {
      throw new Unreadable("is not a reading");
    }
  }

  private Reading reading(
      int line, double time, String pressure, Optional<LogEvent> event, List<String> cells)
      throws Unreadable {
    Quantity quantity = quantity(pressure, "pressure");
    double pascals = pascals(line, pressure, quantity);
    double kelvins = temperature(line, cell(cells, layout.temperature()));
    return new Reading(time, pascals, kelvins, event, quantity.doubtful());
  }

  private Quantity quantity(String cell, String what) throws Unreadable {
    if (cell.isEmpty()) {
      throw new Unreadable("has no " + what);
    }
    Quantity quantity =
        Quantity.parse(cell).orElseThrow(() -> new Unreadable("has no readable " + what));
    if (quantity.huge()) {
      throw new Unreadable("has a " + what + " too large to be meant");
    }
    requireOneMark(quantity);
    return quantity;
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

  private double time(int line, String cell) throws Unreadable {
    if (ClockTime.hasColon(cell)) {
      boolean hours = layout.timeUnit().equals(Optional.of(TimeUnit.HOURS_AND_MINUTES));
      ClockTime clock =
          ClockTime.parse(cell, hours).orElseThrow(() -> new Unreadable("has no readable time"));
      timeForms.putIfAbsent(clock.form(), line);
      return clock.seconds();
    }
    Quantity quantity = quantity(cell, "time");
    Optional<TimeUnit> own = TimeUnit.of(quantity.unit());
    if (!quantity.unit().isEmpty() && own.isEmpty()) {
      throw new Unreadable("has no readable time");
    }
    own.ifPresent(found -> unitsInCells.add(found.words()));
    TimeUnit unit = own.or(layout::timeUnit).orElse(TimeUnit.SECONDS);
    double seconds = unit.toSeconds(quantity.value());
    if (Double.isNaN(seconds)) {
      throw new Unreadable("has a time without a colon");
    }
    if (own.isEmpty() && layout.timeUnit().isEmpty() && seconds != 0 && plainTime == 0) {
      plainTime = line;
    }
    return seconds + 0.0;
  }

  private double pascals(int line, String cell, Quantity quantity) throws Unreadable {
    Optional<PressureUnit> own = PressureUnit.of(quantity.unit());
    if (!quantity.unit().isEmpty() && own.isEmpty()) {
      throw new Unreadable("has no readable pressure");
    }
    Optional<PressureUnit> unit = own.or(layout::pressureUnit);
    own.ifPresent(found -> unitsInCells.add(found.symbol()));
    if (unit.isEmpty()) {
      barAssumed = true;
      requireBar(line, cell, quantity.value());
    }
    double pascals = unit.orElse(PressureUnit.BAR).toPascal(quantity.value());
    if (pascals < LOWEST || pascals > HIGHEST) {
      throw outside(line, cell, unit.orElse(PressureUnit.BAR), own.isPresent());
    }
    return pascals;
  }

  private void requireBar(int line, String cell, double value) {
    if (value < LOWEST_ASSUMED || value > HIGHEST_ASSUMED) {
      throw InputException.at(
          source.name(),
          "line " + line,
          "no unit of pressure is given, and '" + cell + "' is not between 0 and 10 bar",
          "name the unit in a heading line such as time_s,pressure_kPa");
    }
  }

  private InputException outside(int line, String cell, PressureUnit unit, boolean inCell) {
    return InputException.at(
        source.name(),
        "line " + line,
        String.format(
            Locale.ROOT,
            "the pressure '%s'%s is outside %s to %s %s",
            cell,
            inCell ? "" : " " + unit.symbol(),
            Digits.few(unit.fromPascal(LOWEST)),
            Digits.few(unit.fromPascal(HIGHEST)),
            unit.symbol()),
        "check the value and the unit in the heading");
  }

  /** A temperature that can't be used costs the temperature, not the reading. */
  private double temperature(int line, String cell) {
    if (cell.isEmpty()) {
      return Double.NaN;
    }
    try {
      Quantity quantity = quantity(cell, "temperature");
      Optional<TemperatureUnit> own = TemperatureUnit.of(quantity.unit());
      TemperatureUnit unit = own.or(layout::temperatureUnit).orElse(TemperatureUnit.CELSIUS);
      double kelvins = unit.toKelvin(quantity.value());
      if (kelvins >= COLDEST
          && kelvins <= HOTTEST
          && own.isPresent() != quantity.unit().isEmpty()) {
        return kelvins;
      }
    } catch (Unreadable e) {
      // counted below like any other temperature that can't be used
    }
    firstLostTemperature = lostTemperatures++ == 0 ? line : firstLostTemperature;
    return Double.NaN;
  }

  private Optional<LogEvent> event(List<String> cells) {
    StringBuilder words = new StringBuilder(cell(cells, layout.event()));
    for (int i = layout.width(); i < cells.size(); i++) {
      if (cells.get(i).isEmpty()) {
        continue;
      }
      if (layout.separator() != Separator.BLANKS && LayoutFinder.isNumber(cells.get(i))) {
        extraCells++;
      } else {
        trailingNotes |= layout.event() < 0;
        words.append(' ').append(cells.get(i));
      }
    }
    return words.toString().isBlank() ? Optional.empty() : eventOf(words.toString());
  }

  private static Optional<LogEvent> eventOf(String words) {
    try {
      return Optional.of(LogEvent.of(words));
    } catch (IllegalArgumentException onlyControlCharacters) {
      return Optional.empty();
    }
  }

  private static String cell(List<String> cells, int column) {
    return column >= 0 && column < cells.size() ? cells.get(column) : "";
  }

  /** Refuses plain numbers among times with colons where no heading says what they count. */
  void requireOneTimeForm() {
    if (plainTime > 0 && !timeForms.isEmpty()) {
      String text = cell(layout.separator().split(source.line(plainTime)), layout.time());
      throw InputException.at(
          source.name(),
          "line " + plainTime,
          "the time '"
              + text
              + "' has no colon, where other lines have "
              + String.join(" or ", timeForms.keySet()),
          "write all times alike");
    }
  }

  /** What was found while reading, in sentences. */
  List<String> understood() {
    List<String> said = new ArrayList<>();
    said.add(columns());
    if (layout.headings().isEmpty()) {
      said.add("No headings: columns taken as time, pressure" + furtherColumns() + ".");
    }
    addTimes(said);
    layout.pressureUnit().ifPresent(unit -> said.add("Pressures in " + unit.symbol() + "."));
    if (barAssumed) {
      said.add("No unit of pressure is given: taken as bar.");
    }
    if (!unitsInCells.isEmpty()) {
      said.add("Units stand beside values: " + String.join(", ", unitsInCells) + ".");
    }
    if (layout.temperature() >= 0) {
      said.add(
          layout
              .temperatureUnit()
              .map(unit -> "Fuel temperatures in " + unit.symbol() + ".")
              .orElse("No unit of temperature is given: taken as °C."));
    }
    addOddities(said);
    return said;
  }

  private String columns() {
    String mark =
        decimalComma.map(comma -> comma ? ", decimal comma" : ", decimal point").orElse("");
    return "Columns separated by " + layout.separator().words() + mark + ".";
  }

  private String furtherColumns() {
    return (layout.temperature() >= 0 ? ", fuel temperature" : "")
        + (layout.event() >= 0 ? ", notes" : "");
  }

  private void addTimes(List<String> said) {
    if (!timeForms.isEmpty()) {
      said.add("Times as " + String.join(" and ", timeForms.keySet()) + ".");
    } else if (plainTime > 0) {
      said.add("No unit of time is given: taken as seconds.");
    } else {
      layout.timeUnit().ifPresent(unit -> said.add("Times in " + unit.words() + "."));
    }
  }

  private void addOddities(List<String> said) {
    for (String heading : layout.unused()) {
      said.add("Column '" + PassedOver.shortened(heading) + "' was not used.");
    }
    if (bothMarks) {
      said.add("Decimal points and decimal commas both occur; both were read.");
    }
    if (trailingNotes) {
      said.add("Words after the last column were taken as notes.");
    }
    if (extraCells > 0) {
      said.add("Values beyond the last heading were not used: " + extraCells + ".");
    }
    if (lostTemperatures > 0) {
      said.add(
          "Temperatures that can't be used were left out: "
              + lostTemperatures
              + ", the first in line "
              + firstLostTemperature
              + ".");
    }
  }
}
