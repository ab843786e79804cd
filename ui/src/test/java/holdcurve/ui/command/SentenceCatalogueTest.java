package holdcurve.ui.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import holdcurve.common.caution.Caution;
import holdcurve.file.CircuitReader;
import holdcurve.physics.circuit.Part;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/**
 * Every sentence that the commands print on the shipped scenarios, in their help and for broken
 * files. The catalogue is written to {@code target/sentences.txt} to be read in one go. What is
 * held here follows ISO 24495-1 (plain language); the numbers of words are the project's own.
 */
class SentenceCatalogueTest {
  private static final int MOST_WORDS = 22;
  private static final double MEAN_WORDS = 11;

  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");

  /** Constructions that a reader stumbled over, and words of statistics. */
  private static final List<String> BANNED =
      List.of(
          "can't be told apart",
          "can't tell apart",
          "told apart",
          "weep of",
          "time zero",
          "bore left",
          "nine times in ten",
          "what is left over",
          "drain the same",
          "speaks for",
          "speaks against",
          "to begin with",
          "range of sizes",
          "is asked for",
          "reaches across",
          "nobody gets more",
          "or none would",
          "what you did puts",
          "put right:",
          "can't speak for it",
          "evidence",
          "hypothes",
          "posterior",
          "likelihood",
          "attribution",
          "residual",
          "sound seats",
          "so that the",
          "in truth",
          " bits");

  private static final Pattern EQUAL_ENDS =
      Pattern.compile("(?<![0-9.+-])([+-]?[0-9]+(?:\\.[0-9]+)?) to \\1(?![0-9.])");

  private static final Pattern MINUS_NOUGHT = Pattern.compile("-0(?:\\.0+)?(?![0-9.])");

  /** Those whose short ranking is read; the others are printed in full. */
  private static final List<String> SHORT =
      List.of("rail-loss-lifted.job.json", "low-reseat.job.json", "blocked-return.job.json");

  private static final Map<String, String> PRINTED = new LinkedHashMap<>();
  private static final Set<String> SENTENCES = new LinkedHashSet<>();

  @TempDir private static Path folder;

  @BeforeAll
  static void collect() throws IOException {
    for (Path job : files("", ".job.json")) {
      if (SHORT.contains(job.getFileName().toString())) {
        print("rank", job.toString());
      } else {
        print("rank", "--full", "--explain", job.toString());
      }
    }
    print("plan", "--all", scenario("wrong-part-renewed.job.json"));
    print("check", scenario("wrong-part-renewed.job.json"));
    String checkValve = scenario("check-valve.job.json");
    print("whatif", checkValve, "--replace", "check-valve");
    print("whatif", checkValve, "--parts", scenario("prices.json"));
    print("refit", checkValve);
    print("job", "show", scenario("wrong-part-renewed.job.json"));
    for (Path sheet : files("bench", "")) {
      print(
          sheet.getFileName().toString().startsWith("drops") ? "drop-test" : "bench-sheet",
          sheet.toString());
    }
    print(
        "bench-sheet",
        scenario("bench/six-before-and-after.csv"),
        "--earlier",
        scenario("bench/six-a-year-before.csv"),
        "--sets-of",
        "5");
    String begun = folder.resolve("fired.job.json").toString();
    print("job", "new", begun, "--cylinders", "6");
    print("job", "drop-test", begun, scenario("bench/drops-with-a-third-reading.csv"));
    String circuit = scenario("circuits/six-cylinder-return-line.circuit.json");
    print("faults", "--circuit", circuit);
    for (String fault : faults()) {
      print("faults", "--circuit", circuit, "--explain", fault);
    }
    practise(circuit);
    cases();
    broken(circuit);
    help(HoldcurveCommand.commandLine(new PrintWriter(System.err), new PrintWriter(System.err)));
    stories();
    write();
  }

  private static String scenario(String name) {
    return SCENARIOS.resolve(name).toString();
  }

  private static List<Path> files(String under, String end) throws IOException {
    try (Stream<Path> all = Files.list(SCENARIOS.resolve(under))) {
      return all.filter(file -> file.toString().endsWith(end)).sorted().toList();
    }
  }

