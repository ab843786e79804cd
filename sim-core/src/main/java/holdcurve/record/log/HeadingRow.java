package holdcurve.record.log;

import holdcurve.common.input.InputException;
import holdcurve.common.message.PressureUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * A heading line.
 *
 * @param source the log it stands in
 * @param separator between the headings
 * @param headings one a column
 */
record HeadingRow(LogText source, Separator separator, List<Heading> headings) {
  static HeadingRow of(LogText source, Separator separator, String line) {
    List<Heading> headings = separator.splitHeadings(line).stream().map(Heading::of).toList();
    return new HeadingRow(source, separator, headings);
  }

  /** Whether the line names a time and a pressure, and holds no numbers. */
  static boolean isHeading(Separator separator, String line) {
    List<String> cells = separator.splitHeadings(line);
    if (cells.stream().anyMatch(LayoutFinder::isNumber)) {
      return false;
    }
    List<Heading.Role> roles = cells.stream().map(cell -> Heading.of(cell).role()).toList();
    return roles.contains(Heading.Role.TIME) && roles.contains(Heading.Role.PRESSURE);
  }

  static InputException missing(LogText source, int line, List<String> cells) {
    boolean timed = cells.stream().anyMatch(cell -> Heading.of(cell).role() == Heading.Role.TIME);
    return InputException.at(
        source.name(),
        "line " + line,
        "no heading names the "
            + (timed ? "pressure" : "time")
            + " among '"
            + String.join("', '", cells.stream().map(PassedOver::shortened).toList())
            + "'",
        "name the columns, for example time_s and pressure_bar");
  }

  /** Whether the line holds nothing but units, and at least two. */
  static boolean isUnits(Separator separator, String line) {
    List<String> filled = bare(separator, line).stream().filter(cell -> !cell.isEmpty()).toList();
    return filled.size() >= 2 && filled.stream().allMatch(Heading::isUnit);
  }

  private static List<String> bare(Separator separator, String line) {
    return separator.split(line).stream().map(cell -> cell.replaceAll("[\\[\\]()]", "")).toList();
  }

  /** This row with the units of the line below, if that line holds nothing but units. */
  Optional<HeadingRow> unitsIn(String below) {
    if (!isUnits(separator, below)) {
      return Optional.empty();
    }
    List<String> units = bare(separator, below);
    List<Heading> merged = new ArrayList<>(headings);
    for (int i = 0; i < Math.min(units.size(), merged.size()); i++) {
      if (!units.get(i).isEmpty() && merged.get(i).unit().isEmpty()) {
        merged.set(i, Heading.of(merged.get(i).text() + " [" + units.get(i) + "]"));
      }
    }
    return Optional.of(new HeadingRow(source, separator, merged));
  }

  /**
   * The columns that these headings name.
   *
   * @param lines numbers of the heading lines
   */
  Layout layout(List<Integer> lines, Optional<Boolean> decimalComma) {
    int line = lines.get(lines.size() - 1);
    int time = find(Heading.Role.TIME);
    int pressure = find(Heading.Role.PRESSURE);
    int temperature = find(Heading.Role.TEMPERATURE);
    int event = find(Heading.Role.EVENT);
    int remark = find(Heading.Role.REMARK);
    requireGaugePressure(line, headings.get(pressure));
    return new Layout(
        separator,
        decimalComma,
        lines,
        headings.size(),
        time,
        unit(line, time, TimeUnit::of, "s, min or mm:ss"),
        pressure,
        unit(line, pressure, PressureUnit::of, "bar, mbar, kPa, MPa, psi or kg/cm²"),
        temperature,
        unit(line, temperature, TemperatureUnit::of, "°C, °F or K"),
        event,
        remark,
        others(List.of(time, pressure, temperature, event, remark)));
  }

  private List<String> others(List<Integer> read) {
    return IntStream.range(0, headings.size())
        .filter(i -> !read.contains(i))
        .mapToObj(i -> headings.get(i).text())
        .filter(text -> !text.isEmpty())
        .toList();
  }

  private int find(Heading.Role role) {
    return IntStream.range(0, headings.size())
        .filter(i -> headings.get(i).role() == role)
        .findFirst()
        .orElse(-1);
  }

  private <U> Optional<U> unit(
      int line, int column, Function<String, Optional<U>> units, String known) {
    if (column < 0) {
      return Optional.empty();
    }
    Heading heading = headings.get(column);
    Optional<U> unit = units.apply(heading.unit());
    if (unit.isEmpty() && !heading.unit().isEmpty()) {
      throw InputException.at(
          source.name(),
          "line " + line,
          "the unit '" + heading.unit() + "' in the heading '" + heading.text() + "' is not known",
          "use " + known);
    }
    return unit;
  }

  private void requireGaugePressure(int line, Heading pressure) {
    if (pressure.isAbsolute()) {
      throw InputException.at(
          source.name(),
          "line " + line,
          "the heading '" + pressure.text() + "' says absolute pressure",
          "give what a gauge shows, zero in open air");
    }
  }
}
