package holdcurve.record.log;

import holdcurve.common.input.InputException;
import java.util.List;
import java.util.Optional;

/**
 * Columns of a table without headings: time, pressure, perhaps fuel temperature, perhaps words.
 *
 * @param separator between columns
 * @param rows cells of the first rows
 */
record Headless(Separator separator, List<List<String>> rows) {
  private static final int MOST = 3;

  Layout layout(LogText source, Optional<Boolean> decimalComma) {
    int first = firstColumn();
    int numbers = 0;
    while (mostlyNumbers(first + numbers)) {
      numbers++;
    }
    if (numbers < 2) {
      throw InputException.at(
          source.name(),
          "",
          "the lines don't begin with a time and a pressure",
          "write them in the first two columns, or name the columns in a heading line such as"
              + " time_s,pressure_bar");
    }
    if (numbers > MOST) {
      throw InputException.at(
          source.name(),
          "",
          "there are no headings, and the rows start with " + numbers + " columns of numbers",
          "name the columns in a heading line such as time_s,pressure_bar,fuel_temp_C");
    }
    boolean words = anyText(first + numbers);
    return new Layout(
        separator,
        decimalComma,
        List.of(),
        first + numbers + (words ? 1 : 0),
        first,
        Optional.empty(),
        first + 1,
        Optional.empty(),
        numbers == MOST ? first + 2 : -1,
        Optional.empty(),
        -1,
        words ? first + numbers : -1,
        List.of());
  }

  /** Lines that begin with a separator have an empty first column. */
  private int firstColumn() {
    return rows.stream().allMatch(row -> row.get(0).isEmpty()) ? 1 : 0;
  }

  private boolean mostlyNumbers(int column) {
    long numbers = rows.stream().filter(row -> LayoutFinder.isNumber(cell(row, column))).count();
    return numbers * 2 > rows.size();
  }

  private boolean anyText(int column) {
    return rows.stream().anyMatch(row -> !cell(row, column).isEmpty());
  }

  private static String cell(List<String> row, int column) {
    return column < row.size() ? row.get(column) : "";
  }
}
