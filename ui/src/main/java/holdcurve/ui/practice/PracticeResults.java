package holdcurve.ui.practice;

import holdcurve.common.input.InputException;
import holdcurve.common.text.SpreadsheetText;
import holdcurve.common.text.TextFile;
import holdcurve.file.SafeFile;
import holdcurve.training.Debrief;
import holdcurve.training.Exercise;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;

/** A class's scores, one line an exercise, newest first, for a spreadsheet. No names are asked. */
public final class PracticeResults {
  private static final String MARK = "mark";
  private static final String EXERCISE = "exercise";
  private static final String LEVEL = "level";
  private static final String SCORE = "score";
  private static final List<String> COLUMNS =
      List.of(
          MARK,
          EXERCISE,
          LEVEL,
          SCORE,
          "odds",
          "tests",
          "repair",
          "minutes_used",
          "minutes_allowed",
          "right");

  private static final int MOST_MEGABYTES = 8;
  private static final String ANOTHER = "name a file of results, or a new one";

  /**
   * One line.
   *
   * @param cells column → what stands there
   */
  public record Result(Map<String, String> cells) {
    public Result {
      cells = Map.copyOf(cells);
    }

    /** What a debrief comes to. */
    public static Result of(Exercise exercise, Debrief debrief, String mark) {
      Map<String, String> cells = new LinkedHashMap<>();
      cells.put(MARK, SpreadsheetText.harmless(mark));
      cells.put(EXERCISE, SpreadsheetText.harmless(exercise.title()));
      cells.put(LEVEL, Integer.toString(exercise.level()));
      cells.put(SCORE, rounded(debrief.score().total()));
      cells.put("odds", rounded(debrief.score().odds()));
      cells.put("tests", rounded(debrief.score().tests()));
      cells.put("repair", rounded(debrief.score().repair()));
      cells.put("minutes_used", rounded(debrief.minutes()));
      cells.put("minutes_allowed", rounded(exercise.minutes()));
      cells.put("right", debrief.isRight() ? "yes" : "no");
      return new Result(cells);
    }

    /** The same under another mark. */
    public Result marked(String mark) {
      Map<String, String> changed = new LinkedHashMap<>(cells);
      changed.put(MARK, SpreadsheetText.harmless(mark));
      return new Result(changed);
    }

    /** What stands in a column; empty for nothing. */
    public String in(String column) {
      return cells.getOrDefault(column, "");
    }

    /** The class's own word for the learner; may be empty. */
    public String mark() {
      return in(MARK);
    }

    public String exercise() {
      return in(EXERCISE);
    }

    /** Points; below 0 where none can be read. */
    public int score() {
      String score = in(SCORE);
      return score.matches("\\d{1,3}") ? Integer.parseInt(score) : -1;
    }
  }

  private PracticeResults() {}

  /**
   * Puts a line on top of a file, which is made if it isn't there. Columns of older files stay.
   *
   * @throws InputException if the file can't be read or written
   */
  public static void add(Path file, Result result) {
    List<Result> all = new ArrayList<>(List.of(result));
    if (Files.exists(file)) {
      all.addAll(read(file));
    }
    write(file, all);
  }

  /**
   * Writes results in the order they come.
   *
   * @throws InputException if the file can't be written
   */
  public static void write(Path file, List<Result> results) {
    Set<String> columns = new LinkedHashSet<>(COLUMNS);
    results.forEach(result -> result.cells().keySet().stream().sorted().forEach(columns::add));
    StringWriter text = new StringWriter();
    try (CSVPrinter csv = new CSVPrinter(text, CSVFormat.RFC4180)) {
      csv.printRecord(columns);
      for (Result result : results) {
        csv.printRecord(columns.stream().map(result::in).toList());
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    SafeFile.write(file, text.toString());
  }

  /**
   * Reads a file of results, newest first.
   *
   * @throws InputException if it is none
   */
  public static List<Result> read(Path file) {
    String text = TextFile.read(file, MOST_MEGABYTES, "begin a new file", ANOTHER).text();
    List<Result> results = new ArrayList<>();
    try (CSVParser parser = CSVParser.parse(text, CSVFormat.RFC4180)) {
      List<CSVRecord> records = parser.getRecords();
      List<String> columns = records.isEmpty() ? COLUMNS : records.get(0).toList();
      requireResults(file, columns);
      records.stream().skip(1).forEach(record -> results.add(result(columns, record)));
    } catch (IOException | UncheckedIOException | IllegalStateException e) {
      throw InputException.because(
          file.toString(), "", "the results in it can't be read", ANOTHER, e);
    }
    return results;
  }

  private static Result result(List<String> columns, CSVRecord record) {
    Map<String, String> cells = new LinkedHashMap<>();
    for (int i = 0; i < Math.min(columns.size(), record.size()); i++) {
      cells.put(columns.get(i), record.get(i));
    }
    return new Result(cells);
  }

  /** Another table would lose its first line. */
  private static void requireResults(Path file, List<String> columns) {
    if (columns.size() < 2 || !columns.subList(0, 2).equals(COLUMNS.subList(0, 2))) {
      throw InputException.at(
          file.toString(),
          "line 1",
          "the columns are not those of results, which begin with mark,exercise",
          ANOTHER);
    }
  }

  private static String rounded(double value) {
    return Long.toString(Math.round(value));
  }
}
