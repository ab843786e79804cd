package holdcurve.record.log;

import holdcurve.common.input.InputException;
import holdcurve.common.text.TextFile;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Path;

/**
 * The text of a log and where it came from.
 *
 * @param name file or other origin, for messages
 * @param text everything after a byte-order mark
 * @param encoding how bytes were read as text; empty where there is nothing to say
 */
record LogText(String name, String text, String encoding) {
  /** Largest file that is read [bytes], and longest text [characters]. */
  static final int MAX_SIZE = 32 * 1024 * 1024;

  private static final String REMEDY = "save the readings as CSV or plain text";
  private static final String SMALLER = "cut it to the hold itself or thin out the readings";

  static LogText of(Path file) {
    return of(TextFile.read(file, MAX_SIZE >> 20, SMALLER, REMEDY));
  }

  static LogText of(TextFile file) {
    return of(file.name(), file.text(), file.encoding());
  }

  static LogText of(String name, Reader reader) throws IOException {
    StringBuilder text = new StringBuilder();
    char[] piece = new char[1 << 16];
    for (int n = reader.read(piece); n >= 0; n = reader.read(piece)) {
      if (text.length() + n > MAX_SIZE) {
        throw InputException.at(name, "", "the text is longer than 32 MB", SMALLER);
      }
      text.append(piece, 0, n);
    }
    return of(name, text.toString());
  }

  static LogText of(String name, String text) {
    return of(name, text, "");
  }

  static LogText of(String name, String text, String encoding) {
    if (text.indexOf('\0') >= 0) {
      throw InputException.at(name, "", "this is not a text file", REMEDY);
    }
    return new LogText(name, text.startsWith("\ufeff") ? text.substring(1) : text, encoding);
  }

  LineCursor lines() {
    return new LineCursor(this);
  }

  /** One line by its number, the first is 1. Slow: for messages only. */
  String line(int number) {
    LineCursor cursor = lines();
    while (cursor.next()) {
      if (cursor.number() == number) {
        return cursor.line();
      }
    }
    throw new IllegalArgumentException("line " + number + " is beyond the end");
  }
}
