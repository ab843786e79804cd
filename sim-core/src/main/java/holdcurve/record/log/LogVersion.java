package holdcurve.record.log;

import holdcurve.common.input.InputException;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The format line that our own logs carry as a comment: {@code # format: holdcurve-log/1}. */
record LogVersion(LogText source) {
  static final String LINE = "# format: holdcurve-log/1";

  private static final Pattern SHAPE =
      Pattern.compile("#\\s*format:\\s*holdcurve-log/(\\d{1,6})\\s*");

  /** Refuses a log written by a newer program. */
  void require() {
    LineCursor cursor = source.lines();
    while (cursor.next() && !cursor.holdsData()) {
      Matcher m = SHAPE.matcher(cursor.line().strip());
      if (m.matches() && Integer.parseInt(m.group(1)) > 1) {
        throw InputException.at(
            source.name(),
            "line " + cursor.number(),
            "the log has format version " + m.group(1),
            "this program reads version 1: update it, or save the log as plain CSV");
      }
    }
  }
}
