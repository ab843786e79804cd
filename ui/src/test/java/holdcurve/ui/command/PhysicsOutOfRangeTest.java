package holdcurve.ui.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Circuits, readings and changes beyond what can be: a sentence that says what, where and what
 * would be right, never a curve of no numbers or a stack trace. Where nothing can be told, exit
 * code 3.
 */
class PhysicsOutOfRangeTest {
  private static final Path CIRCUIT =
      Path.of(
          System.getProperty("holdcurve.root"),
          "scenarios/circuits/six-cylinder-return-line.circuit.json");

  @TempDir private Path folder;
  private Path circuit;

  @BeforeEach
  void copyCircuit() throws IOException {
    circuit = folder.resolve("car.circuit.json");
    Files.copy(CIRCUIT, circuit);
  }

  private Path job(String test, String heading, DoubleUnaryOperator bar) throws IOException {
    StringBuilder log = new StringBuilder(heading + "\n");
    String temperature = heading.contains("fuel_temp_C") ? ",120" : "";
    for (int second = 0; second <= 600; second += 60) {
      log.append(second).append(',').append(bar.applyAsDouble(second)).append(temperature);
      log.append('\n');
    }
    Files.writeString(folder.resolve("log.csv"), log);
    Path job = folder.resolve("car.job.json");
    Files.writeString(
        job,
        """
        { "format": "holdcurve-job/1", "title": "A job (invented)", "circuit": "car.circuit.json",
          "tests": [ { "id": "first", "log": "log.csv"%s } ] }
        """
            .formatted(test));
    return job;
  }

  private Path job(DoubleUnaryOperator bar) throws IOException {
    return job("", "time_s,pressure_bar", bar);
  }

