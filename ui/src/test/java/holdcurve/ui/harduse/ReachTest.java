package holdcurve.ui.harduse;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import java.net.URL;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The program reaches nothing but the files it is given and the folders that are chosen. */
class ReachTest {
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
    OwnHome own = OwnHome.in(folder);
    TreeMap<Path, String> before = OwnHome.contents(own.in());
    List<String> said =
        own.run(
            List.of(),
            EveryCommand.class,
            own.in().toString(),
            own.out().toString(),
            folder.resolve("record.jfr").toString());
    assertEquals(
        15, said.stream().filter(line -> line.startsWith("0 ")).count(), () -> said.toString());
    Path book = own.home().resolve(".holdcurve");
    assertEquals(List.of(".holdcurve"), OwnHome.names(own.home()), "what the case book keeps");
    assertEquals(List.of("cases"), OwnHome.names(book));
    assertEquals(List.of(), OwnHome.names(own.here()));
    TreeMap<Path, String> after = OwnHome.contents(own.in());
    Path job = own.in().resolve("rail-loss.job.json");
    assertEquals(Set.of(job, backup(job)), changed(before, after));
    assertEquals(before.get(job), after.get(backup(job)));
    wroteOnly(List.of(own.in(), own.out(), book), own.out(), said);
  }

  /** It is killed with work unsaved, started again, brings the work back and saves it. */
  @Test
  void theWindowKeepsUnsavedWorkInOneFolderOfItsOwn() throws Exception {
    OwnHome own = OwnHome.in(folder);
    Path kept = own.home().resolve(".holdcurve");
    Path job = own.in().resolve(WindowWork.JOB);
    TreeMap<Path, String> before = OwnHome.contents(own.in());
    List<String> first = window(own, "work");
    assertEquals(Set.of(lock(job)), changed(before, OwnHome.contents(own.in())), "none saved");
    assertEquals(1, OwnHome.names(kept.resolve("unsaved")).size());
    List<String> second = window(own, "bring back");
    TreeMap<Path, String> after = OwnHome.contents(own.in());
    assertTrue(after.get(job).contains(WindowWork.TITLE), after.get(job));
    Set<Path> changed = changed(before, after);
    assertEquals(Set.of(job, backup(job), own.in().resolve(WindowWork.LOG)), changed);
    assertEquals(before.get(job), after.get(backup(job)));
    assertEquals(List.of(".holdcurve"), OwnHome.names(own.home()));
    assertEquals(List.of(), OwnHome.names(kept.resolve("unsaved")), "what was saved needs no copy");
    assertEquals(List.of(), OwnHome.names(own.here()));
    wroteOnly(List.of(own.in(), own.out(), kept), own.out(), first);
    wroteOnly(List.of(own.in(), own.out(), kept), own.out(), second);
  }

  private List<String> window(OwnHome own, String what) throws Exception {
    List<String> headless =
        List.of(
            "-Dglass.platform=Monocle",
            "-Dmonocle.platform=Headless",
            "-Dprism.order=sw",
            "-Djava.awt.headless=true",
            "-Dheadless.geometry=1920x1200-32");
    return own.run(
        headless,
        WindowWork.class,
        what,
        own.in().toString(),
        own.home().resolve(".holdcurve").toString(),
        own.out().resolve("control.txt").toString(),
        folder.resolve("record.jfr").toString());
  }

  private static Set<Path> changed(Map<Path, String> before, Map<Path, String> after) {
    Set<Path> changed = new TreeSet<>(before.keySet());
    changed.addAll(after.keySet());
    changed.removeIf(file -> Objects.equals(before.get(file), after.get(file)));
    return changed;
  }

  private static Path backup(Path file) {
    return file.resolveSibling(file.getFileName() + "~");
  }

  /** A killed window leaves it; it holds nobody up. */
  private static Path lock(Path job) {
    return job.resolveSibling("." + job.getFileName() + ".lock");
  }

  private static void wroteOnly(List<Path> allowed, Path out, List<String> said) {
    List<Path> written =
        said.stream()
            .filter(line -> line.startsWith("jdk.FileWrite "))
            .map(line -> Path.of(line.substring("jdk.FileWrite ".length())))
            .toList();
    assertEquals(
        List.of(),
        written.stream().filter(file -> allowed.stream().noneMatch(file::startsWith)).toList());
    for (Path folder : allowed) {
      assertTrue(written.stream().anyMatch(file -> file.startsWith(folder)), folder::toString);
    }
    assertTrue(written.contains(out.resolve("control.txt")), "no record was kept");
    long sent = said.stream().filter(line -> line.startsWith("jdk.SocketWrite")).count();
    assertEquals(1, sent, () -> "the one sent to see whether it is seen: " + said);
    assertTrue(said.stream().noneMatch(line -> line.startsWith("jdk.SocketRead")));
  }
}