  private static void print(String... words) {
    Console console = Console.run(words);
    String command =
        Stream.of(words)
            .map(word -> word.substring(word.lastIndexOf('/') + 1))
            .collect(Collectors.joining(" "));
    PRINTED.put(command, console.out() + "\n" + console.err());
    SENTENCES.addAll(Sentences.of(console.out()));
    SENTENCES.addAll(Sentences.ofError(console.err()));
  }

  private static List<String> faults() {
    return Console.run("faults")
        .out()
        .lines()
        .map(line -> Pattern.compile("^ {0,2}([a-z]+(?:-[a-z]+)+)\\b").matcher(line))
        .filter(Matcher::find)
        .map(found -> found.group(1))
        .distinct()
        .toList();
  }

  /** Listed, ranked, corrected, and ranked by what was learned, in a home of their own. */
  private static void cases() throws IOException {
    Path jobs = Files.createDirectories(folder.resolve("jobs"));
    for (String under : List.of("circuits", "logs")) {
      Files.createDirectories(jobs.resolve(under));
      for (Path file : files(under, "")) {
        Files.copy(file, jobs.resolve(under).resolve(file.getFileName()));
      }
    }
    for (Path file : files("", ".job.json")) {
      String name = "car-" + jobs.toFile().list().length + ".job.json";
      Files.copy(file, jobs.resolve(name));
    }
    Path job = jobs.resolve("one.job.json");
    Files.copy(SCENARIOS.resolve("check-valve.job.json"), job);
    Files.writeString(jobs.resolve("odd.job.json"), "{ \"format\": 7 }");
    Path rates = folder.resolve("rates.json");
    String before = System.setProperty("user.home", folder.resolve("home").toString());
    try {
      print("cases");
      print("cases", jobs.toString(), "--keep", "--rank");
      print("cases", "correct", job.toString());
      print("cases", "correct", job.toString(), "--fault", "feed-side-joint", "--car", "AB 123");
      print("cases", "correct", job.toString(), "--no-fault");
      print("cases", "--search", "ab 123");
      print("rank", "--full", earlierAndLater(jobs));
      print("cases", "correct", job.toString(), "--fault", "feed-side-joint");
      print("cases", "rates", "--use", "own", "--export", rates.toString());
      print("rank", "--full", job.toString());
      print("cases", "rates", "--use", rates.toString());
      print("cases", "rates", "--use", job.toString());
      print("cases", "correct", job.toString(), "--as-filed");
    } finally {
      System.setProperty("user.home", before);
    }
  }

  /** Two jobs of one car; the later one. */
  private static String earlierAndLater(Path jobs) throws IOException {
    for (String year : List.of("2025", "2026")) {
      Path job = jobs.resolve("year-" + year + ".job.json");
      String text = Files.readString(SCENARIOS.resolve("sound-after-rebuild.job.json"));
      Files.writeString(job, text.replace("\"id\":", "\"date\": \"" + year + "-04-10\", \"id\":"));
      print("cases");
      print("cases", "correct", job.toString(), "--car", "CD 456");
    }
    return jobs.resolve("year-2026.job.json").toString();
  }

  private static void practise(String circuit) throws IOException {
    print("practise", "--list");
    typed(
        "1\n\nf\ns\na\n1=90\n1\n",
        "practise",
        "--lapse",
        "0",
        scenario("exercises/thin-hose.exercise.json"));
    typed(
        "1\n\n2.0\nx\n9\n1.1\n\n\n\n\n\n\n\n\n\n\n\n8\n\n99\na\n\nn\n1=100\n9\n2\n",
        "practise",
        "--dial",
        "--lapse",
        "0",
        "two-bills");
    Path open = folder.resolve("open.exercise.json");
    Files.copy(Path.of(circuit), folder.resolve("a.circuit.json"));
    Files.writeString(
        open,
        """
        { "format": "holdcurve-exercise/1", "title": "Too large", "level": 1, "story": "It leaks.",
          "circuit": "a.circuit.json", "minutes": 60,
          "secret": { "faults": [ { "fault": "check-valve-seat", "size": 0.6 } ], "seed": 1 } }
        """);
    print("practise", "--seal", open.toString(), "--out", folder.resolve("class").toString());
    String refused = PRINTED.get("practise --seal open.exercise.json --out class");
    assertTrue(refused.contains("beyond anything met with"), refused);
    assertTrue(refused.contains("mL/min"), refused);
  }

