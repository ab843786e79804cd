package holdcurve.plugin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Site;
import holdcurve.physics.circuit.Condition;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.jar.JarEntry;
import java.util.jar.JarOutputStream;
import java.util.stream.Stream;
import javax.tools.JavaCompiler;
import javax.tools.StandardJavaFileManager;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The example that plugin authors start from, through the door that they use. */
class ExamplePluginTest {
  private static final Path EXAMPLE =
      Path.of(System.getProperty("holdcurve.root", ".."), "plugins", "src", "example");
  private static final Path WORK =
      Path.of(System.getProperty("holdcurve.root", ".."), "plugins", "target", "example");
  private static final Path SOURCE = EXAMPLE.resolve("java/example/PorousHose.java");
  private static final int MOST_LINES = 60;

  private static FaultCatalogue catalogue;

  @BeforeAll
  static void buildJarAndLoadIt() throws IOException {
    Path classes = Files.createDirectories(WORK.resolve("classes"));
    Path folder = Files.createDirectories(WORK.resolve("folder"));
    compile(SOURCE, classes);
    Path jar = folder.resolve("porous-hose.jar");
    try (JarOutputStream out = new JarOutputStream(Files.newOutputStream(jar))) {
      addAll(classes, out);
      addAll(EXAMPLE.resolve("resources"), out);
    }
    catalogue = FaultCatalogue.load(Optional.of(folder));
  }

  private static void compile(Path source, Path classes) throws IOException {
    JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
    StringWriter messages = new StringWriter();
    List<String> options =
        List.of(
            "-Xlint:all,-path,-processing",
            "-Werror",
            "--release",
            "17",
            "-d",
            classes.toString(),
            "-cp",
            System.getProperty("java.class.path"));
    try (StandardJavaFileManager files = compiler.getStandardFileManager(null, null, null)) {
      boolean good =
          compiler
              .getTask(messages, files, null, options, null, files.getJavaFileObjects(source))
              .call();
      assertTrue(good, messages::toString);
    }
  }

  private static void addAll(Path root, JarOutputStream out) throws IOException {
    try (Stream<Path> files = Files.walk(root)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        out.putNextEntry(new JarEntry(root.relativize(file).toString().replace('\\', '/')));
        Files.copy(file, out);
      }
    }
  }

  @Test
  void isFoundBesideTheFirstSet() {
    assertEquals(List.of(), catalogue.problems());
    assertEquals(FaultCatalogue.load().faults().size() + 1, catalogue.faults().size());
  }

  @Test
  void worksInAHold() {
    LeakFault fault = catalogue.byId("porous-hose").orElseThrow();
    List<Site> sites = fault.sites(TestStand.CIRCUIT);
    assertEquals(
        List.of("feed-hose", "ring-hoses", "return-hose"), sites.stream().map(Site::id).toList());
    Condition damp = TestStand.with(fault, TestStand.mLPerMinute(0.2));
    double more =
        TestStand.fall(damp, TestStand.NO_CLAMP)
            - TestStand.fall(TestStand.sound(), TestStand.NO_CLAMP);
    assertTrue(more > 0.2, () -> more + " bar");
    assertEquals(List.of(), catalogue.failures());
  }

  @Test
  void isShort() throws IOException {
    assertTrue(Files.readAllLines(SOURCE).size() <= MOST_LINES);
  }
}
