package holdcurve.ui.harduse;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program reaches nothing but the files it is given and the folders that are chosen. */
class ReachTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");

  @TempDir private Path folder;

  @Test
  void noClassOfOursKnowsTheNetwork() {
    noClasses()
        .should()
        .dependOnClassesThat()
        .resideInAnyPackage("java.net.http..", "java.rmi..", "javax.net..", "javax.naming..")
        .orShould()
        .dependOnClassesThat()
        .haveNameMatching(
            "java\\.net\\.(.*Socket.*|.*URLConnection|Inet.*|Proxy.*|NetworkInterface)"
                + "|java\\.nio\\.channels\\..*(Socket|Datagram|Network)Channel")
        .orShould()
        .callMethod(URL.class, "openStream")
        .orShould()
        .callMethod(URL.class, "openConnection")
        .check(
            new ClassFileImporter()
                .withImportOption(new DoNotIncludeTests())
                .importPackages("holdcurve"));
  }

  @Test
  void everyCommandWritesWhereItIsTold() throws Exception {
    Path in = copied(SCENARIOS, folder.resolve("in"));
    Path out = Files.createDirectory(folder.resolve("out"));
    Path home = Files.createDirectory(folder.resolve("home"));
    Path here = Files.createDirectory(folder.resolve("here"));
    TreeMap<Path, String> before = contents(in);
    List<String> said = commands(in, out, home, here);
    assertEquals(
        12, said.stream().filter(line -> line.startsWith("0 ")).count(), () -> said.toString());
    assertEquals(List.of(), list(home));
    assertEquals(List.of(), list(here));
    String job = "rail-loss.job.json";
    TreeMap<Path, String> after = contents(in);
    assertEquals(before.remove(in.resolve(job)), after.remove(in.resolve(job + "~")));
    after.remove(in.resolve(job));
    assertEquals(before, after, "only the ticked job has changed");
    wroteOnly(in, out, said);
  }

  private static void wroteOnly(Path in, Path out, List<String> said) {
    TreeSet<String> places = new TreeSet<>();
    said.stream()
        .filter(line -> line.startsWith("jdk.FileWrite "))
        .map(line -> Path.of(line.substring("jdk.FileWrite ".length())))
        .forEach(file -> places.add(file.getParent().toString()));
    assertEquals(new TreeSet<>(List.of(in.toString(), out.toString())), places);
    assertTrue(said.contains("jdk.FileWrite " + out.resolve("control.txt")), "no record was kept");
    long sent = said.stream().filter(line -> line.startsWith("jdk.SocketWrite")).count();
    assertEquals(1, sent, () -> "the one sent to see whether it is seen: " + said);
    assertTrue(said.stream().noneMatch(line -> line.startsWith("jdk.SocketRead")));
  }

  private List<String> commands(Path in, Path out, Path home, Path here) throws Exception {
    Path said = folder.resolve("said.txt");
    Process process =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Duser.home=" + home,
                "-Djava.io.tmpdir=" + Files.createDirectory(folder.resolve("tmp")),
                "-cp",
                absolute(System.getProperty("java.class.path")),
                EveryCommand.class.getName(),
                in.toString(),
                out.toString(),
                folder.resolve("record.jfr").toString())
            .directory(here.toFile())
            .redirectErrorStream(true)
            .redirectOutput(said.toFile())
            .start();
    assertTrue(process.waitFor(10, TimeUnit.MINUTES), "no end");
    assertEquals(0, process.exitValue(), () -> read(said));
    return read(said).lines().toList();
  }

  private static String absolute(String classPath) {
    String[] entries = classPath.split(java.io.File.pathSeparator);
    for (int i = 0; i < entries.length; i++) {
      entries[i] = Path.of(entries[i]).toAbsolutePath().toString();
    }
    return String.join(java.io.File.pathSeparator, entries);
  }

  private static Path copied(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path one : all.toList()) {
        Files.copy(one, to.resolve(from.relativize(one).toString()));
      }
    }
    return to;
  }

  private static List<Path> list(Path folder) throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.toList();
    }
  }

  private static TreeMap<Path, String> contents(Path folder) throws IOException {
    TreeMap<Path, String> contents = new TreeMap<>();
    try (Stream<Path> all = Files.walk(folder)) {
      all.filter(Files::isRegularFile).forEach(file -> contents.put(file, read(file)));
    }
    return contents;
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
