package holdcurve.record.log;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** What stands between two columns. The order is the order of preference when in doubt. */
enum Separator {
  SEMICOLON(';', "';'"),
  TAB('\t', "tabs"),
  BAR('|', "'|'"),
  COMMA(',', "','"),
  BLANKS(' ', "blanks");

  private static final Pattern GAP = Pattern.compile("[\\s\\u00a0]+");
  private static final Pattern WIDE_GAP = Pattern.compile("[\\s\\u00a0]{2,}");

  private final char mark;
  private final String words;

  Separator(char mark, String words) {
    this.mark = mark;
    this.words = words;
  }

  String words() {
    return words;
  }

  /** The cells of a line without their quotes and surrounding blanks. */
  List<String> split(String line) {
    if (this == BLANKS) {
      return List.of(GAP.split(clean(line)));
    }
    return line.indexOf('"') < 0 ? plain(line) : quoted(line);
  }

  /**
   * The cells of a heading line. Between blanks, a heading of two words with its unit is one cell
   * where wider gaps show it.
   */
  List<String> splitHeadings(String line) {
    if (this != BLANKS) {
      return split(line);
    }
    List<String> wide = List.of(WIDE_GAP.split(clean(line)));
    return wide.size() > 1 ? wide : split(clean(line).replaceAll("\\s+([\\[(])", "$1"));
  }

  private List<String> plain(String line) {
    List<String> cells = new ArrayList<>(6);
    int from = 0;
    for (int to = line.indexOf(mark); to >= 0; to = line.indexOf(mark, from)) {
      cells.add(clean(line.substring(from, to)));
      from = to + 1;
    }
    cells.add(clean(line.substring(from)));
    return cells;
  }

  private List<String> quoted(String line) {
    CSVFormat format =
        CSVFormat.DEFAULT.builder().setDelimiter(mark).setIgnoreSurroundingSpaces(true).build();
    try (CSVParser parser = CSVParser.parse(line, format)) {
      List<String> cells = new ArrayList<>(6);
      for (CSVRecord record : parser) {
        record.forEach(cell -> cells.add(clean(cell)));
      }
      return cells;
    } catch (IOException | UncheckedIOException | IllegalStateException unbalanced) {
      return plain(line.replace("\"", ""));
    }
  }

  private static String clean(String cell) {
    return cell.replace('\u00a0', ' ').strip();
  }
}
