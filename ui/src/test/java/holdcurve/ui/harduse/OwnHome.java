package holdcurve.ui.harduse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/**
 * Runs a main class in a process whose home, working folder and folder for odds and ends are its
 * own, so that whatever it leaves there is seen.
 *
 * @param in a copy of the scenarios
 * @param out for results
 */
record OwnHome(Path folder, Path in, Path out, Path home, Path here, Path odds) {
  static OwnHome in(Path folder) throws IOException {
    Path scenarios = Path.of(System.getProperty("holdcurve.root"), "scenarios");
    return new OwnHome(
        folder,
        copied(scenarios, folder.resolve("in")),
        Files.createDirectory(folder.resolve("out")),
        Files.createDirectory(folder.resolve("home")),
        Files.createDirectory(folder.resolve("here")),
        Files.createDirectory(folder.resolve("odds")));
  }

  /** What it printed, line by line, once it has ended well. */
  List<String> run(List<String> options, Class<?> main, String... arguments) throws Exception {
    Path said = folder.resolve("said.txt");
    List<String> words = new ArrayList<>();
    words.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    // as the launcher starts a command; what compiles for longer is slower to end
    words.addAll(List.of("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC"));
    words.addAll(options);
    words.add("-Duser.home=" + home);
    words.add("-Djava.io.tmpdir=" + odds);
    words.addAll(List.of("-cp", absolute(System.getProperty("java.class.path")), main.getName()));
    words.addAll(Arrays.asList(arguments));
    Process process =
        new ProcessBuilder(words)
            .directory(here.toFile())
            .redirectErrorStream(true)
            .redirectOutput(said.toFile())
            .start();
    assertTrue(process.waitFor(10, TimeUnit.MINUTES), "no end");
    assertEquals(0, process.exitValue(), () -> read(said));
    return read(said).lines().toList();
  }

  private static String absolute(String classPath) {
    String[] entries = classPath.split(File.pathSeparator);
    for (int i = 0; i < entries.length; i++) {
      entries[i] = Path.of(entries[i]).toAbsolutePath().toString();
    }
    return String.join(File.pathSeparator, entries);
  }

  /** Without the lock that a window killed on a scenario left there. */
  private static Path copied(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path one : all.filter(file -> !file.toString().endsWith(".lock")).toList()) {
        Files.copy(one, to.resolve(from.relativize(one).toString()));
      }
    }
    return to;
  }

  /** Names of what is in a folder. */
  static List<String> names(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }

  /** Every file below a folder with its text. */
  static TreeMap<Path, String> contents(Path folder) throws IOException {
    TreeMap<Path, String> contents = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      all.filter(Files::isRegularFile).forEach(file -> contents.put(file, read(file)));
    }
    return contents;
  }

  static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
