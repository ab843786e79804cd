package holdcurve.fault;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.flow.FlowLaw;
import holdcurve.physics.fluid.Petrol;
import holdcurve.physics.part.Hose;
import holdcurve.physics.part.Tank;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;

/** Bad plugins cost only themselves, and the user is told which one it was. */
class PluginFolderTest {
  private static final Circuit CIRCUIT =
      new Circuit(
          "two parts",
          Petrol.summer(),
          List.of(
              Part.of(Tank.KIND, "tank", "tank", "tank", Map.of()),
              Part.of(Hose.KIND, "hose", "tank", "end", Map.of())));
  private static final double[] SIZE = {1e-8};

  /** Deaf to interrupts, but idle, so that it doesn't hold up the other tests. */
  private static final String FOREVER =
      "while (true) { try { Thread.sleep(60_000); } catch (InterruptedException e) { } }";

  @TempDir(cleanup = CleanupMode.NEVER)
  private static Path once;

  private static Path sound;

  // class loaders keep their jars open, which some systems won't let one delete
  @TempDir(cleanup = CleanupMode.NEVER)
  private Path work;

  private Path folder;
  private JarMaker jars;

  @BeforeAll
  static void makeGoodPlugin() throws IOException {
    sound = new JarMaker(once, once).fault("Sound", "sound-trial", "");
  }

  @BeforeEach
  void goodPluginStands() throws IOException {
    folder = Files.createDirectory(work.resolve("plugins"));
    jars = new JarMaker(work, folder);
    Files.copy(sound, folder.resolve("Sound.jar"));
  }

  @Test
  void goodOneIsFoundAndWorks() {
    FaultCatalogue catalogue = load();
    assertEquals(List.of(), catalogue.problems());
    LeakFault fault = catalogue.byId("sound-trial").orElseThrow();
    Condition after = applied(fault);
    assertEquals(1, after.leaks().size());
    assertEquals(1e-8, after.leaks().get(0).law().flow(2e5), 1e-20);
    assertEquals(List.of(), catalogue.failures());
  }

  @Test
  void throwsWhenMade() throws IOException {
    jars.fault("Bad", "bad", "public Bad() { throw new IllegalStateException(\"no luck\"); }");
    leftOut("Bad.jar", "trial.Bad", "no luck");
  }

  @Test
  void failsInItsInitialiser() throws IOException {
    jars.fault("Bad", "bad", "static final int N = Integer.parseInt(\"x\");");
    leftOut("Bad.jar", "ExceptionInInitializerError");
  }

  @Test
  void throwsWhenAskedWhoItIs() throws IOException {
    jars.fault("Bad", "bad", "public String name() { throw new AssertionError(\"shy\"); }");
    leftOut("Bad.jar", "shy");
  }

  @Test
  void callsItselfWithoutEnd() throws IOException {
    jars.fault("Bad", "bad", "public String name() { return name(); }");
    leftOut("Bad.jar", "StackOverflowError");
  }

  @Test
  void givesNull() throws IOException {
    jars.fault("NoId", "x", "public String id() { return null; }");
    jars.fault("NoName", "no-name", "public String name() { return null; }");
    jars.fault(
        "NoNumbers", "no-numbers", "public List<FaultParameter> parameters() { return null; }");
    jars.fault(
        "EmptyNumbers",
        "empty-numbers",
        "public List<FaultParameter> parameters() { return List.of(); }");
    FaultCatalogue catalogue = load();
    assertEquals(4, catalogue.problems().size());
    assertOnlySound(catalogue);
    assertSays(catalogue.problems(), "'trial.NoId' in NoId.jar");
    assertSays(catalogue.problems(), "'no-name' in NoName.jar");
  }

  @Test
  void givesBadPrevalence() throws IOException {
    jars.fault("Bad", "bad", "public double prevalence() { return Double.NaN; }");
    leftOut("'bad' in Bad.jar", "NaN");
  }

  @Test
  void givesBadId() throws IOException {
    jars.fault("Bad", "Not An Id\\nsecond line", "");
    leftOut("Bad.jar", "Not An Id second line", "lower-case");
  }

  @Test
  void takesAnIdThatIsTaken() throws IOException {
    jars.fault("Twin", "sound-trial", "");
    leftOut("'sound-trial' in Twin.jar", "same id");
  }

  @Test
  void neverAnswers() throws IOException {
    jars.fault("Bad", "bad", "public String name() { " + FOREVER + " }");
    leftOut("Bad.jar", "no answer within");
  }

  @Test
  void neverComesIntoBeing() throws IOException {
    jars.fault("Bad", "bad", "public Bad() { " + FOREVER + " }");
    leftOut("Bad.jar", "no answer within");
  }

  @Test
  void wasWrittenForAnotherContract() throws IOException {
    jars.fault(
        "Old",
        "old",
        "public int contractVersion() { return 99; }\n"
            + "public String name() { throw new NoSuchMethodError(); }");
    leftOut("'old' in Old.jar", "contract version 99");
  }

