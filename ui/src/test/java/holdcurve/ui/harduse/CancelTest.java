package holdcurve.ui.harduse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.record.log.GaugeLogReader;
import holdcurve.ui.command.HoldcurveCommand;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Random;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Work is stopped at random moments: it says that it was stopped, and leaves nothing half done.
 * Each moment has three tries: once it may be just about to end, but work that doesn't ask whether
 * it should stop goes on to its end every time. How long each took is printed: a time is no pass or
 * fail.
 */
class CancelTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");
  private static final int MOMENTS = Integer.getInteger("cancel.moments", 2);
  private static final int TRIES = 3;
  private static final InputStream STDIN = System.in;
  private static double worst;
  private static int stopped;

  @TempDir private static Path folder;

  /**
   * @param most the last moment at which it is stopped [ms]
   */
  private record Work(String words, int most) {
    @Override
    public String toString() {
      return words.replaceAll("\\S*/", "");
    }
  }

  static Stream<Work> work() throws IOException {
    String rail = SCENARIOS.resolve("rail-loss.job.json").toString();
    String repaired = SCENARIOS.resolve("repaired-check-valve.job.json").toString();
    String circuit = SCENARIOS.resolve("circuits/six-cylinder-return-line.circuit.json").toString();
    Path log = BigLog.write(folder.resolve("big.csv"), Path.of(circuit), 0.1);
    String exercise = SCENARIOS.resolve("exercises/long-cranking.exercise.json").toString();
    return Stream.of(
        new Work("rank " + rail, 4000),
        new Work("rank --circuit " + circuit + " " + log, 3000),
        new Work("plan " + rail, 6000),
        new Work("whatif " + rail + " --replace check-valve", 4000),
        new Work("whatif --circuit " + circuit + " --replace check-valve", 1000),
        new Work("check " + repaired, 2000),
        new Work("report " + rail + " --out " + folder, 8000),
        new Work("simulate " + circuit + " --hold 600 --every 0.5 --build-up 100", 300),
        new Work("practise --lapse 0 " + exercise, 3000),
        new Work("practise --level 4 --make 12 --circuit " + circuit + " --out " + folder, 3000),
        new Work("drop-test " + SCENARIOS.resolve("bench/drops-six-times.csv"), 500),
        new Work("import " + log, 120));
  }

  @ParameterizedTest
  @MethodSource("work")
  void stopsAtOnce(Work work) throws InterruptedException {
    Random random = new Random(work.toString().hashCode());
    for (int i = 0; i < MOMENTS; i++) {
      int moment = random.nextInt(work.most());
      Interrupted end = stop(work, moment);
      for (int again = 1; !end.wasHeeded() && again < TRIES; again++) {
        end = stop(work, moment);
      }
      assertTrue(end.wasHeeded(), moment + " ms on, it went on to its end: " + end);
      worst = Math.max(worst, end.taken());
      stopped += end.wasRunning() ? 1 : 0;
    }
  }

  private static Interrupted stop(Work work, int moment) throws InterruptedException {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int[] code = {-1};
    System.setIn(new ByteArrayInputStream("1\n\na\n1=90\n".getBytes(StandardCharsets.US_ASCII)));
    Interrupted end = Interrupted.after(moment, () -> code[0] = run(work.words(), out, err));
    if (code[0] != 0) {
      assertEquals(HoldcurveCommand.STOPPED, code[0], err::toString);
    }
    return end.withCode(code[0]);
  }

  private static int run(String words, StringWriter out, StringWriter err) {
    if (words.startsWith("import ")) {
      return read(Path.of(words.substring(7)));
    }
    return HoldcurveCommand.commandLine(new PrintWriter(out), new PrintWriter(err))
        .execute(words.split(" "));
  }

  private static int read(Path log) {
    try {
      return GaugeLogReader.read(log).log().readings().size() > 0 ? 0 : 1;
    } catch (CancellationException e) {
      return HoldcurveCommand.STOPPED;
    }
  }

  @AfterEach
  void giveBackInput() {
    System.setIn(STDIN);
  }

  @AfterAll
  static void say() throws IOException {
    System.out.printf(
        Locale.ROOT, "%d times stopped underway: ended within %.0f ms.%n", stopped, worst);
    try (Stream<Path> left = Files.walk(folder)) {
      assertTrue(left.noneMatch(file -> file.toString().endsWith(".part")));
    }
  }
}
