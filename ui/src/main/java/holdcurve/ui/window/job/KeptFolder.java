package holdcurve.ui.window.job;

import holdcurve.common.input.InputException;
import holdcurve.file.JobWriter;
import holdcurve.record.job.Job;
import holdcurve.record.log.Reading;
import java.io.IOException;
import java.lang.System.Logger.Level;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.stream.Stream;

/**
 * One job, kept in a folder of its own while the window is open. Each reading is appended to a
 * journal before the window goes on, so that a killed process loses at most the one being typed;
 * every other change is written as a whole job in the background.
 *
 * <p>In the folder: {@code N/kept.job.json} with circuit and logs, the state after the N-th change;
 * {@code N/whole} says that all of it is there, and names the job's own file; {@code readings} has
 * one line for each reading, with the number of its change.
 */
final class KeptFolder {
  static final String JOB = "kept" + JobWriter.ENDING;
  static final String WHOLE = "whole";
  static final String READINGS = "readings";
  static final String SAVED = "saved";
  static final String LOCK = "lock";

  private static final System.Logger LOG = System.getLogger(KeptFolder.class.getName());

  private final Path folder;
  private final FileChannel lockFile;
  private final FileChannel journal;
  private long change;
  private boolean unsaved;

  private KeptFolder(Path folder, FileChannel lockFile, FileChannel journal) {
    this.folder = folder;
    this.lockFile = lockFile;
    this.journal = journal;
  }

  /** A new one, locked. */
  static KeptFolder in(Path home) throws IOException {
    Files.createDirectories(home);
    Path folder = Files.createTempDirectory(home, "window-");
    FileChannel lockFile =
        FileChannel.open(folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
    lockFile.lock();
    FileChannel journal =
        FileChannel.open(
            folder.resolve(READINGS), StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    return new KeptFolder(folder, lockFile, journal);
  }

  /**
   * @param writer does one thing after the other
   */
  void changed(Job job, Path fileOrNull, Executor writer) {
    unsaved = true;
    keep(job, path(fileOrNull), writer);
  }

  void saved(Job job, Path fileOrNull, Executor writer) {
    unsaved = false;
    keep(job, path(fileOrNull) + "\n" + SAVED, writer);
  }

  private static String path(Path fileOrNull) {
    return fileOrNull == null ? "" : fileOrNull.toAbsolutePath().toString();
  }

  private void keep(Job job, String about, Executor writer) {
    long number = ++change;
    writer.execute(() -> writeWhole(number, job, about));
  }

  void read(String test, Reading reading, Executor writer) {
    unsaved = true;
    String line =
        String.join(
            "\t",
            Long.toString(++change),
            Double.toString(reading.time()),
            Double.toString(reading.pressure()),
            Boolean.toString(reading.doubtful()),
            test.replaceAll("[\\t\\n\\r]", " "));
    try {
      journal.write(ByteBuffer.wrap((line + "\n").getBytes(StandardCharsets.UTF_8)));
    } catch (IOException e) {
      LOG.log(Level.WARNING, "a reading can't be kept in " + folder, e);
    }
    writer.execute(this::force);
  }

  private void force() {
    try {
      journal.force(false);
    } catch (IOException e) {
      LOG.log(Level.WARNING, "readings can't be kept in " + folder, e);
    }
  }

  private void writeWhole(long number, Job job, String about) {
    try {
      Path whole = Files.createDirectories(folder.resolve(Long.toString(number)));
      JobWriter.write(whole.resolve(JOB), job);
      Files.writeString(whole.resolve(WHOLE), about);
      for (Path other : numbered(folder)) {
        if (number(other) < number) {
          delete(other);
        }
      }
    } catch (IOException | InputException e) {
      LOG.log(Level.WARNING, "the job can't be kept in " + folder, e);
    }
  }

  /** For good. What was saved needs no folder any more. */
  void close() {
    if (!journal.isOpen()) {
      return;
    }
    try {
      journal.close();
      lockFile.close();
      if (!unsaved) {
        delete(folder);
      }
    } catch (IOException e) {
      LOG.log(Level.WARNING, "closing " + folder, e);
    }
  }

  static List<Path> numbered(Path folder) throws IOException {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.filter(path -> path.getFileName().toString().matches("[0-9]{1,18}")).toList();
    }
  }

  static long number(Path whole) {
    return Long.parseLong(whole.getFileName().toString());
  }

  static void delete(Path root) throws IOException {
    try (Stream<Path> all = Files.walk(root)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    }
  }
}
