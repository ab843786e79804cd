package holdcurve.file;

import com.fasterxml.jackson.databind.JsonNode;
import holdcurve.casebook.BrokenCase;
import holdcurve.casebook.CaseBook;
import holdcurve.casebook.CaseEntry;
import holdcurve.casebook.CaseNotes;
import holdcurve.casebook.Correction;
import holdcurve.casebook.KnownAnswer;
import holdcurve.casebook.LearnedRates;
import holdcurve.casebook.RatesInUse;
import holdcurve.common.input.InputException;
import holdcurve.common.text.Days;
import holdcurve.common.work.Progress;
import holdcurve.common.work.Workers;
import holdcurve.fault.FaultCatalogue;
import holdcurve.inference.prior.FaultPriors;
import holdcurve.record.job.Job;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.System.Logger.Level;
import java.nio.file.FileSystemLoopException;
import java.nio.file.FileVisitOption;
import java.nio.file.FileVisitResult;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.nio.file.SimpleFileVisitor;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;

/**
 * Where the case book keeps its own two files: what the user said, and an index of what was read.
 * Nothing is written beside jobs.
 */
public final class CaseShelf {
  private static final System.Logger LOG = System.getLogger(CaseShelf.class.getName());

  /** Folders below folders, at most. */
  private static final int DEPTH = 40;

  private final Path home;

  /**
   * @param home folder of the case book; made when something is kept
   */
  public CaseShelf(Path home) {
    this.home = home;
  }

  /** In the folder of the person who uses the program. */
  public static CaseShelf usual() {
    return new CaseShelf(
        Path.of(System.getProperty("user.home", "."), ".holdcurve").resolve("cases"));
  }

  private Path notesFile() {
    return home.resolve("case-book.json");
  }

  private Path indexFile() {
    return home.resolve("case-index.csv");
  }

  /**
   * What the user said.
   *
   * @throws InputException if it can't be read
   */
  public CaseNotes notes() {
    return CaseNotesFile.read(notesFile());
  }

  /**
   * Keeps what the user said.
   *
   * @throws InputException if it can't be written
   */
  public void keep(CaseNotes notes) {
    make();
    CaseNotesFile.write(notesFile(), notes);
  }

  private void make() {
    try {
      Files.createDirectories(home);
    } catch (IOException e) {
      throw InputException.because(
          home.toString(),
          "",
          "the folder of the case book can't be made (" + e.getMessage() + ")",
          "make it, or make room",
          e);
    }
  }

  /**
   * Lists the jobs in folders and all folders below them. Only files that are new or changed are
   * read. Folders that begin with a point are passed over.
   *
   * @throws java.util.concurrent.CancellationException if {@code progress} says so
   */
  public CaseBook list(CaseNotes notes, Progress progress) {
    Map<Path, CaseIndex.Row> before = CaseIndex.read(indexFile());
    List<Path> folders = notes.folders().stream().map(CaseShelf::place).toList();
    Map<Path, BasicFileAttributes> found = new TreeMap<>();
    List<BrokenCase> broken = new ArrayList<>();
    folders.forEach(folder -> walk(folder, found, broken));
    Set<Object> seen = new HashSet<>();
    // a job that is reached by two links counts once
    found.values().removeIf(about -> about.fileKey() != null && !seen.add(about.fileKey()));
    Map<Path, CaseIndex.Row> now = new LinkedHashMap<>();
    List<CaseEntry> entries = new ArrayList<>();
    boolean changed = false;
    int done = 0;
    for (Map.Entry<Path, BasicFileAttributes> file : found.entrySet()) {
      Workers.stopIfCancelled(progress);
      CaseIndex.Row kept = before.get(file.getKey());
      boolean same =
          kept != null && kept.stamp().equals(stamp(file.getKey(), file.getValue(), kept.named()));
      CaseIndex.Row row = same ? kept : read(file.getKey(), file.getValue());
      changed |= !same;
      now.put(file.getKey(), row);
      row.entry().ifPresent(entries::add);
      if (!row.problem().isEmpty()) {
        broken.add(new BrokenCase(file.getKey(), row.problem()));
      }
      progress.at((double) ++done / found.size(), file.getKey().getFileName().toString());
    }
    for (Map.Entry<Path, CaseIndex.Row> row : before.entrySet()) {
      if (folders.stream().noneMatch(row.getKey()::startsWith)) {
        now.put(row.getKey(), row.getValue());
      }
    }
    if (changed || now.size() != before.size()) {
      remember(now);
    }
    return new CaseBook(entries, broken, notes.corrections());
  }

