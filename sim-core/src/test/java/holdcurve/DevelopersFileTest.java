package holdcurve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What contributors are told to read and to run is there. */
class DevelopersFileTest {
  private static final Path ROOT = Path.of(System.getProperty("holdcurve.root", ".."));
  private static final int LONGEST = 15_000;

  /** A class, a data file or a log of changes named in the text. */
  private static final Pattern NAMED =
      Pattern.compile("`([A-Z][A-Za-z]+[a-z][A-Za-z]*|[a-z-]+\\.json)`");

  private static final Pattern LINK = Pattern.compile("]\\(([^)#:]+)\\)");

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Set<String> sources() throws IOException {
    Set<String> names = new TreeSet<>();
    for (String module : List.of("sim-core", "plugins", "ui")) {
      try (Stream<Path> files = Files.walk(ROOT.resolve(module).resolve("src"))) {
        files
            .map(file -> file.getFileName().toString())
            .map(name -> name.replaceFirst("\\.java$", ""))
            .forEach(names::add);
      }
    }
    return names;
  }

  @Test
  void namesOnlyClassesAndFilesThatExist() throws IOException {
    Set<String> named =
        NAMED
            .matcher(text(ROOT.resolve("DEVELOPERS.md")))
            .results()
            .map(match -> match.group(1))
            .collect(Collectors.toCollection(TreeSet::new));
    assertTrue(named.size() > 40, () -> named.toString());
    named.removeAll(sources());
    assertEquals(Set.of(), named);
  }

  @Test
  void everyLinkLeadsSomewhere() throws IOException {
    try (Stream<Path> docs = Files.walk(ROOT.resolve("sim-core/docs"))) {
      List<Path> files =
          Stream.concat(
                  docs.filter(file -> file.toString().endsWith(".md")),
                  Stream.of("DEVELOPERS.md", "README.md", "ui/docs/app.md").map(ROOT::resolve))
              .toList();
      for (Path file : files) {
        Matcher link = LINK.matcher(text(file));
        while (link.find()) {
          Path to = file.resolveSibling(link.group(1));
          assertTrue(Files.exists(to), () -> file + " links to " + to);
        }
      }
    }
  }

  @Test
  void isShort() {
    assertTrue(text(ROOT.resolve("DEVELOPERS.md")).length() < LONGEST);
  }

  /** Each decision has a number, a date and a status, and stands in the list. */
  @Test
  void decisionsAreListed() throws IOException {
    Path folder = ROOT.resolve("sim-core/docs/decisions");
    String list = text(folder.resolve("README.md"));
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.filter(f -> !f.endsWith("README.md")).toList()) {
        assertTrue(list.contains("(" + file.getFileName() + ")"), () -> file + " isn't listed");
        assertTrue(
            text(file).matches("(?s)# \\d+\\. .+\\n\\nDate: \\d{4}-\\d\\d-\\d\\d\\. Status: .+"),
            () -> file.toString());
      }
    }
  }
}
