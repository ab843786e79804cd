package holdcurve.common.text;

/** Text broken into lines for a terminal of 80 columns. */
public final class WrappedText {
  private static final int WIDTH = 79;

  private WrappedText() {}

  /**
   * Lines no longer than the terminal is wide, each with a line feed at its end.
   *
   * @param indent before the first line; the others are indented as far
   */
  public static String of(String indent, String text) {
    StringBuilder lines = new StringBuilder(indent);
    int column = indent.length();
    boolean fresh = true;
    for (String word : text.split(" ")) {
      if (!fresh && column + 1 + word.length() > WIDTH) {
        lines.append('\n').append(" ".repeat(indent.length()));
        column = indent.length();
        fresh = true;
      }
      lines.append(fresh ? "" : " ").append(word);
      column += word.length() + (fresh ? 0 : 1);
      fresh = false;
    }
    return lines.append('\n').toString();
  }
}
