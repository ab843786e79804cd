package holdcurve.ui.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.ui.guide.Chapter;
import holdcurve.ui.guide.Guide;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.FencedCodeBlock;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The guide in a terminal, and the commands that it shows. */
class GuideCommandTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
  private static final Pattern FILE =
      Pattern.compile("[\\w./-]+\\.(json|csv|pdf|zip)|class|guide|scenarios");

  @TempDir Path folder;

  /** One after the other: later ones work on what earlier ones wrote. */
  @Test
  void everyCommandLineInItRuns() throws IOException {
    copyScenarios();
    Files.createDirectory(folder.resolve("class"));
    List<String> lines = commandLines();
    assertTrue(lines.size() > 20, lines::toString);
    String home = System.setProperty("user.home", folder.resolve("home").toString());
    try {
      for (String line : lines) {
        Console done = Console.run(arguments(line));
        assertEquals(0, done.exitCode(), () -> line + "\n" + done.err() + done.out());
      }
    } finally {
      System.setProperty("user.home", home);
    }
  }

  private static List<String> commandLines() {
    List<String> lines = new ArrayList<>();
    for (Chapter chapter : Guide.chapters()) {
      chapter
          .text()
          .accept(
              new AbstractVisitor() {
                @Override
                public void visit(FencedCodeBlock code) {
                  if (code.getInfo().equals("sh")) {
                    code.getLiteral().lines().forEach(lines::add);
                  }
                }
              });
    }
    return lines;
  }

  /** Files are those of this test's folder; the first word is the program. */
  private String[] arguments(String line) {
    List<String> words = new ArrayList<>();
    Matcher matcher = WORD.matcher(line);
    while (matcher.find()) {
      words.add(matcher.group(1) != null ? matcher.group(1) : matcher.group(2));
    }
    assertEquals("holdcurve", words.remove(0), line);
    for (int i = 1; i < words.size(); i++) {
      if (FILE.matcher(words.get(i)).matches()) {
        words.set(i, folder.resolve(words.get(i)).toString());
      }
    }
    return words.toArray(String[]::new);
  }

  private void copyScenarios() throws IOException {
    try (Stream<Path> files = Files.walk(SCENARIOS)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path copy = folder.resolve("scenarios").resolve(SCENARIOS.relativize(file).toString());
        Files.createDirectories(copy.getParent());
        Files.copy(file, copy);
      }
    }
  }

  @Test
  void chaptersAreListedAndPrintedInLinesThatFit() {
    Console list = Console.run("guide");
    for (Chapter chapter : Guide.chapters()) {
      assertTrue(list.out().contains(chapter.title()), chapter.title());
      Console printed = Console.run("guide", chapter.id());
      assertEquals(0, printed.exitCode());
      assertTrue(printed.out().startsWith(chapter.title()), printed.out());
    }
    assertTrue(Console.run("guide", "clamps").out().lines().allMatch(line -> line.length() < 80));
  }

  @Test
  void aWrongChapterIsBadInput() {
    Console done = Console.run("guide", "brakes");
    assertEquals(HoldcurveCommand.BAD_INPUT, done.exitCode());
    assertTrue(done.err().contains("no such chapter"), done.err());
  }
}
