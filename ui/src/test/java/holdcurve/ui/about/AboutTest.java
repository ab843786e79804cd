package holdcurve.ui.about;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class AboutTest {
  private static final Path ROOT = Path.of(System.getProperty("holdcurve.root"));

  /** What only tests use, by the beginning of its file name. */
  private static final Pattern FOR_TESTS =
      Pattern.compile(
          "(junit|jqwik|archunit|testfx|openjfx-monocle|slf4j|opentest4j|apiguardian|hamcrest"
              + "|assertj|org\\.osgi|byte-buddy).*");

  @Test
  void theVersionIsThatOfTheBuildAndTheNewestOfTheChanges() throws IOException {
    assertEquals(
        found("<artifactId>holdcurve</artifactId>\\s*<version>([^<]*)", ROOT.resolve("pom.xml")),
        Build.version());
    assertEquals(found("(?m)^## (.*)$", ROOT.resolve("ui/CHANGELOG.md")), Build.version());
    assertTrue(Build.version().matches("\\d+\\.\\d+\\.\\d+(-[0-9A-Za-z.-]+)?"), Build.version());
  }

  private static String found(String pattern, Path file) throws IOException {
    Matcher matcher = Pattern.compile(pattern).matcher(Files.readString(file));
    assertTrue(matcher.find(), file::toString);
    return matcher.group(1).strip();
  }

  @Test
  void everyLibraryThatIsShippedIsListedAndNoOther() {
    Set<String> listed =
        Library.all().stream()
            .map(one -> one.name() + "-" + one.version())
            .collect(Collectors.toCollection(TreeSet::new));
    Set<String> shipped = new TreeSet<>();
    for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
      String name = Path.of(entry).getFileName().toString().replaceAll("\\.jar$", "");
      boolean ours = name.matches("(classes|test-classes|(sim-core|plugins)-.*)");
      if (!ours && !FOR_TESTS.matcher(name).matches()) {
        shipped.add(name.replaceAll("-(linux|win|mac)(-aarch64)?$", ""));
      }
    }
    assertEquals(shipped, listed);
  }

  @Test
  void everyLibraryHasItsLicence() {
    List<Library> all = Library.all();
    assertFalse(all.isEmpty());
    all.forEach(one -> assertFalse(one.licences().isBlank(), one::name));
    Library graphics =
        all.stream().filter(one -> one.name().equals("javafx-base")).findFirst().get();
    assertEquals("GPL-2.0 with Classpath exception", graphics.licences());
  }
}
