package holdcurve.record.log;

import holdcurve.common.input.Cancellation;
import holdcurve.common.input.InputException;

/**
 * Walks through the lines of a text, whatever ends them (LF, CR LF or CR), and keeps the limits.
 */
final class LineCursor {
  static final int MAX_LINES = 1_000_000;
  static final int MAX_LENGTH = 10_000;

  private static final String EMPTY = ";,|\"\u00a0";

  private final LogText source;
  private int next;
  private int number;
  private String line = "";

  LineCursor(LogText source) {
    this.source = source;
  }

  /** Steps to the next line; false at the end. */
  boolean next() {
    Cancellation.check();
    String text = source.text();
    if (next >= text.length()) {
      return false;
    }
    int end = next;
    while (end < text.length() && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
      end++;
    }
    number++;
    requireLimits(end - next);
    line = text.substring(next, end);
    boolean pair = end + 1 < text.length() && text.charAt(end) == '\r';
    next = pair && text.charAt(end + 1) == '\n' ? end + 2 : end + 1;
    return true;
  }

  private void requireLimits(int length) {
    if (length > MAX_LENGTH) {
      throw InputException.at(
          source.name(),
          "line " + number,
          "the line has " + length + " characters",
          "a line of a log has at most " + MAX_LENGTH);
    }
    if (number > MAX_LINES) {
      throw InputException.at(
          source.name(), "", "there are more than 1 000 000 lines", "thin out the readings");
    }
  }

  /** Number of the current line, the first is 1. */
  int number() {
    return number;
  }

  String line() {
    return line;
  }

  /** Whether the current line holds anything but blanks and separators, and is no comment. */
  boolean holdsData() {
    for (int i = 0; i < line.length(); i++) {
      char c = line.charAt(i);
      if (!Character.isWhitespace(c) && !Character.isISOControl(c) && EMPTY.indexOf(c) < 0) {
        return c != '#';
      }
    }
    return false;
  }
}
