package holdcurve.file;

/** Text for the cells of a spreadsheet. */
public final class SpreadsheetText {
  private SpreadsheetText() {}

  /** A text that a spreadsheet would take for a formula becomes one it shows. */
  public static String harmless(String text) {
    return text.matches("(?s)[=+\\-@\\t\\r].*") ? "'" + text : text;
  }
}
