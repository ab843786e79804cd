package holdcurve.ui.command;

import java.io.PrintWriter;

/** Lines of a terminal, 80 columns wide. */
final class TextLines {
  private static final int WIDTH = 79;

  private final PrintWriter out;

  TextLines(PrintWriter out) {
    this.out = out;
  }

  /** A paragraph; its first line begins with {@code indent}, the others as far in. */
  void wrap(String indent, String text) {
    StringBuilder line = new StringBuilder(indent);
    String next = " ".repeat(indent.length());
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

  void blank() {
    out.println();
  }

  void line(String text) {
    out.println(text.stripTrailing());
  }
}