  private static void typed(String lines, String... words) {
    InputStream before = System.in;
    try {
      System.setIn(new ByteArrayInputStream(lines.getBytes(StandardCharsets.US_ASCII)));
      print(words);
    } finally {
      System.setIn(before);
    }
  }

  private static void broken(String circuit) throws IOException {
    Path job = folder.resolve("broken.job.json");
    Files.writeString(
        job,
        """
        { "format": "holdcurve-job/1", "title": 7, "circuit": "none.circuit.json",
          "gauge": { "range_bar": 99 }, "colour": "red",
          "tests": [ { "id": "a", "log": "none.csv", "clamped": [ "roof" ] } ] }
        """);
    Path log = folder.resolve("broken.csv");
    Files.writeString(log, "time_s,pressure_bar\n0,2.0\n60,ninety\n30,-4\n");
    print("rank", job.toString());
    print("rank", "--circuit", circuit, log.toString());
    print("rank", folder.resolve("missing.job.json").toString());
    print("rank", log.toString());
    print("faults", "--explain", "nosuch");
    print("rank", "--explain", "nosuch", job.toString());
    print("ranq", job.toString());
    print("rank", "--units", "furlong", job.toString());
    print("bench-sheet", log.toString());
    print("drop-test", log.toString());
    print("check", job.toString());
  }

  private static void help(CommandLine command) {
    List<String> said = new ArrayList<>();
    said.addAll(List.of(command.getCommandSpec().usageMessage().description()));
    said.addAll(List.of(command.getCommandSpec().usageMessage().footer()));
    command.getCommandSpec().options().forEach(o -> said.addAll(List.of(o.description())));
    command
        .getCommandSpec()
        .positionalParameters()
        .forEach(p -> said.addAll(List.of(p.description())));
    said.stream()
        .flatMap(text -> text.replace("%%", "%").replace("${DEFAULT-VALUE}", "1").lines())
        .filter(line -> !line.startsWith("  "))
        .forEach(line -> SENTENCES.addAll(Sentences.split(line)));
    command.getSubcommands().values().forEach(SentenceCatalogueTest::help);
  }

  /** What exercises and jobs tell, and the cautions. */
  private static void stories() throws IOException {
    for (Path exercise : files("exercises", ".json")) {
      JsonNode story = new ObjectMapper().readTree(exercise.toFile()).path("story");
      SENTENCES.addAll(Sentences.split(story.asText()));
    }
    for (Caution caution : Caution.values()) {
      SENTENCES.addAll(Sentences.split(caution.text()));
    }
  }

  private static void write() throws IOException {
    String all = SENTENCES.stream().sorted().collect(Collectors.joining("\n"));
    String head =
        String.format(
            "%d sentences, %.1f words on average, %d over %d words%n%n",
            SENTENCES.size(), mean(), tooLong().size(), MOST_WORDS);
    Files.writeString(
        Path.of(System.getProperty("holdcurve.root"), "ui", "target", "sentences.txt"),
        head + all + "\n");
  }

  private static double mean() {
    return SENTENCES.stream().mapToInt(Sentences::words).average().orElseThrow();
  }

  private static List<String> tooLong() {
    return SENTENCES.stream().filter(s -> Sentences.words(s) > MOST_WORDS).toList();
  }

  private static void none(List<String> found) {
    assertEquals("", String.join("\n", found), found.size() + " found");
  }

  @Test
  void enoughIsCollected() {
    assertTrue(SENTENCES.size() > 500, SENTENCES.size() + " sentences");
    PRINTED.forEach((command, text) -> assertTrue(!text.isBlank(), command));
  }

  @Test
  void noSentenceIsTooLong() {
    none(tooLong());
  }

  @Test
  void sentencesAreShortOnAverage() {
    assertTrue(mean() <= MEAN_WORDS, mean() + " words");
  }

  @Test
  void nothingBannedIsSaid() {
    none(
        SENTENCES.stream()
            .filter(s -> BANNED.stream().anyMatch(s.toLowerCase(java.util.Locale.ROOT)::contains))
            .toList());
  }