  private static void says(int exitCode, String sentence, Console console) {
    assertEquals(sentence, console.err().strip());
    assertEquals(exitCode, console.exitCode());
    assertEquals("", console.out());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "\"set_bar\": 2.0 | \"set_bar\": 200 | line 20, parts[13].set_bar: 200 bar is out of range;"
            + " give a number from 0.5 to 6 bar.",
        "\"set_bar\": 2.0 | \"set_bar\": 2.0, \"reseat_drop_bar\": 2 | line 20, parts[13]: regulator"
            + " 'regulator' would shut 2 bar below its 2 bar, so never; give less than 2 bar as its"
            + " reseat_drop_bar.",
        "\"volume_mL\": 150 | \"volume_mL\": -150 | line 11, parts[4].volume_mL: -150 mL is out of"
            + " range; give a number from 1 to 2000 mL.",
        "\"length_m\": 0.8 | \"compliance_mL_bar_m\": 0 | line 12, parts[5].compliance_mL_bar_m: 0"
            + " mL/bar per m is out of range; give a number from 0.01 to 5 mL/bar per m.",
        "\"gauge-tee\", \"at\": \"rail\" | \"gauge-tee\", \"at\": \"tank\" | line 18, parts[11]:"
            + " gauge 'gauge-tee' sits at 'tank', where there is no pressure; name the connection"
            + " point on the pressure side at which it sits.",
        "\"from\": \"regulator-inlet\", \"to\": \"return-start\" | \"from\": \"return-start\","
            + " \"to\": \"regulator-inlet\" | line 20, parts[13]: regulator 'regulator'"
            + " returns fuel to 'regulator-inlet' and on to 'feed-start', and no tank is there; let"
            + " it lead to 'tank'.",
        "\"from\": \"pump-outlet\", \"to\": \"feed-start\" | \"from\": \"feed-start\", \"to\":"
            + " \"pump-outlet\" | line 9, parts[2]: check-valve 'check-valve' begins at 'feed-start', which"
            + " no open line joins to the outlet of the pump; join it there; every part's 'from' is"
            + " its upstream end.",
        "\"from\": \"rail\", \"to\": \"regulator-inlet\" | \"from\": \"rail\", \"to\": \"rail\" |"
            + " line 17, parts[10]: hose 'ring-hoses' begins and ends at 'rail'; join its ends to two"
            + " connection points."
      })
  void circuitThatCannotBe(String right, String wrong, String sentence) throws IOException {
    String text = Files.readString(circuit);
    assertTrue(text.contains(right));
    Files.writeString(circuit, text.replace(right, wrong));
    Console console = Console.run("simulate", circuit.toString());
    assertEquals(
        folder + "/car.circuit.json, " + sentence, console.err().lines().findFirst().orElse(""));
    assertEquals(2, console.exitCode());
    assertEquals("", console.out());
  }

  @Test
  void pumpThatCannotReachThePressure() throws IOException {
    Files.writeString(
        circuit, Files.readString(circuit).replace("\"stall_bar\": 6", "\"stall_bar\": 1"));
    Console console = Console.run("simulate", circuit.toString(), "--hold", "1");
    assertEquals(0, console.exitCode());
    assertEquals(
        "Note: the pump holds no more than 0.90 bar behind its check valve, less than the 2.00 bar"
            + " of the regulator; look at stall_bar, relief_bar and crack_bar.",
        console.err().strip());
    assertTrue(console.out().contains("\n0,0.90\n"), console.out());
  }

  @Test
  void pressureOverTheScaleOfTheGauge() throws IOException {
    Files.writeString(
        circuit, Files.readString(circuit).replace("\"set_bar\": 2.0", "\"set_bar\": 4.5"));
    Console console =
        Console.run(
            "simulate", circuit.toString(), "--hold", "1", "--every", "60", "--read-by-eye");
    assertEquals(
        "Note: the needle stands at its stop, 4 bar, in 2 of 2 readings.", console.err().strip());
    says(
        2,
        "A job (invented), test 'first' at 0 s: 4.80 bar on a gauge to 4.00 bar; give the gauge's"
            + " \"range_bar\" in the job, or correct the reading or its unit.",
        Console.run("rank", job(time -> 4.8).toString()));
  }

  @ParameterizedTest
  @ValueSource(strings = {"rank", "plan", "whatif", "check", "report"})
  void noPressureAtAll(String command) throws IOException {
    says(
        3,
        "A job (invented): 'first' never shows more than 0.02 bar, so there is no hold to judge. If"
            + " the heading of the log names a wrong unit, correct it. If the gauge did rise while"
            + " the pump ran, look for a large leak or a check valve that hangs open; if not, look"
            + " at the pump, its fuse and the fuel.",
        Console.run(command, job(time -> 0.02).toString()));
  }

  @Test
  void needleAtItsStopThroughout() throws IOException {
    says(
        3,
        "A job (invented): 'first' shows nothing but the end of the scale, 4.00 bar: the needle was"
            + " at its stop. Use a gauge with a longer scale, or go on until the needle leaves its"
            + " stop.",
        Console.run("rank", job(time -> 4).toString()));
  }

  /** Rigid lines, shut in, in an engine bay warmer than the fuel. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "-15 | 0 | Note: the pressure climbs to 8.3 bar, since fuel that is shut in warms. Hoses,"
            + " joints and gauge may not stand that: on a car, take a clamp off in time.",
        "-25 | 3 | Six cylinders, ring line, return to tank (invented) can't be simulated beyond"
            + " 210 s: the pressure at feed-start climbs past 20 bar, more than hoses and joints"
            + " hold; fuel that is shut in and warms rises by several bar for each kelvin where no"
            + " hose, damper or trapped air gives: look at the temperatures, the clamps and the"
            + " values stated for those."
      })
  void fuelThatWarmsWithNowhereToGo(String warmth, int exitCode, String sentence)
      throws IOException {
    Files.writeString(
        circuit,
        Files.readString(circuit)
            .replace("\"length_m\": 0.", "\"compliance_mL_bar_m\": 0.01, \"length_m\": 0.")
            .replace("\"id\": \"damper\"", "\"id\": \"damper\", \"stroke_volume_mL\": 0.01")
            .replace("\"id\": \"gauge-tee\"", "\"id\": \"gauge-tee\", \"air_mL\": 0"));
    Console console =
        Console.run(
            "simulate",
            circuit.toString(),
            "--clamp",
            "feed-hose",
            "--clamp",
            "return-hose",
            "--warmth",
            warmth);
    assertEquals(sentence, console.err().strip());
    assertEquals(exitCode, console.exitCode());
  }

  @Test
  void clampsThatGoOnAfterTheEnd() {
    says(
        2,
        "command line, --clamp-time 60.0: the clamps would go on after the end of the hold; clamp"
            + " earlier, or watch longer with --hold.",
        Console.run(
            "simulate",
            circuit.toString(),
            "--clamp",
            "feed-hose",
            "--clamp-time",
            "60",
            "--hold",
            "1"));
  }

  @Test
  void fuelThatBoils() throws IOException {
    Path job = job(", \"fuel_temp_C\": 90", "time_s,pressure_bar", time -> 1.5);
    says(
        3,
        "A job (invented): 'first': at 90 °C this fuel boils below 1.50 bar, above all that the"
            + " gauge shows, so a leak makes vapour instead of a fall. Let it cool and hold again.",
        Console.run("rank", job.toString()));
  }

  /**
   * Petrol of 60 kPa Reid, the upper limit of the summer classes of EN 228, has a true vapour
   * pressure of 36 kPa at 20 °C; with 45 kPa, their lower limit, 26 kPa (limits from memory).
   */
  @Test
  void vacuumThatNoPetrolLeaves() throws IOException {
    says(
        2,
        "A job (invented), test 'first' at 600 s: -0.99 bar, where fuel of 20 °C boils at -0.66 bar"
            + " already and falls no further; look at the gauge's zero and at the sign and unit of"
            + " the readings, and give \"fuel_temp_C\" if the fuel was colder.",
        Console.run("rank", job(time -> time < 600 ? 2 - time / 300 : -0.99).toString()));
    Path job = job(", \"fuel_temp_C\": -18", "time_s,pressure_bar", time -> 1 - time / 310);
    assertFalse(Console.run("rank", job.toString()).err().contains("boils"));
  }

  @Test
  void fuelHotterThanAnybodyKnows() throws IOException {
    says(
        2,
        "A job (invented), test 'first' at 0 s: fuel at 120 °C; give -20 to 90 °C, or leave the"
            + " temperatures out.",
        Console.run("rank", job("", "time_s,pressure_bar,fuel_temp_C", time -> 2).toString()));
  }

  @Test
  void pressureThatRisesWithoutAPump() throws IOException {
    Console console = Console.run("rank", job(time -> 1 + time / 300).toString());
    assertEquals(3, console.exitCode());
    assertTrue(console.out().contains("No listed fault explains this"), console.out());
    assertFalse(console.out().contains("No fault found"), console.out());
    assertEquals("", console.err());
  }

  @Test
  void tooShortToTell() throws IOException {
    Files.writeString(
        folder.resolve("short.csv"), "time_s,pressure_bar\n0,2.00\n0.2,2.00\n0.4,2.00\n");
    Console console =
        Console.run(
            "rank", "--circuit", circuit.toString(), folder.resolve("short.csv").toString());
    assertEquals(3, console.exitCode());
    assertTrue(console.out().contains("Not settled"), console.out());
  }

  @ParameterizedTest
  @CsvSource({
    "filter.volume_mL=-1, give a number from 1 to 2000 mL.",
    "feed-hose.compliance_mL_bar_m=0, give a number from 0.01 to 5 mL/bar per m.",
    "regulator.set_bar=20, give a number from 0.5 to 6 bar."
  })
  void changeThatCannotBe(String change, String remedy) {
    String value = change.substring(change.indexOf('=') + 1);
    says(
        2,
        "command line, " + change + ": '" + value + "' can't be used; " + remedy,
        Console.run("whatif", "--circuit", circuit.toString(), "--set", change));
  }
}
