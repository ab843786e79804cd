package holdcurve.ui.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.record.log.GaugeLog;
import holdcurve.record.log.GaugeLogReader;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SimulateAndFaultsTest {
  private static final String CIRCUIT =
      Path.of(
              System.getProperty("holdcurve.root"),
              "scenarios/circuits/six-cylinder-return-line.circuit.json")
          .toString();

  @TempDir private Path folder;

  private static double last(String csv) {
    var hold = GaugeLogReader.read("simulated", csv).log().hold();
    return hold.get(hold.size() - 1).pressure();
  }

  @Test
  void simulatedLogReadsBackAndALeakFallsFaster() {
    Console sound = Console.run("simulate", CIRCUIT);
    Console leaky = Console.run("simulate", CIRCUIT, "--fault", "injector-tip=0.3");
    assertEquals(0, sound.exitCode(), sound.err());
    assertEquals(0, leaky.exitCode(), leaky.err());
    assertTrue(last(leaky.out()) < last(sound.out()) - 0.5e5);
  }

  @Test
  void clampingTheReturnStopsARegulatorLeak() {
    Console open = Console.run("simulate", CIRCUIT, "--fault", "regulator-seat=0.5");
    Console clamped =
        Console.run("simulate", CIRCUIT, "--fault", "regulator-seat=0.5", "--clamp", "return-hose");
    assertTrue(last(clamped.out()) > last(open.out()) + 0.4e5);
  }

  @Test
  void sameSeedSameReadings() {
    String[] args = {"simulate", CIRCUIT, "--read-by-eye", "--seed", "7"};
    assertEquals(Console.run(args).out(), Console.run(args).out());
  }

  @Test
  void writesTheLogToAFile() {
    Path log = folder.resolve("out.csv");
    Console console = Console.run("simulate", CIRCUIT, "--log", log.toString());
    assertEquals(0, console.exitCode(), console.err());
    GaugeLog read = GaugeLogReader.read(log).log();
    assertEquals(600, read.holdSpan(), 1e-9);
  }

  @Test
  void faultsListsSites() {
    Console console = Console.run("faults", "--circuit", CIRCUIT);
    assertEquals(0, console.exitCode(), console.err());
    assertTrue(console.out().contains("check-valve-seat@check-valve"), console.out());
  }
}
