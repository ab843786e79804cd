package holdcurve.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The exact sentence for every broken or odd file. The timeout is there for what would hang. */
@Timeout(value = 60, unit = TimeUnit.SECONDS, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
class HardFilesTest {
  private static final Map<String, String> SENTENCES = HardFiles.sentences();
  private static final Map<String, MadeFiles.Maker> MADE_FILES = MadeFiles.all();
  private static final String MADE = "made/";

  @TempDir private Path folder;

  private static Iterable<String> names() {
    return HardFiles.names();
  }

  private static Iterable<String> made() {
    return MADE_FILES.keySet();
  }

  private static String kind(String name) {
    return name.substring(0, name.indexOf('/'));
  }

  @ParameterizedTest
  @MethodSource("names")
  void saysThis(String name) {
    Path file = HardFiles.FOLDER.resolve(name);
    assertEquals(SENTENCES.get(name), HardFiles.outcome(kind(name), file, HardFiles.FOLDER));
  }

  @ParameterizedTest
  @MethodSource("made")
  void saysThisOfMadeOnes(String name) throws IOException {
    Path file = folder.resolve(name);
    Files.createDirectories(file.getParent());
    MADE_FILES.get(name).make(file);
    assertEquals(SENTENCES.get(MADE + name), HardFiles.outcome(kind(name), file, folder));
  }

  @Test
  void everyFileHasItsSentence() {
    Set<String> all = new TreeSet<>(HardFiles.names());
    MADE_FILES.keySet().forEach(name -> all.add(MADE + name));
    assertEquals(all, SENTENCES.keySet());
    assertTrue(all.size() >= 60, all.size() + " files");
  }

  /** One line a slip, no sign that steers a terminal, and not longer than a person reads. */
  @Test
  void sentencesAreSentences() {
    SENTENCES.forEach(
        (name, said) -> {
          assertTrue(said.startsWith("refused: ") || said.contains("kept: "), name);
          assertTrue(said.chars().noneMatch(c -> c != '\n' && Character.isISOControl(c)), name);
          assertTrue(
              !said.startsWith("refused: ")
                  || said.lines().allMatch(line -> line.matches("(refused: )?[^,:]+[,:] .*\\.")),
              name);
          assertTrue(
              said.lines().allMatch(line -> line.length() < 700),
              name + " takes " + said.length() + " characters");
        });
  }
}