  /** Without an index the list is as good, only slower the next time. */
  private void remember(Map<Path, CaseIndex.Row> rows) {
    try {
      write(rows);
    } catch (InputException e) {
      LOG.log(Level.WARNING, "the index of the case book is not kept: " + e.getMessage());
    }
  }

  private void write(Map<Path, CaseIndex.Row> rows) {
    make();
    CaseIndex.write(indexFile(), rows);
  }

  /**
   * Keeps what was worked out about a job, if the case book lists it.
   *
   * @throws InputException if it can't be written
   */
  public void keep(Path job, KnownAnswer answer) {
    Map<Path, CaseIndex.Row> rows = CaseIndex.read(indexFile());
    Path file = place(job);
    CaseIndex.Row row = rows.get(file);
    if (row == null) {
      return;
    }
    try {
      CaseIndex.Row fresh = read(file, Files.readAttributes(file, BasicFileAttributes.class));
      rows.put(
          file,
          new CaseIndex.Row(
              fresh.named(),
              fresh.stamp(),
              fresh.entry().map(entry -> entry.with(answer)),
              fresh.problem()));
    } catch (IOException e) {
      rows.remove(file);
    }
    write(rows);
  }

  /** The jobs as they were last listed, without looking whether they changed. */
  public CaseBook listed(CaseNotes notes) {
    List<Path> folders = notes.folders().stream().map(CaseShelf::place).toList();
    List<CaseEntry> entries = new ArrayList<>();
    CaseIndex.read(indexFile())
        .forEach(
            (file, row) -> {
              if (folders.stream().anyMatch(file::startsWith)) {
                row.entry().ifPresent(entries::add);
              }
            });
    return new CaseBook(entries, List.of(), notes.corrections());
  }

  /**
   * Earlier jobs of a car, oldest first: those that the user gave the same name or number plate,
   * and whose last hold has an earlier date. Those that can't be read are left out.
   */
  public List<Job> earlier(Path job) {
    CaseNotes notes = notes();
    Path file = place(job);
    String car = notes.corrections().getOrDefault(file, Correction.EMPTY).car();
    if (car.isEmpty()) {
      return List.of();
    }
    CaseBook book = listed(notes);
    return book.entries().stream()
        .filter(entry -> entry.file().equals(file))
        .flatMap(
            entry ->
                book.sameCar(entry).stream()
                    .filter(other -> !book.correction(other).car().isEmpty())
                    .filter(other -> Days.isDay(other.date()))
                    .filter(other -> other.date().compareTo(entry.date()) < 0))
        .flatMap(other -> readable(other.file()).stream())
        .toList();
  }

  private static Optional<Job> readable(Path file) {
    try {
      return Optional.of(JobReader.readUnfinished(file));
    } catch (InputException e) {
      return Optional.empty();
    }
  }

  /** What the confirmed cases, as last listed, say about fault rates. */
  public LearnedRates learned(FaultCatalogue catalogue) {
    return LearnedRates.of(catalogue, FaultPriors.shipped(), listed(notes()).counts());
  }

  /**
   * The rates that the user chose for rankings.
   *
   * @throws InputException if they come from a file that can't be used
   */
  public FaultPriors priors(FaultCatalogue catalogue) {
    RatesInUse use = notes().rates();
    FaultPriors shipped = FaultPriors.shipped();
    return switch (use.kind()) {
      case SHIPPED -> shipped;
      case OWN -> shipped.withRates(learned(catalogue).learned());
      case FILE -> shipped.withRates(RatesFile.read(use.file().orElseThrow()));
    };
  }

