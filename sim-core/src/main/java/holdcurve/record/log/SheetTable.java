package holdcurve.record.log;

import holdcurve.common.input.InputException;
import holdcurve.common.text.TextFile;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A small table that a person typed or a program exported: settings above ({@code pressure_bar: 3},
 * with or without '#' before it), one line of headings, rows below.
 *
 * <p>Semicolons, tabs, '|' and commas part columns; numbers may have decimal commas where the comma
 * parts no columns. Headings and names of settings are compared in lower case, with one underscore
 * for anything between words and figures, so that {@code Static (mL/min)} is {@code static_ml_min}.
 *
 * @param source file or other origin, for messages
 * @param settings name → what stands there
 * @param headings names of the columns, empty for a column without
 * @param rows lines below the headings
 * @param understood what was made of the form, in plain sentences; empty for the usual one
 */
public record SheetTable(
    String source,
    Map<String, Cell> settings,
    List<String> headings,
    List<Row> rows,
    List<String> understood) {
  private static final Pattern SETTING =
      Pattern.compile("#*\\s*([\\p{L}][\\p{L}\\p{N}_ ()/%°]*?)\\s*[:=]\\s*(.*)");
  private static final int MOST_ROWS = 2000;
  private static final int MOST_MEGABYTES = 8;
  private static final int LONGEST_SETTING = 1000;

  /**
   * What stands at one place.
   *
   * @param place such as {@code line 7, static_ml_min}
   * @param text without surrounding blanks
   */
  public record Cell(String place, String text) {
    /** The number that stands here; empty if it is none. */
    public OptionalDouble number() {
      return Quantity.parse(text)
          .filter(q -> q.unit().isEmpty() && !q.huge())
          .map(q -> OptionalDouble.of(q.value()))
          .orElse(OptionalDouble.empty());
    }
  }

  /**
   * A line below the headings.
   *
   * @param line its number, the first of the file is 1
   * @param cells heading → what stands below it, empty cells left out
   */
  public record Row(int line, Map<String, Cell> cells) {}

  public SheetTable {
    rows = List.copyOf(rows);
    understood = List.copyOf(understood);
  }

  /**
   * Reads a file.
   *
   * @param key a heading that the table must have, in its plain form
   * @throws InputException if there is no such table in it, or a row doesn't fit the headings
   */
  public static SheetTable read(Path file, String key) {
    String smaller = "keep one set of injectors or one list in a file";
    TextFile text = TextFile.read(file, MOST_MEGABYTES, smaller, "save the sheet as CSV");
    return read(LogText.of(text), key);
  }

  /**
   * Reads a text, for example from the clipboard.
   *
   * @param name where it comes from, for messages
   * @param key a heading that the table must have, in its plain form
   * @throws InputException as for a file
   */
  public static SheetTable read(String name, String text, String key) {
    return read(LogText.of(name, text), key);
  }

  private static SheetTable read(LogText source, String key) {
    Map<String, Cell> settings = new LinkedHashMap<>();
    LineCursor cursor = source.lines();
    while (cursor.next()) {
      Optional<Separator> separator = separator(cursor.line(), key);
      if (separator.isPresent()) {
        return below(source, cursor, separator.get(), settings);
      }
      addSetting(source, cursor, key, settings);
    }
    throw InputException.at(
        source.name(),
        "",
        source.text().isBlank()
            ? "there is nothing in it"
            : "no line of headings names the column '" + key + "'",
        "begin the table with a line of headings, '" + key + "' among them");
  }

  private static Optional<Separator> separator(String line, String key) {
    for (Separator separator : Separator.values()) {
      List<String> cells = separator.split(line);
      if (separator != Separator.BLANKS
          && cells.size() > 1
          && cells.stream().anyMatch(cell -> plain(cell).equals(key))) {
        return Optional.of(separator);
      }
    }
    return Optional.empty();
  }

  private static void addSetting(
      LogText source, LineCursor cursor, String key, Map<String, Cell> settings) {
    String line = cursor.line().strip();
    boolean comment = line.startsWith("#");
    if (line.length() > LONGEST_SETTING) {
      throw InputException.at(
          source.name(),
          "line " + cursor.number(),
          "'" + PassedOver.shortened(line) + "' is too long for a setting",
          "keep it below " + LONGEST_SETTING + " characters");
    }
    Matcher m = SETTING.matcher(trimmed(line));
    String name = m.matches() ? m.group(1) : "";
    String text = m.matches() ? m.group(2) : "";
    if (!m.matches() && !comment) {
      for (Separator separator : List.of(Separator.SEMICOLON, Separator.TAB, Separator.COMMA)) {
        List<String> cells = separator.split(trimmed(line));
        if (cells.size() == 2) {
          name = cells.get(0);
          text = cells.get(1);
          break;
        }
      }
    }
    boolean prose = comment && name.contains(" ");
    if (!name.isEmpty() && !prose) {
      String place = "line " + cursor.number() + ", " + name;
      if (settings.put(plain(name), new Cell(place, text)) != null) {
        throw InputException.at(
            source.name(), place, "'" + name + "' is said a second time", "keep one of the two");
      }
    } else if (cursor.holdsData()) {
      throw InputException.at(
          source.name(),
          "line " + cursor.number(),
          "'" + PassedOver.shortened(line) + "' is neither a setting nor a line of headings",
          "begin with headings, '" + key + "' among them; settings above are name: value");
    }
  }

  /** Spreadsheets fill every line up with separators. */
  private static String trimmed(String line) {
    return line.replaceAll("[;,|\\t\\s]+$", "");
  }

  private static SheetTable below(
      LogText source, LineCursor cursor, Separator separator, Map<String, Cell> settings) {
    List<String> headings = headings(source, cursor.number(), separator.split(cursor.line()));
    List<Row> rows = new ArrayList<>();
    boolean comma = false;
    while (cursor.next()) {
      if (cursor.holdsData()) {
        Row row = row(source, cursor.number(), cells(source, cursor, separator), headings);
        rows.add(row);
        comma |= row.cells.values().stream().anyMatch(SheetTable::hasDecimalComma);
        if (rows.size() > MOST_ROWS) {
          throw InputException.at(
              source.name(), "", "there are more than 2000 rows", "keep it to 2000");
        }
      }
    }
    if (rows.isEmpty()) {
      throw InputException.at(
          source.name(), "", "there are headings but no rows", "add rows below them");
    }
    List<String> understood = new ArrayList<>();
    if (!source.encoding().isEmpty()) {
      understood.add("Text read as " + source.encoding() + ".");
    }
    if (separator != Separator.COMMA || comma) {
      understood.add(
          "Columns separated by "
              + separator.words()
              + ", decimal "
              + (comma ? "comma" : "point")
              + ".");
    }
    return new SheetTable(source.name(), settings, headings, rows, understood);
  }

  private static boolean hasDecimalComma(Cell cell) {
    return Quantity.parse(cell.text).filter(q -> q.mark() == ',').isPresent();
  }

  private static List<String> headings(LogText source, int line, List<String> cells) {
    List<String> headings = new ArrayList<>();
    for (String cell : cells) {
      String plain = plain(cell);
      if (!plain.isEmpty() && headings.contains(plain)) {
        throw InputException.at(
            source.name(),
            "line " + line,
            "the heading '" + cell + "' stands there twice",
            "give each column its own heading");
      }
      headings.add(plain);
    }
    return List.copyOf(headings);
  }

  private static List<String> cells(LogText source, LineCursor cursor, Separator separator) {
    if (cursor.line().chars().filter(c -> c == '"').count() % 2 != 0) {
      throw InputException.at(
          source.name(),
          "line " + cursor.number(),
          "a quotation mark is left open in '" + PassedOver.shortened(cursor.line()) + "'",
          "close it, and write every row in one line");
    }
    return separator.split(cursor.line());
  }

  private static Row row(LogText source, int line, List<String> cells, List<String> headings) {
    Map<String, Cell> found = new LinkedHashMap<>();
    for (int i = 0; i < cells.size(); i++) {
      String text = cells.get(i);
      if (text.isEmpty() || text.equals("-") || text.equals("–")) {
        continue;
      }
      if (i >= headings.size() || headings.get(i).isEmpty()) {
        throw InputException.at(
            source.name(),
            "line " + line,
            "'" + PassedOver.shortened(text) + "' stands under no heading",
            "give every column a heading; with decimal commas put ';' between the columns");
      }
      String place = "line " + line + ", " + headings.get(i);
      found.put(headings.get(i), new Cell(place, text));
    }
    return new Row(line, found);
  }

  /** Lower case, one underscore between words and figures. */
  private static String plain(String heading) {
    return heading
        .strip()
        .toLowerCase(Locale.ROOT)
        .replace("%", " percent")
        .replace("°", " ")
        .replace("ω", "ohm")
        .replace('³', '3')
        .replaceAll("(?<=\\d),(?=\\d)", ".")
        .replaceAll("[^\\p{L}\\p{N}.]+", "_")
        .replaceAll("^_+|_+$", "");
  }
}
