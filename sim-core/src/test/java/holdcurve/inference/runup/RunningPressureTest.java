package holdcurve.inference.runup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.file.CircuitReader;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.log.GaugeLog;
import holdcurve.record.log.LogEvent;
import holdcurve.record.log.Reading;
import holdcurve.record.log.TimedEvent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** A circuit whose regulator is set to 2.0 bar, and a gauge to 4 bar of class 1.6. */
class RunningPressureTest {
  private static List<RunningPressure> of(double[][] readings, Object... events) {
    List<Reading> read = new ArrayList<>();
    for (double[] one : readings) {
      read.add(Reading.of(one[0], one[1] * 1e5));
    }
    List<TimedEvent> happened = new ArrayList<>();
    for (int i = 0; i < events.length; i += 2) {
      happened.add(
          new TimedEvent(((Number) events[i]).doubleValue(), LogEvent.of((String) events[i + 1])));
    }
    Path file =
        Path.of(
            System.getProperty("holdcurve.root", ".."),
            "scenarios/circuits/six-cylinder-return-line.circuit.json");
    HoldTest test = HoldTest.of("t", Set.of(), new GaugeLog("t", read, happened, 0));
    return RunningPressure.of(
        new Job(
            "t", CircuitReader.read(file), GaugeSpec.usual(), List.of(test), Map.of(), List.of()));
  }

  @Test
  void aHoldAloneHasNone() {
    assertEquals(List.of(), of(new double[][] {{0, 2}, {60, 1.9}}));
  }

  @Test
  void theLastSettledReadingIsSetAgainstWhatIsStated() {
    RunningPressure running =
        of(new double[][] {{-14, 1.5}, {-8, 2.2}, {-2, 2.3}, {0, 2.0}, {60, 1.9}}).get(0);
    assertEquals(-2, running.time(), 0);
    assertEquals(0.3e5, running.excess(), 1e-6);
    assertTrue(running.isReached());
    assertFalse(running.isExceeded());
  }

  @Test
  void aPumpThatNeverGetsThereIsNoticed() {
    RunningPressure running = of(new double[][] {{-10, 1.6}, {-2, 1.62}, {0, 1.6}}).get(0);
    assertFalse(running.isReached());
  }

  @Test
  void moreThanAnyRegulatorRisesIsNoticed() {
    assertTrue(of(new double[][] {{-10, 2.9}, {-2, 3.0}, {0, 2.1}}).get(0).isExceeded());
  }

  /** A needle that still climbs, or injectors that draw, show nothing of the regulator. */
  @Test
  void whatIsNotSettledDoesNotCount() {
    double[][] readings = {{-9, 0}, {-7, 1.2}, {0, 2.0}};
    assertEquals(List.of(), of(readings, -9, "pump on", 0, "pump off"));
    assertEquals(
        List.of(),
        of(
            new double[][] {{-20, 0}, {-10, 1.4}, {-1, 1.5}, {0, 2}},
            -20,
            "pump on",
            -18,
            "injectors open",
            0,
            "pump off"));
  }
}
