package holdcurve.file;

import holdcurve.common.input.Cancellation;
import holdcurve.common.input.InputException;
import java.io.IOException;
import java.lang.System.Logger.Level;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.DirectoryIteratorException;
import java.nio.file.DirectoryStream;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.ReadOnlyFileSystemException;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;

/**
 * Writes a file so that at every moment either the old or the new content stands there whole, and
 * keeps one backup, which is whole at every moment too.
 */
public final class SafeFile {
  private static final System.Logger LOG = System.getLogger(SafeFile.class.getName());
  private static final String PART = ".part";
  private static final Duration OLD = Duration.ofHours(1);
  private static final String UNCHANGED = "; what stood there is unchanged";

  private SafeFile() {}

  /**
   * Writes beside the target, keeps the old content as {@code name~}, then puts the new one in
   * place in one step.
   *
   * @throws InputException if it can't be written, saying where; the old content is then still
   *     there
   * @throws java.util.concurrent.CancellationException if the thread is interrupted on the way
   */
  public static void write(Path target, String text) {
    write(target, text.getBytes(StandardCharsets.UTF_8));
  }

  /** Like {@link #write(Path, String)}, for what isn't text. */
  public static void write(Path target, byte[] content) {
    write(target, content, Disk.REAL);
  }

  static void write(Path target, String text, Disk disk) {
    write(target, text.getBytes(StandardCharsets.UTF_8), disk);
  }

  /** Five steps: new content beside, backup beside, backup in place, content in place, clearing. */
  static void write(Path target, byte[] content, Disk disk) {
    try {
      require(target);
      Path place = Files.exists(target) ? target.toRealPath() : target.toAbsolutePath();
      Path fresh = beside(place);
      Path kept = beside(place);
      try {
        disk.create(fresh, content);
        if (Files.exists(place)) {
          disk.create(kept, Files.readAllBytes(place));
          disk.move(kept, place.resolveSibling(place.getFileName() + "~"));
        }
        disk.move(fresh, place);
      } finally {
        clear(fresh, disk);
        clear(kept, disk);
      }
      clearOld(place, disk);
    } catch (IOException | ReadOnlyFileSystemException e) {
      Cancellation.check();
      throw failed(target, e);
    }
  }

  private static Path beside(Path place) {
    return place.resolveSibling(start(place) + UUID.randomUUID() + PART);
  }

  private static String start(Path place) {
    return "." + place.getFileName() + ".";
  }

  /** What is left behind costs room and nothing else. */
  private static void clear(Path part, Disk disk) {
    try {
      disk.delete(part);
    } catch (IOException e) {
      LOG.log(Level.DEBUG, part + " stays behind", e);
    }
  }

  /** Takes away what a process that was killed left behind. */
  private static void clearOld(Path place, Disk disk) {
    Instant since = Instant.now().minus(OLD);
    try (DirectoryStream<Path> parts =
        Files.newDirectoryStream(
            place.getParent(), part -> isPart(part, start(place)) && isOlder(part, since))) {
      parts.forEach(part -> clear(part, disk));
    } catch (IOException | DirectoryIteratorException e) {
      LOG.log(Level.DEBUG, "looking for what was left behind beside " + place, e);
    }
  }

  private static boolean isPart(Path file, String start) {
    String name = file.getFileName().toString();
    return name.startsWith(start) && name.endsWith(PART);
  }

  private static boolean isOlder(Path file, Instant since) throws IOException {
    return Files.getLastModifiedTime(file).toInstant().isBefore(since);
  }

  private static void require(Path target) {
    if (Files.isDirectory(target)) {
      throw InputException.at(
          target.toString(), "", "this is a folder", "name the file that is to be written");
    }
    Path folder = target.toAbsolutePath().getParent();
    if (folder == null || !Files.isDirectory(folder)) {
      throw InputException.at(
          target.toString(),
          "",
          "there is no folder '" + folder + "'",
          "make it, or choose a folder that exists");
    }
    if (Files.exists(target) && !Files.isWritable(target)) {
      throw InputException.at(
          target.toString(),
          "",
          "the file is protected against writing",
          "take the protection away, or choose another name" + UNCHANGED);
    }
  }

  private static InputException failed(Path target, Exception cause) {
    String name = target.toString();
    if (cause instanceof AccessDeniedException || cause instanceof ReadOnlyFileSystemException) {
      return InputException.because(
          name, "", "its folder may not be written to", "choose another folder" + UNCHANGED, cause);
    }
    if (cause instanceof NoSuchFileException) {
      return InputException.because(
          name, "", "its folder takes no new files", "choose another folder" + UNCHANGED, cause);
    }
    String reason =
        cause instanceof FileSystemException f && f.getReason() != null
            ? f.getReason()
            : cause.getMessage();
    return InputException.because(
        name,
        "",
        "the file can't be written (" + reason + ")",
        "make room or choose another folder" + UNCHANGED,
        cause);
  }
}
