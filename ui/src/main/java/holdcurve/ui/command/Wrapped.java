package holdcurve.ui.command;

import holdcurve.common.text.WrappedText;
import java.io.PrintWriter;

/** Prints wrapped text, with the ends of lines that the system uses. */
final class Wrapped {
  private Wrapped() {}

  /**
   * @param indent before the first line; the others are indented as far
   */
  static void print(PrintWriter out, String indent, String text) {
    WrappedText.of(indent, text).lines().forEach(out::println);
  }
}
