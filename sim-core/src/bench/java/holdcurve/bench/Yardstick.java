package holdcurve.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Runs the yardsticks in src/bench/yardsticks, or says why not. */
public final class Yardstick {
  /**
   * @param time fastest [µs of CPU]
   * @param states nine a time, eight times
   */
  public record Run(String variant, double tolerance, double time, double[] states) {}

  private static final Path ROOT = Path.of(System.getProperty("holdcurve.root", ".."), "sim-core");
  private static final Path SOURCES = ROOT.resolve("src/bench/yardsticks");

  private Yardstick() {}

  /** SUNDIALS CVODE, compiled here; empty where its headers or a C compiler are missing. */
  public static List<Run> cvode(double... tolerances) {
    Path program = ROOT.resolve("target/hold_cvode");
    List<String> compile =
        new ArrayList<>(List.of("cc", "-O3", "-march=native", "-o", program.toString()));
    compile.add(SOURCES.resolve("hold_cvode.c").toString());
    compile.addAll(
        List.of(
            "-lsundials_cvode",
            "-lsundials_nvecserial",
            "-lsundials_sunlinsoldense",
            "-lsundials_sunmatrixdense",
            "-lm"));
    if (output(compile) == null) {
      System.out.println(
          "CVODE is left out: it takes a C compiler and libsundials-dev to compile "
              + "src/bench/yardsticks/hold_cvode.c.");
      return List.of();
    }
    return runs(with(List.of(program.toString()), tolerances));
  }

  /** SciPy; empty where it isn't installed. */
  public static List<Run> scipy(double... tolerances) {
    List<String> command =
        List.of(
            "python3",
            SOURCES.resolve("hold_scipy.py").toString(),
            ROOT.resolve("src/test/resources/reference/hold-problem-reference.json").toString());
    List<Run> runs = runs(with(command, tolerances));
    if (runs.isEmpty()) {
      System.out.println("SciPy is left out: it takes python3 with scipy.");
    }
    return runs;
  }

  private static List<String> with(List<String> command, double... tolerances) {
    List<String> all = new ArrayList<>(command);
    Arrays.stream(tolerances).mapToObj(Double::toString).forEach(all::add);
    return all;
  }

  private static List<Run> runs(List<String> command) {
    String text = output(command);
    List<Run> runs = new ArrayList<>();
    if (text != null) {
      for (String line : text.strip().split("\n")) {
        String[] words = line.split(" ");
        double[] states = new double[words.length - 3];
        Arrays.setAll(states, i -> Double.parseDouble(words[3 + i]));
        runs.add(
            new Run(words[0], Double.parseDouble(words[1]), Double.parseDouble(words[2]), states));
      }
    }
    return runs;
  }

  /** What a command prints; null if it can't be started or fails. */
  private static String output(List<String> command) {
    try {
      Path errors = Files.createTempFile("yardstick", ".txt");
      Process process = new ProcessBuilder(command).redirectError(errors.toFile()).start();
      String text = new String(process.getInputStream().readAllBytes());
      Files.deleteIfExists(errors);
      return process.waitFor() == 0 ? text : null;
    } catch (IOException e) {
      return null;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return null;
    }
  }
}
