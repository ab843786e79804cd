package holdcurve.common.text;

import java.util.regex.Pattern;

/**
 * Text for the cells of a spreadsheet, which takes what begins with one of a few signs for a
 * formula. An apostrophe in front makes it a text.
 */
public final class SpreadsheetText {
  private static final Pattern FORMULA = Pattern.compile("(?s)'*\\s*[=+\\-@\\t\\r\\n＝＋－＠].*");

  private SpreadsheetText() {}

  /** A text that a spreadsheet would take for a formula becomes one it shows. */
  public static String harmless(String text) {
    return FORMULA.matcher(text).matches() ? "'" + text : text;
  }

  /** The text that was made harmless. */
  public static String original(String text) {
    return text.startsWith("'") && FORMULA.matcher(text).matches() ? text.substring(1) : text;
  }
}
