package holdcurve.inference.runup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.HoldTest;
import holdcurve.record.log.GaugeLog;
import holdcurve.record.log.LogEvent;
import holdcurve.record.log.Reading;
import holdcurve.record.log.TimedEvent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class RunUpTest {
  private static Optional<RunUp> of(double[][] readings, Object... events) {
    List<Reading> read = new ArrayList<>();
    for (double[] one : readings) {
      read.add(Reading.of(one[0], one[1] * 1e5));
    }
    List<TimedEvent> happened = new ArrayList<>();
    for (int i = 0; i < events.length; i += 2) {
      happened.add(
          new TimedEvent(((Number) events[i]).doubleValue(), LogEvent.of((String) events[i + 1])));
    }
    HoldTest test = HoldTest.of("t", Set.of(), new GaugeLog("t", read, happened, 0));
    return RunUp.of(test, 0, GaugeSpec.usual());
  }

  @Test
  void aLogOfTheHoldAloneHasNone() {
    assertTrue(of(new double[][] {{0, 2}, {30, 1.9}}).isEmpty());
  }

  @Test
  void eventsMakeTheStages() {
    RunUp run =
        of(
                new double[][] {{-40, 0.1}, {-38, 1.8}, {-25, 1.5}, {-15, 1.2}, {-2, 2}, {0, 2}},
                -40,
                "pump on",
                -30,
                "injectors 60 %",
                -20,
                "pump off",
                -12,
                "injectors shut",
                -10,
                "pump on",
                0,
                "pump off")
            .orElseThrow();
    assertEquals(
        List.of(
            new RunUp.Stage(-40, -30, true, 0),
            new RunUp.Stage(-30, -20, true, 0.6),
            new RunUp.Stage(-20, -12, false, 0.6),
            new RunUp.Stage(-12, -10, false, 0),
            new RunUp.Stage(-10, 0, true, 0)),
        run.stages());
    assertEquals(0.1e5, run.start().pressure().orElseThrow(), 1e-6);
    assertEquals(2e5, run.justBefore().orElseThrow(), 1e-6);
    assertEquals(4, run.readings().size());
  }

  /** How long its injectors are open nobody knows. */
  @Test
  void aRunningEngineSaysNothing() {
    RunUp run =
        of(
                new double[][] {{-20, 0}, {-18, 2}, {-5, 1.9}, {0, 2}},
                -20,
                "pump on",
                -10,
                "engine idles",
                0,
                "pump off")
            .orElseThrow();
    assertEquals(List.of(-18.0), run.readings().stream().map(RunUp.Sample::time).toList());
  }

  @Test
  void withoutEventsThePumpStartsWhereTheNeedleDoes() {
    RunUp run =
        of(new double[][] {{-30, 0.1}, {-20, 0.1}, {-19, 1.8}, {-5, 2}, {0, 2}}).orElseThrow();
    assertEquals(-19.5, run.start().time(), 0);
    assertEquals(1 / 3.0, run.start().deviation(), 1e-12);
    RunUp running = of(new double[][] {{-5, 2}, {0, 2}}).orElseThrow();
    assertTrue(running.start().time() <= -20);
    assertTrue(running.start().pressure().isEmpty());
  }

  /** Air in the rail is squeezed slowly at first; a needle that creeps is no longer at rest. */
  @Test
  void aNeedleThatCreepsHasLeftItsRest() {
    RunUp run =
        of(new double[][] {{-12, 0.1}, {-11, 0.1}, {-10, 0.3}, {-9, 0.6}, {-8, 2}, {0, 2}})
            .orElseThrow();
    assertEquals(-10.5, run.start().time(), 0);
  }

  @Test
  void aNotedStartMayBeRoundedToTheFilmsSecond() {
    double[][] film = {{-10, 0.1}, {-9, 1.8}, {-8, 2}, {0, 2}};
    assertEquals(0.3, of(film, -10, "pump on").orElseThrow().start().deviation(), 1e-12);
  }

  @Test
  void settledIsWhatWasReadLongAfterASwitch() {
    assertTrue(of(new double[][] {{-5, 2}, {-2, 2}, {0, 2}}).orElseThrow().isSettled());
    assertFalse(of(new double[][] {{-9, 0}, {-8, 1.5}, {0, 2}}).orElseThrow().isSettled());
  }

  /** Ten tests with one reading each that lies too high say hardly more than one. */
  @Test
  void testsOfOneCarShareTheModelsError() {
    double one = misfit(1);
    assertTrue(misfit(10) < 1.6 * one, misfit(10) + " against " + one);
  }

  private static double misfit(int tests) {
    List<RunUp> runs = new ArrayList<>();
    for (int i = 0; i < tests; i++) {
      RunUp run = of(new double[][] {{-2, 2.3}, {0, 2}}).orElseThrow();
      runs.add(new RunUp(i, run.start(), run.stages(), run.readings()));
    }
    double[] rows = new double[tests];
    Arrays.fill(rows, 1e4);
    new RunUpError(runs, Running.shipped()).whiten(rows, 0);
    return Arrays.stream(rows).map(row -> row * row).sum();
  }

  @Test
  void aLongLogKeepsWhatMatters() {
    double[][] readings = new double[302][];
    for (int i = 0; i < readings.length; i++) {
      readings[i] = new double[] {-30 + 0.1 * i, Math.min(2, 0.3 * i)};
    }
    RunUp run = of(readings, -30, "pump on", 0, "pump off").orElseThrow();
    assertTrue(run.readings().size() <= RunUp.MOST);
    assertEquals(-29.9, run.readings().get(0).time(), 1e-9);
    assertTrue(run.readings().get(0).deviation() > run.readings().get(9).deviation());
  }
}
