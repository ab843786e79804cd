package holdcurve.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.JobReader;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.prior.FaultPriors;
import holdcurve.inference.ranking.RankingService;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What has nothing to do with a circuit moves no probability of a shipped scenario. */
class SameAnswerTest {
  private static final Path SCENARIOS =
      Path.of(System.getProperty("holdcurve.root", ".."), "scenarios");
  private static final String JOB = "check-valve.job.json";
  private static final double PSI = 0.0689475729;
  private static final Map<String, Double> USUAL =
      ranked(JobReader.read(SCENARIOS.resolve(JOB)), 1);

  @TempDir private Path folder;

  private static Map<String, Double> ranked(Job job, long seed) {
    RankingService service =
        new RankingService(FaultCatalogue.load(), FaultPriors.shipped(), 2).verdictOnly();
    return service.rank(job, seed, Progress.NONE).suspects().stream()
        .collect(Collectors.toMap(Suspect::id, Suspect::probability));
  }

  private static void assertSame(Map<String, Double> found, double gap) {
    assertEquals(USUAL.keySet(), found.keySet());
    USUAL.forEach((id, probability) -> assertEquals(probability, found.get(id), gap, id));
  }

  @ParameterizedTest
  @ValueSource(longs = {2, 3, 4})
  void seedsMoveNoProbability(long seed) {
    assertSame(ranked(JobReader.read(SCENARIOS.resolve(JOB)), seed), 0.005);
  }

  @Test
  void testsMayStandInAnyOrder() {
    Job job = JobReader.read(SCENARIOS.resolve(JOB));
    List<HoldTest> tests = new ArrayList<>(job.tests());
    Collections.reverse(tests);
    assertSame(ranked(job.withTests(tests), 1), 0.002);
  }

  /** Names that sort the other way round. */
  @Test
  void partsMayHaveAnyName() {
    Map<String, String> names = new TreeMap<>(Collections.reverseOrder());
    Pattern id = Pattern.compile("\"(?:id|at|from|to)\": \"([a-z-]+)\"");
    String circuit = read(SCENARIOS.resolve("circuits/six-cylinder-return-line.circuit.json"));
    List<String> sorted =
        id.matcher(circuit).results().map(match -> match.group(1)).distinct().sorted().toList();
    for (int i = 0; i < sorted.size(); i++) {
      boolean fixed = sorted.get(i).equals("tank");
      names.put(sorted.get(i), fixed ? "tank" : "p%02d".formatted(sorted.size() - i));
    }
    UnaryOperator<String> rename = text -> renamed(text, names, "(?<!\"kind\": )\"", "\"");
    Map<String, Double> found = ranked(copied(rename, UnaryOperator.identity()), 1);
    Map<String, Double> expected = new TreeMap<>();
    USUAL.forEach(
        (suspect, probability) ->
            expected.put(renamed(suspect, names, "(?<=@)", "(?=$|\\+|/)"), probability));
    assertEquals(expected.keySet(), new TreeMap<>(found).keySet());
    expected.forEach((name, p) -> assertEquals(p, found.get(name), 0.002, name));
  }

  private static String renamed(
      String text, Map<String, String> names, String before, String after) {
    String any = names.keySet().stream().map(Pattern::quote).collect(Collectors.joining("|"));
    return Pattern.compile("(" + before + ")(" + any + ")(" + after + ")")
        .matcher(text)
        .replaceAll(m -> Matcher.quoteReplacement(m.group(1) + names.get(m.group(2)) + m.group(3)));
  }

  /** Semicolons and decimal commas, tabs, and pounds per square inch. */
  @ParameterizedTest
  @ValueSource(strings = {"semicolon", "tab", "psi"})
  void logsMayBeWrittenAnyWay(String way) {
    assertSame(ranked(copied(UnaryOperator.identity(), log -> written(log, way)), 1), 0.002);
  }

  private static String written(String log, String way) {
    return switch (way) {
      case "semicolon" -> log.replace(',', ';').replace('.', ',');
      case "tab" -> log.replace(',', '\t');
      default ->
          log.replace("pressure_bar", "pressure_psi")
              .lines()
              .map(line -> Character.isDigit(line.charAt(0)) ? inPsi(line) : line)
              .collect(Collectors.joining("\n", "", "\n"));
    };
  }

  private static String inPsi(String line) {
    String[] cells = line.split(",");
    return String.format(Locale.ROOT, "%s,%.5f", cells[0], Double.parseDouble(cells[1]) / PSI);
  }

  /** The scenario with its job and circuit, and its logs, written anew. */
  private Job copied(UnaryOperator<String> json, UnaryOperator<String> log) {
    try (Stream<Path> logs = Files.list(SCENARIOS.resolve("logs"))) {
      Files.createDirectories(folder.resolve("logs"));
      Files.createDirectories(folder.resolve("circuits"));
      for (Path one : logs.filter(p -> p.getFileName().toString().startsWith("check-")).toList()) {
        String text = read(one).replaceFirst("(?m)^#.*\\R", "");
        Files.writeString(folder.resolve("logs").resolve(one.getFileName()), log.apply(text));
      }
      String circuit = "circuits/six-cylinder-return-line.circuit.json";
      for (String file : List.of(JOB, circuit)) {
        Files.writeString(folder.resolve(file), json.apply(read(SCENARIOS.resolve(file))));
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return JobReader.read(folder.resolve(JOB));
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
