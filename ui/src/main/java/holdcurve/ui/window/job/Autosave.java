package holdcurve.ui.window.job;

import holdcurve.common.input.InputException;
import holdcurve.file.JobReader;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.log.Reading;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.System.Logger.Level;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Keeps every job that the window had open in a folder of its own. A lock tells whether the window
 * is still alive; a folder whose lock is free holds work to be offered at the next start.
 */
public final class Autosave implements Keeper, AutoCloseable {
  private static final System.Logger LOG = System.getLogger(Autosave.class.getName());
  private static final long PATIENCE_S = 10;

  private final Path home;
  private final List<KeptFolder> all = new ArrayList<>();
  private final Map<Object, KeptFolder> folders = new IdentityHashMap<>();
  private final ExecutorService writer =
      Executors.newSingleThreadExecutor(
          work -> {
            Thread thread = new Thread(work, "holdcurve-autosave");
            thread.setDaemon(true);
            return thread;
          });
  private KeptFolder current;
  private boolean used;

  private Autosave(Path home, KeptFolder first) {
    this.home = home;
    this.current = first;
    all.add(first);
  }

  /**
   * Starts keeping in a new folder below {@code home}.
   *
   * @throws UncheckedIOException if nothing can be written there
   */
  public static Autosave in(Path home) {
    try {
      return new Autosave(home, KeptFolder.in(home));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The first folder is there from the start; the job before may be turned to again. */
  @Override
  public void turnedTo(Object sitting) {
    KeptFolder known = folders.get(sitting);
    if (known != null) {
      current = known;
      return;
    }
    if (used) {
      try {
        current = KeptFolder.in(home);
        all.add(current);
      } catch (IOException e) {
        LOG.log(Level.WARNING, "the job before is kept no longer, for lack of a folder", e);
      }
    }
    used = true;
    folders.put(sitting, current);
  }

  @Override
  public void changed(Job job, Path fileOrNull) {
    current.changed(job, fileOrNull, writer);
  }

  @Override
  public void saved(Job job, Path fileOrNull) {
    current.saved(job, fileOrNull, writer);
  }

  @Override
  public void read(String test, Reading reading) {
    current.read(test, reading, writer);
  }

  /** Ends keeping. What was saved needs no folder any more; what was not is offered next time. */
  @Override
  public void close() {
    writer.shutdown();
    try {
      if (!writer.awaitTermination(PATIENCE_S, TimeUnit.SECONDS)) {
        LOG.log(Level.WARNING, "the last change may be lost in " + home);
      }
      all.forEach(KeptFolder::close);
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
        KeptFolder.delete(folder);
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
        KeptFolder.delete(folder);
      }
      return kept;
    } catch (IOException | InputException | NumberFormatException e) {
      LOG.log(Level.WARNING, "kept work in " + folder + " can't be read and stays there", e);
      return Optional.empty();
    }
  }

  private static Comparator<Path> latestFirst() {
    return Comparator.comparing(
            (Path folder) -> folder.resolve(KeptFolder.READINGS).toFile().lastModified())
        .reversed();
  }

  private static boolean isLeft(Path folder) {
    Path lock = folder.resolve(KeptFolder.LOCK);
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
        KeptFolder.numbered(folder).stream()
            .filter(path -> Files.exists(path.resolve(KeptFolder.WHOLE)))
            .sorted(Comparator.comparingLong(KeptFolder::number))
            .toList();
    if (wholes.isEmpty()) {
      return Optional.empty();
    }
    Path last = wholes.get(wholes.size() - 1);
    List<String> about = Files.readAllLines(last.resolve(KeptFolder.WHOLE));
    Job job = JobReader.readUnfinished(last.resolve(KeptFolder.JOB));
    Job read = replay(job, folder, KeptFolder.number(last));
    if (about.contains(KeptFolder.SAVED) && read == job) {
      return Optional.empty();
    }
    return Optional.of(
        new Kept(folder, read, about.stream().findFirst().filter(s -> !s.isBlank()).map(Path::of)));
  }

  private static Job replay(Job job, Path folder, long after) throws IOException {
    Job replayed = job;
    for (String line : Files.readAllLines(folder.resolve(KeptFolder.READINGS))) {
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
}
