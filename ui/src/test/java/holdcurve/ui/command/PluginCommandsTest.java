package holdcurve.ui.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import holdcurve.ui.PluginJars;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;

/**
 * What a folder of plugins does to the commands: the example takes part as if it had always been
 * there, and bad jars beside it cost a line each.
 */
class PluginCommandsTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");
  private static final String CIRCUIT =
      SCENARIOS.resolve("circuits/six-cylinder-return-line.circuit.json").toString();

  /** Deaf to interrupts, but idle, so that it doesn't hold up the other tests. */
  private static final String FOREVER =
      "while (true) { try { Thread.sleep(60_000); } catch (InterruptedException e) { } }";

  /** Jar to what is wrong with it. */
  private static final Map<String, String> BAD = new LinkedHashMap<>();

  static {
    BAD.put("Throwing", "public Throwing() { throw new IllegalStateException(\"no luck\"); }");
    BAD.put("Shy", "public String symptoms() { throw new AssertionError(\"shy\"); }");
    BAD.put("Nameless", "public String name() { return null; }");
    BAD.put("Numberless", "public List<FaultParameter> parameters() { return null; }");
    BAD.put("Uncommon", "public double prevalence() { return Double.NaN; }");
    BAD.put("Twin", "public String id() { return \"check-valve-seat\"; }");
    BAD.put("Endless", "public String repair() { " + FOREVER + " }");
    BAD.put("Foreign", "public int contractVersion() { return 99; }");
    BAD.put("Placeless", "public List<Site> sites(Circuit c) { return null; }");
    BAD.put(
        "Lost",
        "public List<Site> sites(Circuit c) {"
            + " return List.of(new Site(\"a\", \"b\", \"moon\", List.of())); }");
    BAD.put(
        "Unready",
        "public Condition apply(Condition c, Site s, double[] p) {"
            + " throw new UnsupportedOperationException(\"not yet\"); }");
    BAD.put("Bursting", law("d > 1.2e5 && d < 1.9e5 ? 1 / Integer.parseInt(\"0\") : 1e-14 * d"));
    BAD.put("Stalling", stalling());
    BAD.put("Unnumbered", law("d > 1.2e5 && d < 1.9e5 ? Double.NaN : 1e-14 * d"));
  }

  /** Fails only where a hold needs it: the look at what a plugin answers tries some pressures. */
  private static String law(String flow) {
    return "public Condition apply(Condition c, Site s, double[] p) {"
        + " return c.with(new LeakPath(s.point(), Circuit.AIR,"
        + " new holdcurve.physics.flow.FlowLaw() {"
        + " public double flow(double d) { return "
        + flow
        + "; }"
        + " public double slope(double d) { return 1e-14; } })); }";
  }

  private static String stalling() {
    return law("d > 1.2e5 && d < 1.9e5 ? endless() : 1e-14 * d")
        + " static double endless() { "
        + FOREVER
        + " }";
  }

  // class loaders keep their jars open, which some systems won't let one delete
  @TempDir(cleanup = CleanupMode.NEVER)
  private static Path work;

  private static Path good;
  private static Path mixed;

  @BeforeAll
  static void makeFolders() throws IOException {
    good = work.resolve("good");
    mixed = work.resolve("mixed");
    new PluginJars(work, good).example();
    PluginJars jars = new PluginJars(work, mixed);
    jars.example();
    jars.trials(BAD);
    Files.writeString(mixed.resolve("text.jar"), "I am a text.");
  }

  private static JsonNode json(Path file, Console console) throws IOException {
    assertEquals(0, console.exitCode(), console.err());
    return new ObjectMapper().readTree(file.toFile());
  }

  private static JsonNode rank(Path folder) throws IOException {
    Path json = work.resolve("ranking.json");
    return json(
        json,
        Console.run(
            "rank",
            SCENARIOS.resolve("check-valve.job.json").toString(),
            "--plugins",
            folder.toString(),
            "--json",
            json.toString()));
  }

  private static List<String> notes(JsonNode ranking) {
    List<String> notes = new ArrayList<>();
    ranking.get("notes").forEach(note -> notes.add(note.asText()));
    return notes;
  }

  /** The name by which a jar or its fault is called in a sentence. */
  private static boolean names(String sentence, String jar) {
    return sentence.contains(jar + ".jar") || sentence.contains("'" + jar.toLowerCase() + "'");
  }

  private static void eachIsNamedOnce(List<String> sentences) {
    List<String> jars = new ArrayList<>(BAD.keySet());
    jars.add("text");
    for (String jar : jars) {
      List<String> about = sentences.stream().filter(line -> names(line, jar)).toList();
      assertEquals(1, about.size(), jar + ": " + about);
      assertEquals(-1, about.get(0).indexOf('\n'), about.get(0));
    }
  }

  @Test
  void theExampleIsListedAndPlaced() {
    Console console = Console.run("faults", "--circuit", CIRCUIT, "--plugins", good.toString());
    assertEquals(0, console.exitCode(), console.err());
    assertTrue(console.out().contains("porous-hose@feed-hose"), console.out());
  }

  @Test
  void theExampleIsExplained() {
    Console console =
        Console.run("faults", "--explain", "porous-hose", "--plugins", good.toString());
    assertEquals(0, console.exitCode(), console.err());
    assertTrue(console.out().contains("in proportion to the pressure"), console.out());
  }

  @Test
  void whatIfAddsTheExample() throws IOException {
    Path json = work.resolve("what-if.json");
    String[] words = {
      "whatif",
      "--circuit",
      CIRCUIT,
      "--plugins",
      good.toString(),
      "--fault",
      "porous-hose@feed-hose=0.3",
      "--json",
      json.toString()
    };
    Console console = Console.run(words);
    assertEquals(0, console.exitCode(), console.err());
    assertTrue(console.out().contains("hose sweats fuel"), console.out());
  }

  /** The feed hose drains what the check valve drains, so it has to join that group. */
  @Test
  void theExampleIsRankedAndBadJarsChangeNothing() throws IOException {
    JsonNode alone = rank(good);
    JsonNode among = rank(mixed);
    assertTrue(
        alone.get("not_told_apart").get(0).get("suspects").toString().contains("porous-hose"),
        alone.get("not_told_apart").toString());
    eachIsNamedOnce(notes(among));
    assertEquals(withoutChances(alone.get("verdict")), withoutChances(among.get("verdict")));
    assertSameOrder(alone.get("suspects"), among.get("suspects"));
  }

  private static String withoutChances(JsonNode verdict) {
    return verdict.toString().replaceAll("\\d+ %", "some %");
  }

  /** A law that fails in the midst of a simulation has had its share of the prior by then. */
  private static void assertSameOrder(JsonNode alone, JsonNode among) {
    for (int i = 0; alone.get(i).get("probability").asDouble() > 0.03; i++) {
      JsonNode suspect = among.get(i);
      assertEquals(alone.get(i).get("id"), suspect.get("id"));
      double chance = alone.get(i).get("probability").asDouble();
      assertEquals(chance, suspect.get("probability").asDouble(), 0.01);
    }
  }

  @Test
  void faultsNamesWhatIsLeftOut() {
    Console console = Console.run("faults", "--circuit", CIRCUIT, "--plugins", mixed.toString());
    assertEquals(0, console.exitCode(), console.err());
    List<String> lines = console.out().lines().filter(line -> line.contains("plugin")).toList();
    assertTrue(lines.stream().anyMatch(line -> names(line, "Lost")), lines::toString);
    assertTrue(lines.stream().anyMatch(line -> names(line, "text")), lines::toString);
    assertTrue(console.out().contains("porous-hose@feed-hose"), console.out());
  }
}
