package holdcurve.ui.window.holdtests;

import holdcurve.common.input.InputException;
import holdcurve.common.text.TextFile;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Path;
import java.util.Arrays;

/** A file that another program is still writing, up to the last line that is whole. */
final class WholeLines {
  /** A log of one hold is far smaller [bytes]. */
  private static final long MOST = 32L << 20;

  private WholeLines() {}

  /**
   * The text as it stands now; a last line without its end is left for later.
   *
   * @throws InputException if it can't be read, is too large or is no text
   */
  static String of(Path file) {
    String name = file.getFileName().toString();
    byte[] bytes;
    try (RandomAccessFile open = new RandomAccessFile(file.toFile(), "r")) {
      if (open.length() > MOST) {
        throw InputException.at(name, "", "the file is larger than 32 MB", "follow a shorter log");
      }
      bytes = new byte[(int) open.length()];
      open.readFully(bytes);
    } catch (IOException e) {
      throw InputException.because(
          name, "", "the file can't be read now", "see that it is there", e);
    }
    return TextFile.of(name, Arrays.copyOf(bytes, end(bytes)), "follow a table of text").text();
  }

  /** Behind the last line feed; in UTF-16 the low byte may come first. */
  private static int end(byte[] bytes) {
    boolean lowFirst = bytes.length > 1 && (bytes[0] & 0xFF) == 0xFF && (bytes[1] & 0xFF) == 0xFE;
    for (int i = bytes.length - 1; i >= 0; i--) {
      if (bytes[i] == '\n') {
        return Math.min(bytes.length, lowFirst ? i + 2 : i + 1);
      }
    }
    return 0;
  }
}
