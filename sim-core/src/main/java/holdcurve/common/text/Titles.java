package holdcurve.common.text;

/** Titles from files, as they are shown: whoever wrote them may have put a page there. */
public final class Titles {
  /** Two lines of a report. */
  private static final int LONGEST = 120;

  /** A cut may go back this far to the end of a word. */
  private static final int WORD = 20;

  private Titles() {}

  /** The title in one line; one too long is cut, at the end of a word if there is one near. */
  public static String shown(String title) {
    String line = title.strip().replaceAll("\\s+", " ");
    int length = line.codePointCount(0, line.length());
    if (length <= LONGEST) {
      return line;
    }
    int end = line.offsetByCodePoints(0, LONGEST - 1);
    int space = line.lastIndexOf(' ', end);
    return line.substring(0, space > end - WORD ? space : end) + "…";
  }
}
