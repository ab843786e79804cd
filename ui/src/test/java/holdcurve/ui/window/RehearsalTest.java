package holdcurve.ui.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The rehearsal takes the same many small steps in every cold process. The longest of them is
 * printed, in processor time, the lesser of two processes: a time is no pass or fail.
 */
class RehearsalTest {
  private static final List<String> HEADLESS =
      List.of(
          "glass.platform",
          "monocle.platform",
          "prism.order",
          "java.awt.headless",
          "headless.geometry");

  @TempDir Path folder;

  @Test
  void theSameStepsAreTakenInEveryColdProcess() throws Exception {
    List<Double> first = steps(folder.resolve("first"));
    List<Double> second = steps(folder.resolve("second"));
    assertTrue(first.size() > 50, first.size() + " steps");
    assertEquals(first.size(), second.size());
    double longest =
        IntStream.range(0, first.size())
            .mapToDouble(i -> Math.min(first.get(i), second.get(i)))
            .max()
            .orElseThrow();
    System.out.printf(Locale.ROOT, "longest step of the rehearsal: %.0f ms%n", longest);
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
