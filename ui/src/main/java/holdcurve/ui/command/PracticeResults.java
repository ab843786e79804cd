package holdcurve.ui.command;

import holdcurve.file.SafeFile;
import holdcurve.file.SpreadsheetText;
import holdcurve.practice.Debrief;
import holdcurve.practice.Exercise;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;

/** A class's scores, one line an exercise, for a spreadsheet. No names are asked for. */
final class PracticeResults {
  private static final String HEADING =
      "mark,exercise,level,score,certainty,time_points,minutes_used,minutes_allowed,right\r\n";

  private PracticeResults() {}

  static void add(Path file, Exercise exercise, Debrief debrief, String mark) {
    try {
      String before = Files.exists(file) ? Files.readString(file) : HEADING;
      SafeFile.write(file, before + line(exercise, debrief, mark));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String line(Exercise exercise, Debrief debrief, String mark) throws IOException {
    StringWriter text = new StringWriter();
    double used = debrief.lines().stream().mapToDouble(line -> line.step().minutes()).sum();
    try (CSVPrinter csv = new CSVPrinter(text, CSVFormat.RFC4180)) {
      csv.printRecord(
          SpreadsheetText.harmless(mark),
          SpreadsheetText.harmless(exercise.title()),
          exercise.level(),
          rounded(debrief.score().total()),
          rounded(debrief.score().certainty()),
          rounded(debrief.score().time()),
          rounded(used),
          rounded(exercise.minutes()),
          debrief.isRight() ? "yes" : "no");
    }
    return text.toString();
  }

  private static String rounded(double value) {
    return String.format(Locale.ROOT, "%.0f", value);
  }
}
