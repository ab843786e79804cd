package holdcurve.ui.command;

import java.io.PrintWriter;

/** Text broken into lines for a terminal of 80 columns. */
final class Wrapped {
  private static final int WIDTH = 79;

  private Wrapped() {}

  /**
   * Prints a text in lines no longer than the terminal is wide.
   *
   * @param indent before the first line; the others are indented as far
   */
  static void print(PrintWriter out, String indent, String text) {
    StringBuilder line = new StringBuilder(indent);
    String next = indent.replaceAll(".", " ");
    boolean fresh = true;
    for (String word : text.split(" ")) {
      if (!fresh && line.length() + 1 + word.length() > WIDTH) {
        out.println(line);
        line = new StringBuilder(next);
        fresh = true;
      }
      line.append(fresh ? "" : " ").append(word);
      fresh = false;
    }
    out.println(line);
  }
}
