package holdcurve.ui.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * No step of the rehearsal holds the screen up, not even where nothing has been loaded before.
 * Processor time is counted, not the clock; of two cold processes the lesser, since what else the
 * machine does makes the same work dearer.
 */
class RehearsalTest {
  /** What the screen may do without a pause [ms]; see DEVELOPERS.md for what it took on ours. */
  private static final double MOST_MS = 100;

  private static final List<String> HEADLESS =
      List.of(
          "glass.platform",
          "monocle.platform",
          "prism.order",
          "java.awt.headless",
          "headless.geometry");

  @TempDir Path folder;

  @Test
  void noStepIsLongInAColdProcess() throws Exception {
    List<Double> first = steps(folder.resolve("first"));
    List<Double> second = steps(folder.resolve("second"));
    assertTrue(first.size() > 50, first.size() + " steps");
    assertEquals(first.size(), second.size());
    for (int i = 0; i < first.size(); i++) {
      double work = Math.min(first.get(i), second.get(i));
      assertTrue(work < MOST_MS, "step " + (i + 1) + ": " + work + " ms");
    }
  }

  private static List<Double> steps(Path told) throws IOException, InterruptedException {
    List<String> command = new ArrayList<>();
    command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
    HEADLESS.forEach(name -> command.add("-D" + name + "=" + System.getProperty(name)));
    command.addAll(
        List.of("-cp", System.getProperty("java.class.path"), RehearsalProcess.class.getName()));
    int code =
        new ProcessBuilder(command)
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .redirectOutput(told.toFile())
            .start()
            .waitFor();
    assertEquals(0, code);
    List<String> lines = Files.readAllLines(told);
    return IntStream.range(0, lines.size())
        .mapToObj(i -> Double.valueOf(lines.get(i).split(" ")[0]))
        .toList();
  }
}