  @Test
  void isNoFault() throws IOException {
    jars.jar("Other", "package trial; public class Other {}", "trial.Other\n");
    leftOut("Other.jar", "LeakFault");
  }

  @Test
  void namesAClassThatIsMissing() throws IOException {
    jars.jar("Gone", "package trial; class Nothing {}", "# a comment\ntrial.Gone\n");
    leftOut("Gone.jar", "trial.Gone", "ClassNotFoundException");
  }

  @Test
  void hasNoServiceEntry() throws IOException {
    jars.jar("Silent", "package trial; class Nothing {}", "");
    leftOut("Silent.jar", "names no fault");
  }

  @Test
  void isNoJar() throws IOException {
    Files.writeString(folder.resolve("text.jar"), "I am a text.");
    leftOut("text.jar", "isn't a jar");
  }

  @Test
  void isEmptyOrAFolder() throws IOException {
    Files.createFile(folder.resolve("empty.jar"));
    Files.createDirectory(folder.resolve("folder.jar"));
    FaultCatalogue catalogue = load();
    assertOnlySound(catalogue);
    assertSays(catalogue.problems(), "empty.jar");
    assertSays(catalogue.problems(), "folder.jar");
  }

  @Test
  void otherFilesArePassedOver() throws IOException {
    Files.writeString(folder.resolve("README.txt"), "Put jars here.");
    assertEquals(List.of(), load().problems());
  }

  @Test
  void folderIsMissing() {
    FaultCatalogue catalogue =
        FaultCatalogue.load(Optional.of(work.resolve("nowhere")), Duration.ofSeconds(30));
    assertSays(catalogue.problems(), "nowhere");
  }

  @Test
  void badSites() throws IOException {
    refused("public List<Site> sites(Circuit c) { return null; }", "no list of sites");
    refused(
        "public List<Site> sites(Circuit c) { return List.of(Faults.site(c), Faults.site(c)); }",
        "two sites");
    refused(
        "public List<Site> sites(Circuit c) { return List.of(new Site(\"a\", \"b\", \"moon\","
            + " List.of())); }",
        "moon");
    refused(
        "public List<Site> sites(Circuit c) { return List.of(new Site(\"a\", \"b\", \"end\","
            + " List.of(\"moon\"))); }",
        "moon");
    refused(
        "public List<Site> sites(Circuit c) { return java.util.Collections.singletonList(null); }",
        "without a name");
  }

  @Test
  void badConditions() throws IOException {
    refused(apply("return null;"), "no condition");
    refused(apply("return Condition.sound(new Circuit(\"other\", null, List.of()));"), "parts");
    refused(
        apply("return c.with(\"hose\", holdcurve.physics.part.Hose.BORE, Double.NaN);"), "bore_mm");
    refused(leak("\"moon\", Circuit.AIR, new LaminarLaw(1e-14)"), "moon");
    refused(leak("s.point(), s.point(), new LaminarLaw(1e-14)"), "itself");
    refused(leak("s.point(), Circuit.AIR, " + law("-1e-14 * d", "1e-14")), "passes -");
    refused(leak("s.point(), Circuit.AIR, " + law("Double.NaN", "0")), "NaN");
    refused(leak("s.point(), Circuit.AIR, " + law("1e-9", "0")), "without any pressure");
    refused(apply("throw new IllegalStateException(\"tired\");"), "tired");
    refused(apply(FOREVER), "no answer within");
  }

  @Test
  void hangingOnceIsEnough() throws IOException {
    jars.fault("Bad", "bad", apply(FOREVER));
    LeakFault fault = load().byId("bad").orElseThrow();
    assertThrows(FaultFailure.class, () -> applied(fault));
    FaultFailure second = assertThrows(FaultFailure.class, () -> fault.sites(CIRCUIT));
    assertTrue(second.getMessage().contains("not asked any more"), second.getMessage());
  }

  @Test
  void lawThatThrowsLaterNamesItsPlugin() throws IOException {
    String flow = "d > 1e6 ? 1 / Integer.parseInt(\"0\") : 1e-14 * d";
    jars.fault("Bad", "bad", leak("s.point(), Circuit.AIR, " + law(flow, "1e-14")));
    FaultCatalogue catalogue = load();
    Condition after = applied(catalogue.byId("bad").orElseThrow());
    FaultFailure failure =
        assertThrows(FaultFailure.class, () -> after.leaks().get(0).law().flow(2e6));
    assertEquals("bad", failure.faultId());
    assertEquals(List.of(failure.getMessage()), catalogue.failures());
  }