  /** What is to be typed stands behind '--', '@' or in the lists of 'faults' and 'job show'. */
  @Test
  void partsAreCalledByName() throws IOException {
    Set<String> ids = new TreeSet<>();
    for (Path circuit : files("circuits", ".circuit.json")) {
      CircuitReader.read(circuit).parts().stream()
          .map(Part::id)
          .filter(id -> id.contains("-"))
          .forEach(ids::add);
    }
    Pattern id = Pattern.compile("(?<![@a-z0-9-])(" + String.join("|", ids) + ")(?![a-z0-9-])");
    List<String> found = new ArrayList<>();
    PRINTED.forEach(
        (command, text) ->
            text.lines()
                .filter(line -> !toType(command) && id.matcher(line).find())
                .forEach(line -> found.add(command + ": " + line)));
    none(found);
  }

  private static boolean toType(String command) {
    boolean faults = command.startsWith("faults") && !command.contains("--explain");
    return faults || command.startsWith("job show") || command.contains("nosuch");
  }

  @Test
  void noughtHasNoSignAndNoRangeIsAPoint() {
    List<String> found = new ArrayList<>();
    PRINTED.forEach(
        (command, text) ->
            text.lines()
                .filter(l -> EQUAL_ENDS.matcher(l).find() || MINUS_NOUGHT.matcher(l).find())
                .forEach(line -> found.add(command + ": " + line)));
    none(found);
  }

  /** The parts of each fall, as printed, add up to the fall as printed. */
  @Test
  void thePartsOfAFallAddUp() {
    Pattern head = Pattern.compile(".* to .* in .* min, a fall of (-?[0-9.]+) bar");
    Pattern part = Pattern.compile(" {4}[a-z].*? {1,}(-?[0-9]+\\.[0-9]{2})(?: .*)?");
    List<String> found = new ArrayList<>();
    int falls = 0;
    for (Map.Entry<String, String> one : PRINTED.entrySet()) {
      List<String> lines = one.getValue().lines().toList();
      for (int i = 0; i < lines.size(); i++) {
        Matcher fall = head.matcher(lines.get(i));
        if (!fall.matches()) {
          continue;
        }
        falls++;
        long sum = 0;
        for (int k = i + 1; k < lines.size(); k++) {
          Matcher row = part.matcher(lines.get(k));
          if (!row.matches() || lines.get(k).contains("if so,")) {
            break;
          }
          sum += Math.round(100 * Double.parseDouble(row.group(1)));
        }
        if (sum != Math.round(100 * Double.parseDouble(fall.group(1)))) {
          found.add(one.getKey() + ": " + lines.get(i) + ", parts " + sum / 100.0);
        }
      }
    }
    assertTrue(falls > 9, falls + " falls");
    none(found);
  }

  /** Chances of the suspects that are listed and of the rest. */
  @Test
  void theChancesAddUp() {
    Pattern chance = Pattern.compile("  +([<>]?)([0-9]+) % {3}[A-Z].*");
    Pattern rest =
        Pattern.compile(
            "  [0-9]+ (?:less likely|more fit, [0-9]+ hardly fit), ([<>]?)([0-9]+) % together");
    List<String> found = new ArrayList<>();
    int rankings = 0;
    for (Map.Entry<String, String> one : PRINTED.entrySet()) {
      int sum = 0;
      int loose = 0;
      for (String line : one.getValue().lines().toList()) {
        Matcher listed = chance.matcher(line);
        Matcher more = rest.matcher(line);
        Matcher any = listed.matches() ? listed : more.matches() ? more : null;
        if (any != null) {
          loose += any.group(1).isEmpty() ? 0 : 1;
          sum += any.group(1).equals("<") ? 0 : Integer.parseInt(any.group(2));
        }
        if (any == more) {
          rankings++;
          if (sum > 100 || sum + loose < 100) {
            found.add(one.getKey() + ": " + sum + " % and " + loose + " under 1 %");
          }
        }
      }
    }
    assertTrue(rankings >= 9, rankings + " rankings");
    none(found);
  }

  /** One screen: the answer first, then what to do. */
  @Test
  void aRankingFitsOneScreen() {
    for (String job : SHORT) {
      List<String> lines = PRINTED.get("rank " + job).stripTrailing().lines().toList();
      assertTrue(lines.size() <= 40, job + ": " + lines.size() + " lines");
      long before = lines.stream().takeWhile(line -> !line.startsWith("Do next: ")).count();
      assertTrue(before <= 2 && !lines.get(0).isBlank(), job + ": " + lines);
    }
  }
}
