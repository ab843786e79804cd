package holdcurve.ui.problem;

import holdcurve.common.input.InputException;
import holdcurve.file.SafeFile;
import holdcurve.ui.about.Build;
import holdcurve.ui.about.Library;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * All that a report of a problem holds. Nothing is sent: it becomes a file that a person looks over
 * first.
 *
 * @param entries what is in it
 * @param missing what the job names and is not in it, each with the reason
 */
public record ProblemFile(List<Entry> entries, List<String> missing) {
  /** Beside the job, by default. */
  public static final String ENDING = ".problem.zip";

  private static final String HAPPENED = "what-happened.txt";
  private static final String VERSION = "version.txt";

  /**
   * One file in it.
   *
   * @param name its path in the zip
   * @param what it is, in a few words
   */
  public record Entry(String name, String what, byte[] content) {
    /** Its size in words. */
    public String size() {
      return (content.length + 1023) / 1024 + " kB";
    }
  }

  public ProblemFile {
    entries = List.copyOf(entries);
    missing = List.copyOf(missing);
  }

  /**
   * Gathers it.
   *
   * @param happened what the program noted, as text; the home folder in it is written as ~
   * @throws InputException if the job can't be read at all
   */
  public static ProblemFile of(Path job, String happened) {
    NamedFiles named = NamedFiles.in(job);
    List<Entry> entries = new ArrayList<>(named.entries());
    entries.add(text(HAPPENED, "what the program noted", withoutHome(happened)));
    windowLogs().forEach(entries::add);
    entries.add(text(VERSION, "version of Holdcurve, Java and libraries", version()));
    return new ProblemFile(entries, named.missing());
  }

  /**
   * Writes it; an earlier report of a problem is replaced, nothing else is.
   *
   * @throws InputException if something else stands there, or it can't be written
   */
  public void write(Path file) {
    if (Files.exists(file) && !isOne(file)) {
      throw InputException.at(
          file.toString(),
          "",
          "something else stands there, which a report must not replace",
          "choose another name with --out");
    }
    SafeFile.write(file, zip());
  }

  private static boolean isOne(Path file) {
    try (ZipFile zip = new ZipFile(file.toFile())) {
      return zip.getEntry(HAPPENED) != null && zip.getEntry(VERSION) != null;
    } catch (IOException e) {
      return false;
    }
  }

  private byte[] zip() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
      for (Entry entry : entries) {
        zip.putNextEntry(new ZipEntry(entry.name()));
        zip.write(entry.content());
        zip.closeEntry();
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return bytes.toByteArray();
  }

  private static String version() {
    StringBuilder text = new StringBuilder("Holdcurve " + Build.version() + "\n");
    text.append(Build.platform()).append('\n');
    Library.all().forEach(one -> text.append(one.name() + " " + one.version() + "\n"));
    return text.toString();
  }

  /** What windows noted lately; none where no window was ever opened. */
  private static List<Entry> windowLogs() {
    Path folder = Path.of(System.getProperty("user.home", "."), ".holdcurve", "log");
    if (!Files.isDirectory(folder)) {
      return List.of();
    }
    try (Stream<Path> files = Files.list(folder)) {
      List<Entry> logs = new ArrayList<>();
      for (Path file : files.filter(one -> one.toString().endsWith(".log")).sorted().toList()) {
        String noted = new String(Files.readAllBytes(file), StandardCharsets.UTF_8);
        if (!noted.isEmpty()) {
          String name = "window/" + file.getFileName();
          logs.add(text(name, "what windows noted lately", withoutHome(noted)));
        }
      }
      return logs;
    } catch (IOException e) {
      return List.of(text("window/none.txt", "why windows' notes are missing", e.toString()));
    }
  }

  /** The name of the person's home is nobody's business. */
  private static String withoutHome(String text) {
    String home = System.getProperty("user.home", "");
    return home.length() > 1 ? text.replace(home, "~") : text;
  }

  private static Entry text(String name, String what, String text) {
    return new Entry(name, what, text.getBytes(StandardCharsets.UTF_8));
  }
}
