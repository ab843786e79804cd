package holdcurve.record.log;

import holdcurve.common.input.InputException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Finds separator, decimal mark and columns from the first lines of a log. */
final class LayoutFinder {
  private static final int LOOKED_AT = 400;
  private static final int LOOKED_AT_LENGTH = 100_000;
  private static final String FIGURES = "0123456789,;|";
  private static final String AMONG_FIGURES = FIGURES + "-+.: \t";
  private static final String EXAMPLE = "start with a heading line such as time_s,pressure_bar";

  private record Line(int number, String text) {}

  private record Candidate(Separator separator, int rows, int firstRow, int heading) {
    double score(int lines) {
      return rows + (heading >= 0 ? lines / 2.0 : 0);
    }
  }

  private final LogText source;
  private final List<Line> lines = new ArrayList<>();
  private final List<Line> comments = new ArrayList<>();

  LayoutFinder(LogText source) {
    this.source = source;
    LineCursor cursor = source.lines();
    int length = 0;
    while (lines.size() < LOOKED_AT && length < LOOKED_AT_LENGTH && cursor.next()) {
      length += cursor.line().length();
      if (cursor.holdsData()) {
        lines.add(new Line(cursor.number(), cursor.line()));
      } else if (comments.size() < LOOKED_AT) {
        comments.add(new Line(cursor.number(), cursor.line().replaceFirst("^\\s*#+", "")));
      }
    }
  }

  /** The layout, or a refusal that names the line where the table can't be understood. */
  Layout find() {
    if (lines.isEmpty()) {
      throw InputException.at(source.name(), "", "there are no readings in it", EXAMPLE);
    }
    Candidate best =
        Stream.of(Separator.values())
            .map(this::candidate)
            .max(
                Comparator.comparingDouble((Candidate c) -> c.score(lines.size()))
                    .thenComparing(c -> -c.separator.ordinal()))
            .orElseThrow();
    if (best.heading >= 0) {
      requireOneMeaning(best, headed(best));
      return headed(best);
    }
    requireTable(best);
    Layout layout = new Headless(best.separator, cells(best)).layout(source, decimalComma(best));
    requireOneMeaning(best, layout);
    return layout;
  }

  private Candidate candidate(Separator separator) {
    int rows = 0;
    int first = -1;
    int heading = -1;
    for (int i = 0; i < lines.size(); i++) {
      if (isRow(separator.split(lines.get(i).text))) {
        rows++;
        first = first < 0 ? i : first;
      } else if (first < 0 && HeadingRow.isHeading(separator, lines.get(i).text)) {
        boolean units =
            heading == i - 1 && heading >= 0 && HeadingRow.isUnits(separator, lines.get(i).text);
        heading = units ? heading : i;
      }
    }
    return new Candidate(separator, rows, first, heading);
  }

  /** Two numbers or more, and nothing that looks like numbers badly split. */
  private static boolean isRow(List<String> cells) {
    int numbers = 0;
    for (String cell : cells) {
      if (isNumber(cell)) {
        numbers++;
      } else if (isBroken(cell)) {
        return false;
      }
    }
    return numbers >= 2;
  }

  private static boolean isBroken(String cell) {
    return cell.chars().allMatch(c -> AMONG_FIGURES.indexOf(c) >= 0)
        && cell.chars().anyMatch(c -> FIGURES.indexOf(c) >= 0);
  }

  static boolean isNumber(String cell) {
    return ClockTime.hasColon(cell)
        ? ClockTime.parse(cell, false).isPresent()
        : Quantity.parse(cell).filter(Quantity::plausible).isPresent();
  }

  private Layout headed(Candidate best) {
    HeadingRow row = HeadingRow.of(source, best.separator, lines.get(best.heading).text);
    List<Integer> numbers = new ArrayList<>(List.of(lines.get(best.heading).number));
    int below = best.heading + 1;
    boolean units = below < lines.size() && row.unitsIn(lines.get(below).text).isPresent();
    if (units) {
      row = row.unitsIn(lines.get(below).text).orElseThrow();
      numbers.add(lines.get(below).number);
    }
    return row.layout(numbers, decimalComma(best));
  }

  private void requireTable(Candidate best) {
    Line first = lines.get(Math.max(0, best.firstRow - 1));
    if (best.rows == 0) {
      throw InputException.at(
          source.name(),
          "line " + first.number,
          "no time and pressure can be read from '" + PassedOver.shortened(first.text) + "'",
          EXAMPLE);
    }
    List<String> above = best.separator.splitHeadings(first.text);
    int width = best.separator.split(lines.get(best.firstRow).text).size();
    requireNoLostHeadings(best);
    boolean words = above.stream().noneMatch(LayoutFinder::isNumber);
    if (best.firstRow > 0 && words && above.size() == width) {
      throw HeadingRow.missing(source, first.number, above);
    }
  }

  /** Headings that were overlooked may name other units than those that would be assumed. */
  private void requireNoLostHeadings(Candidate best) {
    for (Line line : lines.subList(0, best.firstRow)) {
      if (Stream.of(Separator.values()).anyMatch(s -> HeadingRow.isHeading(s, line.text))) {
        throw lostHeading(line, "is parted in another way than the readings", "use one separator");
      }
    }
    for (Line line : comments) {
      if (HeadingRow.isHeading(best.separator, line.text) && best.separator != Separator.BLANKS) {
        throw lostHeading(line, "stands behind '#', which marks a comment", "take the '#' away");
      }
    }
  }

  private InputException lostHeading(Line line, String problem, String remedy) {
    String text = PassedOver.shortened(line.text);
    return InputException.at(
        source.name(), "line " + line.number, "the heading '" + text + "' " + problem, remedy);
  }

  /** Whole numbers between commas may be numbers with decimal commas: better ask than guess. */
  private void requireOneMeaning(Candidate best, Layout layout) {
    if (best.separator != Separator.COMMA || layout.decimalComma().isPresent()) {
      return;
    }
    for (Line line : lines.subList(Math.max(0, best.firstRow), lines.size())) {
      List<String> cells = Separator.COMMA.split(line.text);
      long numbers = cells.stream().filter(LayoutFinder::isNumber).count();
      int known = 2 + (layout.temperature() >= 0 ? 1 : 0) + layout.unused().size();
      boolean headless = layout.headings().isEmpty();
      if (isRow(cells) && (numbers > known || headless && numbers > 2)) {
        throw InputException.at(
            source.name(),
            "line " + line.number,
            "in '" + PassedOver.shortened(line.text) + "' a comma may part columns or decimals",
            "put ';' between the columns");
      }
    }
  }

  private Stream<List<String>> rows(Candidate best) {
    return lines.stream().map(line -> best.separator.split(line.text)).filter(LayoutFinder::isRow);
  }

  private List<List<String>> cells(Candidate best) {
    return rows(best).toList();
  }

  /** The decimal mark that most numbers have; empty where none has any. */
  private Optional<Boolean> decimalComma(Candidate best) {
    List<Character> marks =
        rows(best)
            .flatMap(List::stream)
            .filter(cell -> !ClockTime.hasColon(cell))
            .flatMap(cell -> Quantity.parse(cell).stream())
            .map(Quantity::mark)
            .filter(mark -> mark != 0)
            .toList();
    long commas = marks.stream().filter(mark -> mark == ',').count();
    return marks.isEmpty() ? Optional.empty() : Optional.of(commas * 2 > marks.size());
  }
}