  private static Path place(Path file) {
    return file.toAbsolutePath().normalize();
  }

  private static void walk(
      Path folder, Map<Path, BasicFileAttributes> found, List<BrokenCase> broken) {
    if (!Files.isDirectory(folder)) {
      broken.add(new BrokenCase(folder, "there is no such folder"));
      return;
    }
    try {
      Files.walkFileTree(
          folder, EnumSet.of(FileVisitOption.FOLLOW_LINKS), DEPTH, new Jobs(folder, found, broken));
    } catch (IOException e) {
      throw new UncheckedIOException("its visitor lets nothing through", e);
    }
  }

  /** Collects job files; what can't be looked into is named. */
  private static final class Jobs extends SimpleFileVisitor<Path> {
    private final Path top;
    private final Map<Path, BasicFileAttributes> found;
    private final List<BrokenCase> broken;

    Jobs(Path top, Map<Path, BasicFileAttributes> found, List<BrokenCase> broken) {
      this.top = top;
      this.found = found;
      this.broken = broken;
    }

    @Override
    public FileVisitResult preVisitDirectory(Path folder, BasicFileAttributes about) {
      boolean hidden = !folder.equals(top) && folder.getFileName().toString().startsWith(".");
      return hidden ? FileVisitResult.SKIP_SUBTREE : FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult visitFile(Path file, BasicFileAttributes about) {
      if (file.getFileName().toString().endsWith(JobWriter.ENDING) && about.isRegularFile()) {
        found.put(file, about);
      }
      return FileVisitResult.CONTINUE;
    }

    /** A link that leads back to a folder above it has been looked into there. */
    @Override
    public FileVisitResult visitFileFailed(Path file, IOException problem) {
      if (!(problem instanceof FileSystemLoopException)) {
        broken.add(new BrokenCase(file, "it can't be looked into"));
      }
      return FileVisitResult.CONTINUE;
    }

    @Override
    public FileVisitResult postVisitDirectory(Path folder, IOException problemOrNull) {
      if (problemOrNull != null) {
        broken.add(new BrokenCase(folder, "not all of it could be looked into"));
      }
      return FileVisitResult.CONTINUE;
    }
  }

  private static CaseIndex.Row read(Path file, BasicFileAttributes about) {
    List<String> named = List.of();
    try {
      named = named(file);
      CaseEntry entry = CaseEntry.of(file, JobReader.readUnfinished(file));
      return new CaseIndex.Row(named, stamp(file, about, named), Optional.of(entry), "");
    } catch (InputException e) {
      return new CaseIndex.Row(
          named, stamp(file, about, named), Optional.empty(), reason(file, e.getMessage()));
    }
  }

  /** What is wrong, without the name of the file, which stands beside it. */
  private static String reason(Path file, String message) {
    String first = message.lines().findFirst().orElse("it can't be read");
    String name = file.toString();
    return first.startsWith(name)
        ? first.substring(name.length()).replaceFirst("^[:,] ", "")
        : first;
  }

  /** The circuit and the logs that a job names. */
  private static List<String> named(Path file) {
    JsonNode root = JsonFiles.read(file, "holdcurve-job", 1).node();
    List<String> named = new ArrayList<>();
    named.add(root.path("circuit").asText());
    root.path("tests").forEach(test -> named.add(test.path("log").asText()));
    named.removeIf(name -> name.isEmpty() || name.contains("\n"));
    return named;
  }

  private static String stamp(Path file, BasicFileAttributes about, List<String> named) {
    StringBuilder stamp = new StringBuilder(stamp(about));
    for (String name : named) {
      stamp.append(' ').append(stamp(file, name));
    }
    return stamp.toString();
  }

  private static String stamp(Path file, String name) {
    try {
      return stamp(Files.readAttributes(file.resolveSibling(name), BasicFileAttributes.class));
    } catch (IOException | InvalidPathException e) {
      return "-";
    }
  }

  private static String stamp(BasicFileAttributes about) {
    return about.size() + ":" + about.lastModifiedTime().toMillis();
  }
}
