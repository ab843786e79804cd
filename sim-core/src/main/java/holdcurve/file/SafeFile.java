package holdcurve.file;

import holdcurve.check.InputException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.UUID;

/**
 * Writes a file so that at every moment either the old or the new content stands there whole, and
 * keeps one backup.
 */
public final class SafeFile {
  private SafeFile() {}

  /**
   * Writes beside the target, keeps the old content as {@code name~}, then puts the new one in
   * place in one step.
   *
   * @throws InputException if it can't be written, saying where; the old content is then still
   *     there
   */
  public static void write(Path target, String text) {
    write(target, text.getBytes(StandardCharsets.UTF_8));
  }

  /** Like {@link #write(Path, String)}, for what isn't text. */
  public static void write(Path target, byte[] content) {
    try {
      Path folder = target.toAbsolutePath().getParent();
      Path fresh = folder.resolve("." + target.getFileName() + "." + UUID.randomUUID() + ".part");
      try {
        Files.write(fresh, content, StandardOpenOption.CREATE_NEW);
        if (Files.exists(target)) {
          Path backup = target.resolveSibling(target.getFileName() + "~");
          Files.copy(target, backup, StandardCopyOption.REPLACE_EXISTING);
        }
        replace(fresh, target);
      } finally {
        Files.deleteIfExists(fresh);
      }
    } catch (IOException e) {
      throw InputException.because(
          target.toString(),
          "",
          "the file can't be written",
          "choose a folder that exists and may be written to",
          e);
    }
  }

  private static void replace(Path fresh, Path target) throws IOException {
    try {
      Files.move(
          fresh, target, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(fresh, target, StandardCopyOption.REPLACE_EXISTING);
    }
  }
}
