package holdcurve.file;

import holdcurve.common.input.InputException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * A file that a job can name.
 *
 * @param name as the job names it
 * @param fresh the file, if it was made for the job
 */
record Placed(String name, Optional<Path> fresh) {
  /** A file where it lies, or a copy of it beside the job if that is too far off. */
  static Placed of(Path job, Path file) {
    Optional<String> near = Siblings.name(job, file);
    if (near.isPresent()) {
      return new Placed(near.get(), Optional.empty());
    }
    try {
      return written(job, file.getFileName().toString(), Files.readAllBytes(file));
    } catch (IOException e) {
      throw InputException.because(
          file.toString(), "", "the file can't be copied", "put it beside the job", e);
    }
  }

  static Placed written(Path job, String wanted, String text) {
    return written(job, wanted, text.getBytes(StandardCharsets.UTF_8));
  }

  private static Placed written(Path job, String wanted, byte[] content) {
    Path file = free(job, wanted);
    SafeFile.write(file, content);
    return new Placed(file.getFileName().toString(), Optional.of(file));
  }

  /** Beside the job, where nothing stands yet. */
  private static Path free(Path job, String wanted) {
    int dot = wanted.indexOf('.') < 0 ? wanted.length() : wanted.indexOf('.');
    Path file = job.resolveSibling(wanted);
    for (int i = 2; Files.exists(file); i++) {
      file = job.resolveSibling(wanted.substring(0, dot) + "-" + i + wanted.substring(dot));
    }
    return file;
  }

  /** Does the work that needs the file; one made for it is taken away again if that fails. */
  <T> T keptIf(Supplier<T> work) {
    try {
      return work.get();
    } catch (InputException e) {
      fresh.ifPresent(Placed::remove);
      throw e;
    }
  }

  private static void remove(Path file) {
    try {
      Files.deleteIfExists(file);
    } catch (IOException e) {
      System.getLogger(Placed.class.getName())
          .log(System.Logger.Level.DEBUG, "left behind beside the job: " + file, e);
    }
  }
}
