package holdcurve.record.log;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What is said about the columns of a log: separators, units, assumptions, oddities.
 *
 * @param layout what the headings said
 * @param rows what the lines below them held
 */
record ColumnSummary(Layout layout, RowReader rows) {
  private static final int NAMED = 8;

  List<String> sentences() {
    List<String> said = new ArrayList<>();
    said.add(columns());
    if (layout.headings().isEmpty()) {
      said.add("No headings: columns taken as time, pressure" + furtherColumns() + ".");
    }
    times().ifPresent(said::add);
    pressures().ifPresent(said::add);
    temperatures().ifPresent(said::add);
    addOddities(said);
    return said;
  }

  private String columns() {
    String mark =
        rows.values
            .decimalComma
            .map(comma -> comma ? ", decimal comma" : ", decimal point")
            .orElse("");
    return "Columns separated by " + layout.separator().words() + mark + ".";
  }

  private String furtherColumns() {
    return (layout.temperature() >= 0 ? ", fuel temperature" : "")
        + (layout.remark() >= 0 ? ", notes" : "");
  }

  private Optional<String> times() {
    if (!rows.values.timeForms.isEmpty()) {
      return Optional.of("Times as " + String.join(" and ", rows.values.timeForms.keySet()) + ".");
    }
    if (rows.values.plainTime > 0) {
      return Optional.of("No unit of time is given: taken as seconds.");
    }
    return layout.timeUnit().map(unit -> "Times in " + unit.words() + ".");
  }

  private Optional<String> pressures() {
    return rows.values.barAssumed
        ? Optional.of("No unit of pressure is given: taken as bar.")
        : layout.pressureUnit().map(unit -> "Pressures in " + unit.symbol() + ".");
  }

  private Optional<String> temperatures() {
    if (layout.temperature() < 0) {
      return Optional.empty();
    }
    return layout
        .temperatureUnit()
        .map(unit -> "Fuel temperatures in " + unit.symbol() + ".")
        .or(() -> Optional.of("No unit of temperature is given: taken as °C."));
  }

  private void addOddities(List<String> said) {
    if (!rows.values.unitsInCells.isEmpty()) {
      said.add("Units stand beside values: " + String.join(", ", rows.values.unitsInCells) + ".");
    }
    addUnused(said);
    if (rows.values.bothMarks) {
      said.add("Decimal points and decimal commas both occur; both were read.");
    }
    noteAlone().ifPresent(said::add);
    if (rows.trailingNotes) {
      said.add("Words after the last column were taken as notes.");
    }
    if (rows.extraCells > 0) {
      said.add("Values beyond the last heading were not used: " + rows.extraCells + ".");
    }
    if (rows.values.lostTemperatures > 0) {
      said.add(lostTemperatures());
    }
  }

  private Optional<String> noteAlone() {
    List<RowReader.EventLine> alone =
        rows.events.stream()
            .filter(e -> !e.beside() && e.event().event().kind() == LogEvent.Kind.NOTE)
            .toList();
    return alone.stream()
        .findFirst()
        .map(
            e ->
                "Line "
                    + e.line()
                    + " has no pressure, only '"
                    + PassedOver.shortened(e.event().event().text())
                    + "': kept as a note"
                    + (alone.size() > 1 ? ", like others." : "."));
  }

  private void addUnused(List<String> said) {
    for (String heading : layout.unused().subList(0, Math.min(NAMED, layout.unused().size()))) {
      said.add("Column '" + PassedOver.shortened(heading) + "' was not used.");
    }
    if (layout.unused().size() > NAMED) {
      said.add("Nor were " + (layout.unused().size() - NAMED) + " more columns.");
    }
  }

  private String lostTemperatures() {
    return "Temperatures that can't be used were left out: "
        + rows.values.lostTemperatures
        + ", the first in line "
        + rows.values.firstLostTemperature
        + ".";
  }
}
