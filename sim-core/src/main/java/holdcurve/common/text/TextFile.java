package holdcurve.common.text;

import holdcurve.common.input.Cancellation;
import holdcurve.common.input.InputException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;

/**
 * A text and where it came from.
 *
 * @param name file or other origin, for messages
 * @param text everything after a byte-order mark
 * @param encoding how bytes were read as text; empty where there is nothing to say
 */
public record TextFile(String name, String text, String encoding) {
  private static final int MEGABYTE = 1 << 20;

  public TextFile {
    text = text.startsWith("\ufeff") ? text.substring(1) : text;
  }

  /**
   * Reads a file in UTF-8, UTF-16 or Windows-1252.
   *
   * @param megabytes the largest that is read
   * @param smaller how to make it smaller, for messages
   * @param remedy what to do with a file that is no text, for messages
   * @throws InputException if it can't be read, is too large or is no text
   */
  public static TextFile read(Path file, int megabytes, String smaller, String remedy) {
    String name = file.toString();
    try {
      return TextDecoder.decode(name, bytes(file, megabytes, smaller), remedy);
    } catch (NoSuchFileException e) {
      throw InputException.because(
          name, "", "there is no such file", "check the name and the folder", e);
    } catch (IOException | SecurityException e) {
      Cancellation.check();
      throw InputException.because(
          name, "", "the file can't be read (" + e.getMessage() + ")", "check its permissions", e);
    }
  }

  /**
   * Reads bytes like those of a file.
   *
   * @throws InputException if they are no text
   */
  public static TextFile of(String name, byte[] bytes, String remedy) {
    return TextDecoder.decode(name, bytes, remedy);
  }

  /** A device or a pipe may never end, so only files are opened. */
  private static byte[] bytes(Path file, int megabytes, String smaller) throws IOException {
    String name = file.toString();
    if (Files.isDirectory(file)) {
      throw InputException.at(name, "", "this is a folder", "name a file inside it");
    }
    if (Files.exists(file) && !Files.isRegularFile(file)) {
      throw InputException.at(name, "", "this is a device or a pipe", "name a file");
    }
    int most = megabytes * MEGABYTE;
    try (InputStream in = Files.newInputStream(file)) {
      byte[] bytes = in.readNBytes(most + 1);
      if (bytes.length > most) {
        throw InputException.at(name, "", "the file is larger than " + megabytes + " MB", smaller);
      }
      return bytes;
    }
  }

  /** How it was read, as a sentence; empty where there is nothing to say. */
  public String said() {
    return encoding.isEmpty() ? "" : "Text read as " + encoding + ".";
  }
}
