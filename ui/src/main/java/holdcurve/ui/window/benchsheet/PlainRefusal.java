package holdcurve.ui.window.benchsheet;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Refusals of typed tables. The reader names lines of a text; the person who fills in a form sees
 * rows, so a line is named by what stands in its first column.
 */
final class PlainRefusal {
  private static final Pattern LINE = Pattern.compile("^line (\\d+)");

  private PlainRefusal() {}

  /**
   * @param message of the reader
   * @param name of the text, as the reader was told
   * @param text that was read
   */
  static String of(String message, String name, String text) {
    String bare = message.replaceFirst("^" + name + ",? ?", "").replaceFirst("^: ", "");
    Matcher m = LINE.matcher(bare);
    if (!m.find()) {
      return bare;
    }
    int line = Integer.parseInt(m.group(1));
    String row = text.lines().skip(line - 1L).findFirst().orElse("");
    String rest = bare.substring(m.end());
    for (SheetColumn column : SheetColumn.values()) {
      String heading = column.heading().toLowerCase(Locale.ROOT);
      rest =
          rest.replaceFirst(
              "^, " + heading + "(_[\\d.]+ms_ml_1000)?:", ", " + column.meaning() + ":");
    }
    for (String reading : new String[] {"before", "after", "later"}) {
      rest = rest.replaceFirst("^, " + reading + "_bar:", ", reading " + reading + ":");
    }
    return row.contains(";")
        ? "Injector " + row.substring(0, row.indexOf(';')) + rest
        : rest.replaceFirst("^, ", "");
  }
}
