package holdcurve.ui.window.job;

import holdcurve.check.InputException;
import holdcurve.file.JobReader;
import holdcurve.file.JobWriter;
import holdcurve.job.HoldTest;
import holdcurve.job.Job;
import holdcurve.log.Reading;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.System.Logger.Level;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Keeps the open job in a folder of its own while the window is open. Each reading is appended to a
 * journal before the window goes on, so that a killed process loses at most the one being typed;
 * every other change is written as a whole job in the background. A lock tells whether the window
 * is still alive; a folder whose lock is free holds work to be offered at the next start.
 *
 * <p>In the folder: {@code N/kept.job.json} with circuit and logs, the state after the N-th change;
 * {@code N/whole} says that all of it is there, and names the job's own file; {@code readings} has
 * one line for each reading, with the number of its change.
 */
public final class Autosave implements Keeper, AutoCloseable {
  private static final System.Logger LOG = System.getLogger(Autosave.class.getName());
  private static final String JOB = "kept" + JobWriter.ENDING;
  private static final String WHOLE = "whole";
  private static final String READINGS = "readings";
  private static final String SAVED = "saved";
  private static final long PATIENCE_S = 10;

  private final Path folder;
  private final FileChannel lockFile;
  private final FileChannel journal;
  private final ExecutorService writer =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "holdcurve-autosave");
            thread.setDaemon(true);
            return thread;
          });
  private long change;
  private boolean unsaved;

  private Autosave(Path folder, FileChannel lockFile, FileChannel journal) {
    this.folder = folder;
    this.lockFile = lockFile;
    this.journal = journal;
  }

  /**
   * Starts keeping in a new folder below {@code home}.
   *
   * @throws UncheckedIOException if nothing can be written there
   */
  public static Autosave in(Path home) {
    try {
      Files.createDirectories(home);
      Path folder = Files.createTempDirectory(home, "window-");
      FileChannel lockFile =
          FileChannel.open(
              folder.resolve("lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
      lockFile.lock();
      FileChannel journal =
          FileChannel.open(
              folder.resolve(READINGS), StandardOpenOption.CREATE, StandardOpenOption.APPEND);
      return new Autosave(folder, lockFile, journal);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public void changed(Job job, Path fileOrNull) {
    unsaved = true;
    keep(job, fileOrNull == null ? "" : fileOrNull.toAbsolutePath().toString());
  }

  @Override
  public void saved(Job job, Path file) {
    unsaved = false;
    keep(job, file.toAbsolutePath() + "\n" + SAVED);
  }

  private void keep(Job job, String about) {
    long number = ++change;
    writer.execute(() -> writeWhole(number, job, about));
  }

  @Override
  public void read(String test, Reading reading) {
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

  /** Ends keeping. What was saved needs no folder any more; what was not is offered next time. */
  @Override
  public void close() {
    writer.shutdown();
    try {
      if (!writer.awaitTermination(PATIENCE_S, TimeUnit.SECONDS)) {
        LOG.log(Level.WARNING, "the last change may be lost in " + folder);
      }
      journal.close();
      lockFile.close();
      if (!unsaved) {
        delete(folder);
      }
    } catch (IOException e) {
      LOG.log(Level.WARNING, "closing " + folder, e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
    }
  }

  /**
   * Work that a window left behind.
   *
   * @param folder where it lies
   * @param job as it was
   * @param file the job's own file; empty if it never had one
   */
  public record Kept(Path folder, Job job, Optional<Path> file) {
    /** Readings in all its tests. */
    public int readings() {
      return job.tests().stream().mapToInt(test -> test.log().readings().size()).sum();
    }

    void delete() {
      try {
        Autosave.delete(folder);
      } catch (IOException e) {
        LOG.log(Level.WARNING, "deleting " + folder, e);
      }
    }
  }

  /** All work below {@code home} whose window is gone; latest first. Folders without any go. */
  public static List<Kept> left(Path home) {
    if (!Files.isDirectory(home)) {
      return List.of();
    }
    List<Kept> left = new ArrayList<>();
    try (Stream<Path> folders = Files.list(home)) {
      for (Path folder : folders.filter(Autosave::isLeft).sorted(latestFirst()).toList()) {
        restoreOrDelete(folder).ifPresent(left::add);
      }
    } catch (IOException e) {
      LOG.log(Level.WARNING, "looking for kept work in " + home, e);
    }
    return left;
  }

  /** What can't be read may be read by a newer program, or by a person: it stays. */
  private static Optional<Kept> restoreOrDelete(Path folder) throws IOException {
    try {
      Optional<Kept> kept = restore(folder);
      if (kept.isEmpty()) {
        delete(folder);
      }
      return kept;
    } catch (IOException | InputException | NumberFormatException e) {
      LOG.log(Level.WARNING, "kept work in " + folder + " can't be read and stays there", e);
      return Optional.empty();
    }
  }

  private static Comparator<Path> latestFirst() {
    return Comparator.comparing((Path folder) -> folder.resolve(READINGS).toFile().lastModified())
        .reversed();
  }

  private static boolean isLeft(Path folder) {
    Path lock = folder.resolve("lock");
    if (!Files.isRegularFile(lock)) {
      return false;
    }
    try (FileChannel channel = FileChannel.open(lock, StandardOpenOption.WRITE)) {
      FileLock taken = channel.tryLock();
      return taken != null;
    } catch (IOException | OverlappingFileLockException e) {
      return false;
    }
  }

  private static Optional<Kept> restore(Path folder) throws IOException {
    List<Path> wholes =
        numbered(folder).stream()
            .filter(path -> Files.exists(path.resolve(WHOLE)))
            .sorted(Comparator.comparingLong(Autosave::number))
            .toList();
    if (wholes.isEmpty()) {
      return Optional.empty();
    }
    Path last = wholes.get(wholes.size() - 1);
    List<String> about = Files.readAllLines(last.resolve(WHOLE));
    Job job = JobReader.readUnfinished(last.resolve(JOB));
    Job read = replay(job, folder, number(last));
    if (about.contains(SAVED) && read == job) {
      return Optional.empty();
    }
    return Optional.of(
        new Kept(folder, read, about.stream().findFirst().filter(s -> !s.isBlank()).map(Path::of)));
  }

  private static Job replay(Job job, Path folder, long after) throws IOException {
    Job replayed = job;
    for (String line : Files.readAllLines(folder.resolve(READINGS))) {
      String[] cells = line.split("\t", -1);
      if (cells.length == 5 && Long.parseLong(cells[0]) > after) {
        Reading read = Reading.of(Double.parseDouble(cells[1]), Double.parseDouble(cells[2]));
        replayed =
            JobEdits.change(replayed, cells[4], test -> add(test, read, cells[3].equals("true")));
      }
    }
    return replayed;
  }

  private static HoldTest add(HoldTest test, Reading read, boolean doubtful) {
    Reading reading =
        new Reading(read.time(), read.pressure(), read.fuelTemperature(), read.event(), doubtful);
    return TestEdits.withLog(test, JobEdits.withReading(test.log(), reading));
  }

  private static List<Path> numbered(Path folder) throws IOException {
    try (Stream<Path> entries = Files.list(folder)) {
      return entries.filter(path -> path.getFileName().toString().matches("[0-9]{1,18}")).toList();
    }
  }

  private static long number(Path whole) {
    return Long.parseLong(whole.getFileName().toString());
  }

  private static void delete(Path root) throws IOException {
    try (Stream<Path> all = Files.walk(root)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.deleteIfExists(path);
      }
    }
  }
}
