package holdcurve.record.log;

/**
 * A line of the file that gave no reading.
 *
 * @param line line in the file, the first is 1
 * @param reason goes after "Line 9": {@code "has no pressure"}
 * @param text the line as it stands there, cut to 60 characters
 */
public record PassedOver(int line, String reason, String text) {
  private static final int SHOWN = 60;

  public PassedOver {
    text = shortened(text);
  }

  /** The whole sentence for the user. */
  public String sentence() {
    return "Line " + line + " " + reason + " and was passed over: '" + text + "'.";
  }

  static String shortened(String text) {
    String plain = text.replaceAll("[\\p{Cc}\\p{Cf}]", " ").replaceAll(" {3,}", "  ").strip();
    return plain.length() <= SHOWN ? plain : plain.substring(0, SHOWN) + "…";
  }
}
