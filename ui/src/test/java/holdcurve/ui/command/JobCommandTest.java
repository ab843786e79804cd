package holdcurve.ui.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.file.JobLock;
import holdcurve.file.JobReader;
import holdcurve.physics.part.Regulator;
import holdcurve.record.finding.DrawOff;
import holdcurve.record.finding.DropCount;
import holdcurve.record.finding.DropTestResult;
import holdcurve.record.finding.JointLook;
import holdcurve.record.finding.ReferenceHoseLook;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.job.Repair;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A whole job at a terminal, without a look into its file. */
class JobCommandTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");

  /** Factor: NIST Special Publication 811 (2008), appendix B.8 [Pa]. */
  private static final double PSI = 6894.757;

  @TempDir private Path folder;
  private Path job;
  private Path log;

  @BeforeEach
  void names() throws IOException {
    job = folder.resolve("car.job.json");
    log = folder.resolve("log.csv");
    Files.copy(SCENARIOS.resolve("logs/check-valve-base.csv"), log);
  }

  private Console run(String command, String... more) {
    List<String> arguments = new ArrayList<>(List.of("job", command, job.toString()));
    arguments.addAll(List.of(more));
    return Console.run(arguments.toArray(String[]::new));
  }

  private Console done(String command, String... more) {
    Console console = run(command, more);
    assertEquals(0, console.exitCode(), console.err());
    return console;
  }

  private Job begun() {
    done("new", "--cylinders", "6", "--set", "2bar");
    return JobReader.readUnfinished(job);
  }

  private Job read() {
    return JobReader.read(job);
  }

  @Test
  void aJobCanBeBegunOnAnOutline() {
    done("new", "--cylinders", "4", "--set", "30psi", "--pipe-length", "3", "--title", "My car");
    Job begun = JobReader.readUnfinished(job);
    assertEquals("My car", begun.title());
    double set = begun.circuit().partsOf(Regulator.KIND).get(0).value(Regulator.SET);
    assertEquals(30 * PSI, set, 1);
  }

  @Test
  void aJobCanBeBegunOnACircuitThatLiesElsewhere() throws IOException {
    Path circuit = SCENARIOS.resolve("circuits/six-cylinder-return-line.circuit.json");
    job = Files.createDirectories(folder.resolve("far/from/there")).resolve("car.job.json");
    done("new", "--circuit", circuit.toString(), "--gauge-range", "2.5bar");
    Job begun = JobReader.readUnfinished(job);
    assertEquals(2.5e5, begun.gauge().range(), 1e-6);
    assertTrue(begun.circuit().parts().size() > 10);
    assertEquals(
        Files.readString(circuit), Files.readString(job.resolveSibling(circuit.getFileName())));
  }

  @Test
  void nothingIsOverwritten() throws IOException {
    Files.writeString(folder.resolve("car.circuit.json"), "mine");
    begun();
    assertEquals("mine", Files.readString(folder.resolve("car.circuit.json")));
    String before = Files.readString(job);
    Console again = run("new", "--cylinders", "6");
    assertEquals(2, again.exitCode());
    assertTrue(again.err().contains("there is a file of this name; choose another"), again.err());
    assertEquals(before, Files.readString(job));
  }

  @Test
  void aJobThatCannotBeLeavesNothingBehind() throws IOException {
    Console console = run("new", "--cylinders", "6", "--gauge-class", "99");
    assertEquals(2, console.exitCode());
    assertTrue(console.err().startsWith("command line, --gauge-class 99"), console.err());
    try (var files = Files.list(folder)) {
      assertEquals(List.of(log), files.toList());
    }
  }

  @Test
  void testsAreAddedWithTheirClamps() {
    begun();
    Console first = done("test", log.toString());
    assertTrue(first.out().contains("21 readings of the hold over 600 s"), first.out());
    assertFalse(first.out().contains("Times in seconds"), first.out());
    done("test", log.toString());
    done(
        "test",
        log.toString(),
        "--clamp",
        "Feed hose",
        "--clamp-time",
        "6",
        "--fuel-temp",
        "18",
        "--date",
        "2026-04-11",
        "--note",
        "warm day");
    List<HoldTest> tests = read().tests();
    assertEquals(
        List.of("as it stands", "as it stands 2", "feed hose clamped"),
        tests.stream().map(HoldTest::id).toList());
    HoldTest last = tests.get(2);
    assertEquals(Set.of("feed-hose"), last.clamped());
    assertEquals(6, last.clampTime());
    assertEquals(291.15, last.fuelTemperature().orElseThrow(), 1e-9);
    assertEquals("2026-04-11", last.date());
    assertEquals("warm day", last.notes());
  }

  @Test
  void aLogThatLiesFarOffIsCopied() throws IOException {
    Path other = log;
    folder = Files.createDirectories(folder.resolve("garage/bay"));
    names();
    Files.writeString(other, Files.readString(log).replace("0.42", "0.44"));
    begun();
    done("test", other.toString());
    assertEquals(
        Files.readString(other), Files.readString(folder.resolve("log-2.csv")), "the copy");
    Console bad = run("test", other.toString(), "--clamp", "pump");
    assertEquals(2, bad.exitCode());
    assertFalse(Files.exists(folder.resolve("log-3.csv")));
  }

  @Test
  void whatWasSeenIsNoted() {
    begun();
    done("test", log.toString());
    done("joint", "--dry", "--wiped");
    done("joint", "--wet", "--part", "check valve", "--test", "as it stands");
    Console drops = done("drops", "12", "--number", "4", "--minutes", "10", "--date", "2026-04-11");
    assertEquals("Noted: 2026-04-11, injectors no. 4: 12 drops in 10 min.", drops.out().strip());
    done("thin-hose", "--fuel", "--pressure", "200kPa");
    done("draw-off", "--drawn", "12", "--from", "2", "--to", "1,5", "--clamp", "feed-hose");
    Console fired =
        done(
            "drop-test",
            SCENARIOS.resolve("bench/drops-with-a-third-reading.csv").toString(),
            "--date",
            "2026-04-12");
    assertTrue(
        fired.out().contains("Noted: 2026-04-12, drop test: injector 5 not shutting"), fired.out());
    assertTrue(fired.out().contains("Only an injector that doesn't shut counts"), fired.out());
    var findings = read().findings();
    assertEquals(List.of("2"), ((DropTestResult) findings.get(5)).low());
    JointLook dry = (JointLook) findings.get(0);
    assertTrue(dry.wiped() && !dry.wet() && dry.part().isEmpty());
    JointLook wet = (JointLook) findings.get(1);
    assertEquals("check-valve", wet.part().orElseThrow());
    assertEquals("as it stands", wet.when().test().orElseThrow());
    DropCount count = (DropCount) findings.get(2);
    assertEquals(OptionalInt.of(4), count.number());
    assertEquals(600, count.duration());
    assertEquals("injectors", count.part());
    ReferenceHoseLook hose = (ReferenceHoseLook) findings.get(3);
    assertTrue(hose.fuel());
    assertEquals(2e5, hose.when().pressure().orElseThrow(), 1e-6);
    DrawOff drawOff = (DrawOff) findings.get(4);
    assertEquals(1.5e5, drawOff.to(), 1e-6);
    assertEquals(Set.of("feed-hose"), drawOff.clamped());
  }

  @Test
  void aRepairComesAfterTheLastTest() {
    begun();
    done("test", log.toString());
    done("repair", "--part", "check-valve", "--date", "2026-04-12", "--note", "renewed");
    assertEquals(
        List.of(
            new Repair(LocalDate.of(2026, 4, 12), "check-valve", "", "as it stands", "renewed")),
        read().upkeep().repairs());
    done("test", log.toString(), "--date", "2026-04-13");
    done("repair", "--part", "regulator", "--date", "2026-04-14");
    assertEquals("", read().upkeep().repairs().get(1).afterTest());
    done("repair", "--part", "regulator", "--after", "as it stands", "--fault", "regulator-seat");
    assertEquals("regulator-seat", read().upkeep().repairs().get(2).fault());
  }

  @Test
  void pricesAreSetOneByOne() throws IOException {
    begun();
    String list = folder.resolve("prices.json").toString();
    done(
        "price",
        list,
        "new valve",
        "--price",
        "45",
        "--part",
        "check-valve",
        "--currency",
        "crowns",
        "--per-hour",
        "60",
        "--minutes",
        "45");
    done("price", list, "hoses", "--price", "15", "--cures", "feed-side-joint");
    String noted =
        Files.readString(Path.of(list)).replace("\"hoses\"", "\"hoses\", \"notes\": \"a\"");
    Files.writeString(Path.of(list), noted);
    Console changed = done("price", list, "new valve", "--price", "50");
    assertTrue(changed.out().contains("new valve, 50 crowns"), changed.out());
    String text = Files.readString(Path.of(list));
    assertTrue(text.contains("\"notes\" : \"a\""), text);
    assertTrue(text.contains("\"minutes\" : 45"), text);
    assertEquals(noted, Files.readString(Path.of(list + "~")));
    Console table = run("price", SCENARIOS.resolve("prices.csv").toString(), "x", "--price", "1");
    assertEquals(2, table.exitCode());
    assertTrue(table.err().contains("name a list that ends in .json"), table.err());
  }

  @Test
  void everythingElseInTheFileStays() throws IOException {
    begun();
    String text = Files.readString(job).replace("\"tests\"", "\"notes\" : \"mine\", \"tests\"");
    Files.writeString(job, text);
    done("joint", "--dry");
    assertTrue(Files.readString(job).contains("\"notes\" : \"mine\""));
    assertEquals(text, Files.readString(folder.resolve("car.job.json~")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "test LOG --clamp pump | command line, --clamp pump: no hose 'pump' that can be clamped;",
        "test LOG --date 11.4.2026 | --date 11.4.2026: '11.4.2026' is no date; write year, month",
        "test none.csv | none.csv: there is no such file",
        "joint --wet | command line, --wet: no part is named; add --part",
        "joint --wet --part chek | command line, --part chek: there is no part 'chek'; use one of",
        "joint --part pump | One of these is missing: (--wet | --dry)",
        "joint --dry --test third | command line, --test third: there is no test 'third'; use one",
        "drops 3 --minutes 0 | --minutes 0.0: 0.0 min is out of range; give a number from 0.1",
        "drops 3 --minutes 5 --number 9 | --number 9: 9 is out of range; give a number from 1 to 6",
        "draw-off --drawn 5 --from 1 --to 2 | --to 2: 2 bar is not below the 1 bar before; name",
        "draw-off --drawn 5 --from 1x --to 2 | '--from': '1x' is no pressure; write it as 2.1",
        "repair --part check --date 2026-04-11 | --part check: there is no part 'check'; use one",
        "repair --part pump --fault nosuch | --fault nosuch: there is no such fault; use one of",
        "repair --part pump --date 1.2.2026 | --date 1.2.2026: '1.2.2026' is no date; write year",
        "show --units pond | '--units': 'pond' is no unit of pressure here; use psi, kPa"
      })
  void whatIsWrongIsSaidByItsOption(String words, String said) throws IOException {
    begun();
    done("test", log.toString());
    String before = Files.readString(job);
    List<String> all = new ArrayList<>(List.of(words.replace("LOG", log.toString()).split(" ")));
    Console console = run(all.get(0), all.subList(1, all.size()).toArray(String[]::new));
    assertEquals(2, console.exitCode());
    assertTrue(console.err().contains(said), console.err());
    assertEquals(before, Files.readString(job));
  }

  @Test
  void aJobThatIsOpenElsewhereIsLeftAlone() throws IOException {
    begun();
    String before = Files.readString(job);
    try (JobLock lock = JobLock.of(job).orElseThrow()) {
      assertTrue(lock.isFor(job));
      Console console = run("joint", "--dry");
      assertEquals(2, console.exitCode());
      assertTrue(console.err().contains("close the window first"), console.err());
    }
    assertEquals(before, Files.readString(job));
  }

  @Test
  void whatStandsInAJobCanBeRead() {
    begun();
    done("test", log.toString(), "--clamp", "feed-hose", "--name", "second");
    String shown = done("show", "--units", "psi").out();
    assertTrue(shown.contains("second: feed hose clamped, 30.7 to 6.1 psi in 10 min"), shown);
    assertTrue(shown.contains("Hoses to clamp: feed-hose, return-hose"), shown);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "new",
        "show",
        "test",
        "joint",
        "drops",
        "drop-test",
        "thin-hose",
        "draw-off",
        "repair",
        "price"
      })
  void everyPartExplainsItself(String name) {
    Console console = Console.run("job", name, "--help");
    assertEquals(0, console.exitCode());
    assertTrue(console.out().contains("Usage: holdcurve job " + name), console.out());
    assertTrue(console.out().contains("  holdcurve job " + name + " my-car.job.json"));
    assertTrue(console.out().lines().allMatch(line -> line.length() <= 80), console.out());
    assertTrue(Console.run("job").out().contains("  " + name + " "));
  }
}
