package holdcurve.ui.practice;

import holdcurve.common.input.InputException;
import holdcurve.common.text.SpreadsheetText;
import holdcurve.common.text.TextFile;
import holdcurve.file.SafeFile;
import holdcurve.training.Debrief;
import holdcurve.training.Exercise;
import holdcurve.training.RepairScore;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;

/** A class's scores, one line an exercise, for a spreadsheet. No names are asked for. */
public final class PracticeResults {
  private static final List<String> COLUMNS =
      List.of(
          "mark",
          "exercise",
          "level",
          "score",
          "certainty",
          "time_points",
          "minutes_used",
          "minutes_allowed",
          "right",
          "repair_points");

  private static final int MOST_MEGABYTES = 8;
  private static final String ANOTHER = "name a file of results, or a new one";

  private PracticeResults() {}

  /**
   * Adds a line to a file, which is made if it isn't there. A file with fewer columns, of before
   * repairs were asked for, gets the missing ones empty.
   *
   * @param repair empty where it wasn't asked for
   * @param mark a word of the class's own; may be empty
   * @throws holdcurve.common.input.InputException if the file can't be written
   */
  public static void add(
      Path file, Exercise exercise, Debrief debrief, Optional<RepairScore> repair, String mark) {
    try {
      List<List<String>> lines = new ArrayList<>(List.of(COLUMNS));
      lines.addAll(before(file));
      lines.add(line(exercise, debrief, repair, mark));
      StringWriter text = new StringWriter();
      try (CSVPrinter csv = new CSVPrinter(text, CSVFormat.RFC4180)) {
        csv.printRecords(lines);
      }
      SafeFile.write(file, text.toString());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static List<List<String>> before(Path file) {
    List<List<String>> lines = new ArrayList<>();
    if (!Files.exists(file)) {
      return lines;
    }
    String text = TextFile.read(file, MOST_MEGABYTES, "begin a new file", ANOTHER).text();
    try (CSVParser parser = CSVParser.parse(text, CSVFormat.RFC4180)) {
      for (CSVRecord record : parser.getRecords()) {
        List<String> cells = new ArrayList<>(record.toList());
        while (cells.size() < COLUMNS.size()) {
          cells.add("");
        }
        lines.add(cells);
      }
    } catch (IOException | UncheckedIOException | IllegalStateException e) {
      throw InputException.because(
          file.toString(), "", "the results in it can't be read", ANOTHER, e);
    }
    requireResults(file, lines);
    return lines.isEmpty() ? lines : lines.subList(1, lines.size());
  }

  /** Another table would lose its first line. */
  private static void requireResults(Path file, List<List<String>> lines) {
    if (!lines.isEmpty() && !lines.get(0).subList(0, 2).equals(COLUMNS.subList(0, 2))) {
      throw InputException.at(
          file.toString(),
          "line 1",
          "the columns are not those of results, which begin with mark,exercise",
          ANOTHER);
    }
  }

  private static List<String> line(
      Exercise exercise, Debrief debrief, Optional<RepairScore> repair, String mark) {
    double used = debrief.lines().stream().mapToDouble(line -> line.step().minutes()).sum();
    return List.of(
        SpreadsheetText.harmless(mark),
        SpreadsheetText.harmless(exercise.title()),
        Integer.toString(exercise.level()),
        rounded(debrief.score().total()),
        rounded(debrief.score().certainty()),
        rounded(debrief.score().time()),
        rounded(used),
        rounded(exercise.minutes()),
        debrief.isRight() ? "yes" : "no",
        repair.map(score -> rounded(score.points())).orElse(""));
  }

  private static String rounded(double value) {
    return String.format(Locale.ROOT, "%.0f", value);
  }
}
