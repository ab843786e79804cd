package holdcurve.log;

import holdcurve.check.InputException;
import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
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
  static final int MAX_SIZE = 64 * 1024 * 1024;

  private static final String SMALLER = "cut it to the hold itself or thin out the readings";

  static LogText of(Path file) {
    String name = file.toString();
    if (Files.isDirectory(file)) {
      throw InputException.at(name, "", "this is a folder", "name a log file");
    }
    try {
      if (Files.size(file) > MAX_SIZE) {
        throw InputException.at(name, "", "the file is larger than 64 MB", SMALLER);
      }
      return LogDecoder.decode(name, Files.readAllBytes(file));
    } catch (NoSuchFileException e) {
      throw InputException.because(
          name, "", "there is no such file", "check the name and the folder", e);
    } catch (IOException e) {
      throw InputException.because(
          name, "", "the file can't be read (" + e.getMessage() + ")", "check its permissions", e);
    }
  }

  static LogText of(String name, Reader reader) throws IOException {
    StringBuilder text = new StringBuilder();
    char[] piece = new char[1 << 16];
    for (int n = reader.read(piece); n >= 0; n = reader.read(piece)) {
      if (text.length() + n > MAX_SIZE) {
        throw InputException.at(name, "", "the text is longer than 64 MB", SMALLER);
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
      throw InputException.at(name, "", "this is not a text file", LogDecoder.REMEDY);
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
