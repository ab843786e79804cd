package holdcurve.ui.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import holdcurve.ui.about.Build;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;

/** What all commands have in common. */
class CommandOptionsTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");

  /** Has no result of its own: it opens the window, or prints the ranking where it can't. */
  private static final String WINDOW = "window";

  private static final String HELP = "help";

  /** Reads no file. */
  private static final String ABOUT = "about";

  /** Reads no file either; what it writes is to be read by people. */
  private static final String GUIDE = "guide";

  /** Writes a zip: there is no result to work on further. */
  private static final String PROBLEM = "report-problem";

  /** Its result is the job file; what it says of bad input has a test of its own. */
  private static final String JOB = "job";

  /** Commands that chance has no part in. */
  private static final Set<String> CERTAIN = Set.of("refit", "faults", "bench-sheet", "cases");

  /** Commands that can do without a file. */
  private static final Set<String> WITHOUT_FILE = Set.of("faults", "whatif", "practise");

  @TempDir private Path folder;

  private static CommandLine command(String name) {
    PrintWriter nowhere = new PrintWriter(new StringWriter());
    return HoldcurveCommand.commandLine(nowhere, nowhere).getSubcommands().get(name);
  }

  static List<String> commands() {
    PrintWriter nowhere = new PrintWriter(new StringWriter());
    List<String> names =
        new ArrayList<>(HoldcurveCommand.commandLine(nowhere, nowhere).getSubcommands().keySet());
    names.removeAll(Set.of(WINDOW, HELP));
    return names;
  }

  static List<String> commandsWithResult() {
    List<String> names = commands();
    names.removeAll(Set.of(ABOUT, GUIDE, PROBLEM, JOB));
    return names;
  }

  static List<String> commandsWithFile() {
    List<String> names = commands();
    names.removeAll(Set.of(ABOUT, GUIDE, JOB));
    return names;
  }

  @ParameterizedTest
  @MethodSource("commandsWithResult")
  void everyResultCanBeHadAsJsonAndRepeated(String name) {
    Set<String> options = command(name).getCommandSpec().optionsMap().keySet();
    assertTrue(options.contains("--json"), options::toString);
    assertEquals(!CERTAIN.contains(name), options.contains("--seed"), options::toString);
  }

  @ParameterizedTest
  @MethodSource("commands")
  void everyCommandExplainsItself(String name) {
    Console console = Console.run(name, "--help");
    assertEquals(0, console.exitCode());
    assertTrue(console.out().contains("Usage: holdcurve " + name), console.out());
    assertEquals(
        commandsWithResult().contains(name), console.out().contains("--json=FILE"), console.out());
    assertTrue(console.out().lines().allMatch(line -> line.length() <= 80), console.out());
  }

  @ParameterizedTest
  @MethodSource("commandsWithFile")
  void badInputIsSaidInOneLineWithExitCodeTwo(String name) {
    Console missing =
        WITHOUT_FILE.contains(name)
            ? Console.run(name, "--circuit", folder.resolve("none.circuit.json").toString())
            : Console.run(name, folder.resolve("none.job.json").toString());
    assertEquals(2, missing.exitCode(), missing.err());
    assertTrue(missing.err().contains("there is no such file"), missing.err());
    assertEquals(1, missing.err().strip().lines().count());
    assertEquals(2, Console.run(name, "--no-such-option").exitCode());
  }

  /** The quick ones; those that rank write JSON in tests of their own. */
  @ParameterizedTest
  @CsvSource({
    "holdcurve-refit/1, steps, refit repaired-check-valve.job.json",
    "holdcurve-faults/1, faults, faults --circuit circuits/four-cylinder-damper.circuit.json",
    "holdcurve-simulation/1, readings,"
        + " simulate circuits/four-cylinder-damper.circuit.json --read-by-eye --hold 2",
    "holdcurve-bench-report/1, injectors, bench-sheet bench/six-as-they-came.bench.json",
    "holdcurve-drop-report/1, injectors, drop-test bench/drops-two-times.csv",
    "holdcurve-whatif/1, changes,"
        + " whatif --circuit circuits/four-cylinder-damper.circuit.json --fuel petrol-e10"
  })
  void jsonNamesItsFormatAndTheSameSeedGivesTheSame(String format, String entry, String words)
      throws IOException {
    Path file = folder.resolve("result.json");
    List<String> arguments = new ArrayList<>();
    for (String word : words.split(" ")) {
      arguments.add(word.endsWith("json") || word.endsWith("csv") ? place(word) : word);
    }
    arguments.addAll(List.of("--json", file.toString()));
    Console first = Console.run(arguments.toArray(String[]::new));
    assertEquals(0, first.exitCode(), first.err());
    String text = Files.readString(file);
    JsonNode root = new ObjectMapper().readTree(text);
    assertEquals(format, root.path("format").asText());
    assertFalse(root.path(entry).isMissingNode(), text);
    assertTrue(root.path(entry).size() > 0, text);
    assertEquals(first.out(), Console.run(arguments.toArray(String[]::new)).out());
    assertEquals(text, Files.readString(file));
  }

  private static String place(String name) {
    return SCENARIOS.resolve(name).toString();
  }

  @Test
  void everyLineOfTheListOfCommandsIsAWholeSentence() {
    Console console = Console.run("help");
    assertEquals(0, console.exitCode(), console.err());
    assertEquals(console.out(), Console.run("--help").out());
    assertTrue(
        console.out().lines().anyMatch(line -> line.matches("  help +Says how a command is used.")),
        console.out());
    assertTrue(console.out().lines().allMatch(line -> line.length() <= 80), console.out());
    for (String name : commands()) {
      String[] description = command(name).getCommandSpec().usageMessage().description();
      assertTrue(description[0].endsWith("."), description[0]);
      assertEquals(Console.run(name, "--help").out(), Console.run("help", name).out());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "rnak my-car.job.json, did you mean 'rank'?",
    "practice, did you mean 'practise'?",
    "bench six.csv, did you mean 'bench-sheet'?",
    "tyres, There is no command 'tyres'. 'holdcurve help' lists them.",
    "my-car.job.json, holdcurve rank my-car.job.json",
    "refit my-car.job.json --date 1.2.2026, Invalid value for option '--date': '1.2.2026' is no date",
    "rank --explain check-valve my-car.job.json, 'my-car.job.json' is one word too many.",
    "rank --explain check-valve my-car.job.json, '--explain' takes no value. Leave out 'check-valve'.",
    "faults --explain nosuch, --explain nosuch: there is no such fault; use one of",
    "rank --circuit a.circuit.json --expalin log.csv, Unknown option: '--expalin'",
    "job my-car.job.json, holdcurve job show my-car.job.json",
    "job tets my-car.job.json, did you mean 'test'? 'holdcurve help job' lists them.",
    "simulate --every 0;5 c.circuit.json, '0;5' is not a number; write it with figures",
    "rank --seed one my-car.job.json, 'one' is not a whole number."
  })
  void aSlipOfThePenIsToldFromWhatWasMeant(String words, String said) {
    Console console = Console.run(words.split(" "));
    assertEquals(2, console.exitCode());
    assertTrue(console.err().contains(said), console.err());
    assertEquals("", console.out());
  }

  @Test
  void theVersionIsThatOfTheBuild() {
    Console console = Console.run("--version");
    assertEquals(0, console.exitCode(), console.err());
    assertTrue(console.out().startsWith("Holdcurve " + Build.version() + System.lineSeparator()));
    assertTrue(Console.run("about").out().startsWith("Holdcurve " + Build.version() + "."));
  }

  @Test
  void aPictureIsAPicture() {
    Console console = Console.run("window", place("check-valve.job.json"), "--snapshot", "a.json");
    assertEquals(2, console.exitCode());
    assertTrue(console.err().contains("end its name in .png"), console.err());
  }

  @Test
  void aLogWithoutItsCircuitIsToldWhatItLacks() {
    Console console = Console.run("rank", place("logs/check-valve-base.csv"));
    assertEquals(2, console.exitCode());
    assertTrue(console.err().contains("with --circuit, or put both into a job"), console.err());
  }

  @ParameterizedTest
  @CsvSource({
    "drop-test bench/drops-two-times.csv, Each firing sprays petrol into the engine",
    "drop-test bench/drops-six-times.csv, (-5 to +0)",
    "bench-sheet bench/six-before-and-after.csv, The mist on a bench ignites",
    "faults --circuit circuits/six-cylinder-ring-rail.circuit.json, nowhere in this circuit",
    "rank check-valve.job.json, ! Petrol and its vapour ignite: no flame or spark",
    "rank sound-after-rebuild.job.json, ! Petrol and its vapour ignite: no flame or spark",
    "check repaired-check-valve.job.json, ! Petrol and its vapour ignite: no flame or spark",
    "plan sound-after-rebuild.job.json, ! Petrol and its vapour ignite: no flame or spark"
  })
  void tablesFitTheTerminalAndCautionsStandWhereFuelIsLetOut(String words, String said) {
    Console console =
        Console.run(
            Arrays.stream(words.split(" "))
                .map(word -> word.endsWith("json") || word.endsWith("csv") ? place(word) : word)
                .toArray(String[]::new));
    assertEquals(0, console.exitCode(), console.err());
    assertTrue(console.out().replaceAll("\\s+", " ").contains(said), console.out());
    console.out().lines().forEach(line -> assertTrue(line.length() <= 80, line));
  }

  @Test
  void benchReportsCanBeHadAsCsv() throws IOException {
    Path file = folder.resolve("result.csv");
    Console console =
        Console.run(
            "bench-sheet", place("bench/six-before-and-after.csv"), "--csv", file.toString());
    assertEquals(0, console.exitCode(), console.err());
    List<String> lines = Files.readAllLines(file);
    assertEquals("# holdcurve-bench-report/1", lines.get(0));
    assertTrue(
        lines.stream().anyMatch(line -> line.startsWith("set,after,mean static flow,mL/min,")));
    assertTrue(lines.stream().anyMatch(line -> line.startsWith("4,after,drops,1/min,")));
    assertTrue(lines.stream().skip(1).allMatch(line -> line.split(",", -1).length == 7));
  }

  @Test
  void theListOfCommandsInTheReadmeIsComplete() throws IOException {
    String readme = Files.readString(SCENARIOS.resolveSibling("README.md"));
    for (String name : commands()) {
      assertTrue(readme.contains("    holdcurve " + name + " "), name);
    }
  }
}