  @Test
  void lawThatRunsOutOfNumbersLaterNamesItsPlugin() throws IOException {
    String flow = "d > 1e6 ? 0 / 0.0 : 1e-14 * d";
    jars.fault("Bad", "bad", leak("s.point(), Circuit.AIR, " + law(flow, "1e-14")));
    FaultCatalogue catalogue = load();
    Condition after = applied(catalogue.byId("bad").orElseThrow());
    assertThrows(FaultFailure.class, () -> after.leaks().get(0).law().flow(2e6));
    assertSays(catalogue.failures(), "gave NaN when its leak law");
  }

  @Test
  void lawThatHangsLaterIsCutOffAndNotAskedAgain() throws IOException {
    hangsLater("Sleepy", FOREVER);
    hangsLater("Busy", "long n = 0; while (true) { n++; }");
  }

  private void hangsLater(String name, String endless) throws IOException {
    String flow = "d > 1e6 ? endless() : 1e-14 * d";
    String law =
        leak("s.point(), Circuit.AIR, " + law(flow, "1e-14"))
            + " static double endless() { "
            + endless
            + " }";
    String id = name.toLowerCase(java.util.Locale.ROOT);
    jars.fault(name, id, law);
    FaultCatalogue catalogue = load();
    LeakFault fault = catalogue.byId(id).orElseThrow();
    FlowLaw first = applied(fault).leaks().get(0).law();
    FlowLaw second = applied(fault).leaks().get(0).law();
    assertEquals(1e-8, first.flow(1e6), 1e-20);
    FaultFailure failure = assertThrows(FaultFailure.class, () -> first.flow(2e6));
    assertEquals(
        "The fault plugin '"
            + id
            + "' gave no answer within 2.0 s when its leak law was worked out.",
        failure.getMessage());
    assertEquals(List.of(failure.getMessage()), catalogue.failures());
    assertThrows(FaultFailure.class, () -> second.flow(1e5), "not asked again");
    assertThrows(FaultFailure.class, () -> applied(fault));
    assertDoesNotThrow(() -> applied(catalogue.byId("sound-trial").orElseThrow()));
    assertDoesNotThrow(() -> Thread.sleep(20), "neither stopped nor interrupted later");
  }

  @Test
  void leakOfAnotherFaultMustStay() throws IOException {
    jars.fault("Bad", "bad", apply("return Condition.sound(c.circuit());"));
    FaultCatalogue catalogue = load();
    Condition leaky = applied(catalogue.byId("sound-trial").orElseThrow());
    LeakFault bad = catalogue.byId("bad").orElseThrow();
    Site site = bad.sites(CIRCUIT).get(0);
    assertDoesNotThrow(() -> bad.apply(Condition.sound(CIRCUIT), site, SIZE));
    assertThrows(FaultFailure.class, () -> bad.apply(leaky, site, SIZE));
  }

  private static String apply(String body) {
    return "public Condition apply(Condition c, Site s, double[] p) { " + body + " }";
  }

  private static String leak(String arguments) {
    return apply("return c.with(new LeakPath(" + arguments + "));");
  }

  private static String law(String flow, String slope) {
    return "new FlowLaw() { public double flow(double d) { return "
        + flow
        + "; } public double slope(double d) { return "
        + slope
        + "; } }";
  }

  /** The fault is admitted, but using it fails with its id and these words, and is remembered. */
  private void refused(String member, String words) throws IOException {
    String name = "Bad" + Math.abs((member + words).hashCode());
    jars.fault(name, name.toLowerCase(java.util.Locale.ROOT), member);
    FaultCatalogue catalogue = load();
    LeakFault fault = catalogue.byId(name.toLowerCase(java.util.Locale.ROOT)).orElseThrow();
    FaultFailure failure = assertThrows(FaultFailure.class, () -> applied(fault));
    assertEquals(fault.id(), failure.faultId());
    assertTrue(failure.getMessage().contains(fault.id()), failure.getMessage());
    assertTrue(failure.getMessage().contains(words), failure.getMessage());
    assertSays(catalogue.failures(), failure.getMessage());
    assertDoesNotThrow(() -> applied(catalogue.byId("sound-trial").orElseThrow()));
  }

  private static Condition applied(LeakFault fault) {
    return fault.apply(Condition.sound(CIRCUIT), fault.sites(CIRCUIT).get(0), SIZE);
  }

  private FaultCatalogue load() {
    return FaultCatalogue.load(Optional.of(folder));
  }

  private void leftOut(String... words) {
    FaultCatalogue catalogue = load();
    assertOnlySound(catalogue);
    assertEquals(1, catalogue.problems().size(), () -> catalogue.problems().toString());
    for (String word : words) {
      assertSays(catalogue.problems(), word);
    }
    assertEquals(-1, catalogue.problems().get(0).indexOf('\n'));
  }

  private static void assertOnlySound(FaultCatalogue catalogue) {
    assertEquals(List.of("sound-trial"), catalogue.faults().stream().map(LeakFault::id).toList());
  }

  private static void assertSays(List<String> sentences, String words) {
    assertTrue(sentences.stream().anyMatch(s -> s.contains(words)), () -> words + ": " + sentences);
  }
}
