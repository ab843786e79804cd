package holdcurve.bench;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.file.CircuitReader;
import holdcurve.physics.flow.LaminarLaw;
import holdcurve.physics.hold.HoldSetup;
import holdcurve.physics.hold.HoldSimulator;
import java.io.IOException;
import java.lang.ProcessBuilder.Redirect;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/** The packaged program as a process of its own, by the clock: what a user waits for. */
final class WholeProgram {
  private static final Path ROOT = Path.of(System.getProperty("holdcurve.root", ".."));
  private static final Path HOME = ROOT.resolve("ui/target/holdcurve");
  private static final String CIRCUIT = "six-cylinder-return-line.circuit.json";

  /** Readings of two hours at 10 Hz. */
  private static final int MANY = 72_001;

  /** Every so many of them make the short log of 61. */
  private static final int THINNED = 1200;

  private static final int RUNS = 5;

  private static final Pattern TIMES =
      Pattern.compile("Window after ([0-9.]+) s, answer after ([0-9.]+) s");

  private WholeProgram() {}

  static void print() throws IOException {
    if (!Files.isExecutable(HOME.resolve("bin/holdcurve"))) {
      System.out.println("The whole program is left out: package it first (mvn package).");
      return;
    }
    System.out.println("\nThe packaged program, whole processes, fastest of " + RUNS);
    System.out.println("| what | by the clock |\n|---|---|");
    line("holdcurve faults", "", List.of("faults"));
    for (String job : List.of("rail-loss", "check-valve")) {
      String file = HOME.resolve("scenarios/" + job + ".job.json").toString();
      line("holdcurve rank, " + job, "", List.of("rank", file));
    }
    Path folder = Files.createTempDirectory("holdcurve-bench");
    printWindow(folder);
    Files.copy(HOME.resolve("scenarios/circuits/" + CIRCUIT), folder.resolve(CIRCUIT));
    double few = ranking("rank, 61 readings of two hours", folder, THINNED, "");
    double many = ranking("rank, all 72 001 of them, 256 MB", folder, 1, "-Xmx256m");
    System.out.printf(Locale.ROOT, "72 001 readings take %.2f times as long as 61%n", many / few);
  }

  /** The program says itself how long a person waited since its process began. */
  private static void printWindow(Path folder) throws IOException {
    if (System.getenv("DISPLAY") == null) {
      System.out.println("The window is left out: there is no display (xvfb-run gives one).");
      return;
    }
    String job = HOME.resolve("scenarios/check-valve.job.json").toString();
    String picture = folder.resolve("window.png").toString();
    double shown = Double.MAX_VALUE;
    double answered = Double.MAX_VALUE;
    for (int i = 0; i < RUNS; i++) {
      Path said = folder.resolve("said.txt");
      run("", List.of("window", job, "--snapshot", picture), Redirect.to(said.toFile()));
      Matcher times = TIMES.matcher(Files.readString(said));
      if (!times.find()) {
        throw new IllegalStateException("no times: " + Files.readString(said));
      }
      shown = Math.min(shown, Double.parseDouble(times.group(1)));
      answered = Math.min(answered, Double.parseDouble(times.group(2)));
    }
    System.out.printf(Locale.ROOT, "| the window shows | %.2f s |%n", shown);
    System.out.printf(Locale.ROOT, "| its answer to check-valve | %.2f s |%n", answered);
  }

  private static double ranking(String what, Path folder, int every, String options)
      throws IOException {
    Files.writeString(folder.resolve("logger.csv"), log(every));
    Path job =
        Files.writeString(
            folder.resolve("long.job.json"),
            String.format(
                """
                {"format": "holdcurve-job/1", "title": "Two hours (invented)", "circuit": "%s",
                 "tests": [{"id": "hold", "log": "logger.csv"}]}
                """,
                CIRCUIT));
    return line(what, options, List.of("rank", job.toString()));
  }

  /** A leak at the rail as a logger would see it. */
  private static String log(int every) {
    Circuit circuit = CircuitReader.read(HOME.resolve("scenarios/circuits/" + CIRCUIT));
    Condition leaky =
        Condition.sound(circuit)
            .with(new LeakPath("rail", Circuit.AIR, LaminarLaw.throughPoint(5e-9, 2e5)));
    double[] times = IntStream.range(0, MANY).mapToDouble(i -> 0.1 * i).toArray();
    double[] shown = new HoldSimulator().readings(leaky, HoldSetup.plain(2.03e5), times);
    StringBuilder text = new StringBuilder("time_s,pressure_bar\n");
    Random random = new Random(2);
    for (int i = 0; i < MANY; i++) {
      double bar = Math.max(0, shown[i] / 1e5 + 0.004 * random.nextGaussian());
      if (i % every == 0) {
        text.append(String.format(Locale.ROOT, "%.1f,%.4f%n", times[i], bar));
      }
    }
    return text.toString();
  }

  private static double line(String what, String options, List<String> arguments) {
    double time = Clock.fastestOf(RUNS, () -> run(options, arguments));
    System.out.printf(Locale.ROOT, "| %s | %.2f s |%n", what, time);
    return time;
  }

  private static void run(String options, List<String> arguments) {
    run(options, arguments, Redirect.DISCARD);
  }

  private static void run(String options, List<String> arguments, Redirect out) {
    ProcessBuilder builder = new ProcessBuilder(HOME.resolve("bin/holdcurve").toString());
    builder.command().addAll(arguments);
    builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
    builder.environment().put("JDK_JAVA_OPTIONS", options);
    builder.redirectErrorStream(true).redirectOutput(out);
    try {
      int code = builder.start().waitFor();
      if (code != 0) {
        throw new IllegalStateException(arguments + " ended with " + code);
      }
    } catch (IOException e) {
      throw new IllegalStateException(e);
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(e);
    }
  }
}
