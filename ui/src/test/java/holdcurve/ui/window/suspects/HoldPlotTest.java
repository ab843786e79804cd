package holdcurve.ui.window.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.infer.HoldCurve;
import holdcurve.infer.Suspect;
import holdcurve.job.HoldTest;
import holdcurve.log.GaugeLog;
import holdcurve.log.Reading;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class HoldPlotTest {
  private static HoldTest hold(Set<String> clamped, int readings, double step) {
    List<Reading> log =
        IntStream.range(0, readings).mapToObj(i -> Reading.of(100 + step * i, 2e5 - i)).toList();
    return HoldTest.of("hold", clamped, new GaugeLog("log", log, 100));
  }

  private static Suspect suspect(double probability, double low, double high) {
    double[] time = {0, 600};
    double middle = (low + high) / 2;
    return new Suspect(
        "a@b",
        "A",
        "",
        probability,
        0,
        Optional.empty(),
        "",
        "",
        List.of(
            new HoldCurve(
                "hold",
                time,
                new double[] {2e5, middle},
                new double[] {2e5, low},
                new double[] {2e5, high})));
  }

  @Test
  void timeStartsAtThePumpStopInMinutes() {
    HoldPlot plot = HoldPlot.of(hold(Set.of(), 11, 60), List.of(), Optional.empty());
    assertEquals("Time since the pump stopped [min]", plot.timeAxis().title());
    assertEquals(new HoldPlot.Mark(0, 2, false), plot.marks().get(0));
    assertEquals(10, plot.marks().get(10).time(), 1e-12);
    assertTrue(plot.curve().isEmpty() && plot.clampsOn().isEmpty());
    assertEquals("No clamps  ·  11 readings in 10 min", plot.caption());
  }

  @Test
  void aShortHoldIsInSeconds() {
    HoldPlot plot = HoldPlot.of(hold(Set.of(), 11, 10), List.of(), Optional.empty());
    assertEquals("Time since the pump stopped [s]", plot.timeAxis().title());
    assertEquals(100, plot.marks().get(10).time(), 1e-12);
  }

  @Test
  void clampsAreNamedAndPlaced() {
    HoldPlot plot = HoldPlot.of(hold(Set.of("b", "a"), 11, 60), List.of(), Optional.empty());
    assertTrue(plot.caption().startsWith("Clamped: a, b"), plot.caption());
    assertEquals(5 / 60.0, plot.clampsOn().getAsDouble(), 1e-12);
  }

  @Test
  void theCurveIsInBarAndMinutes() {
    Suspect chosen = suspect(0.9, 1.2e5, 1.6e5);
    HoldPlot plot = HoldPlot.of(hold(Set.of(), 11, 60), List.of(chosen), Optional.of(chosen));
    HoldPlot.Curve curve = plot.curve().orElseThrow();
    assertEquals(10, curve.time()[1], 1e-12);
    assertEquals(1.2, curve.low()[1], 1e-12);
    assertEquals(1.4, curve.middle()[1], 1e-12);
    assertEquals(1.6, curve.high()[1], 1e-12);
    assertTrue(plot.pressure().low() < 1.2);
  }

  @Test
  void theAxisHoldsStillWhilePlausibleSuspectsAreLookedThrough() {
    Suspect near = suspect(0.9, 1.7e5, 1.9e5);
    Suspect far = suspect(0.09, 1.2e5, 1.4e5);
    Suspect silly = suspect(0.01, 0.1e5, 0.2e5);
    List<Suspect> all = List.of(near, far, silly);
    HoldTest test = hold(Set.of(), 11, 60);
    Scale withNear = HoldPlot.of(test, all, Optional.of(near)).pressure();
    assertEquals(withNear, HoldPlot.of(test, all, Optional.of(far)).pressure());
    assertTrue(withNear.low() > 0.5);
    assertTrue(HoldPlot.of(test, all, Optional.of(silly)).pressure().low() < 0.1);
  }

  @Test
  void thousandsOfReadingsAreThinnedAndThatIsSaid() {
    HoldPlot plot = HoldPlot.of(hold(Set.of(), 6000, 0.1), List.of(), Optional.empty());
    assertTrue(plot.marks().size() <= 1000);
    assertTrue(plot.legend().endsWith("of 6000 readings)"), plot.legend());
    assertFalse(plot.clamped());
  }
}
