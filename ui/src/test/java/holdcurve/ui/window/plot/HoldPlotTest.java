package holdcurve.ui.window.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.message.PressureUnit;
import holdcurve.inference.answer.HoldCurve;
import holdcurve.record.job.HoldTest;
import holdcurve.record.log.GaugeLog;
import holdcurve.record.log.Reading;
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

  private static HoldCurve curve(double low, double high) {
    double middle = (low + high) / 2;
    return new HoldCurve(
        "hold",
        new double[] {0, 600},
        new double[] {2e5, middle},
        new double[] {2e5, low},
        new double[] {2e5, high});
  }

  private static HoldPlot.Wish wish(List<HoldCurve> plausible, HoldCurve chosen) {
    return new HoldPlot.Wish(Optional.of(chosen), plausible, 1, false, PressureUnit.BAR);
  }

  @Test
  void timeStartsAtThePumpStopInMinutes() {
    HoldPlot plot = HoldPlot.of(hold(Set.of(), 11, 60), HoldPlot.Wish.PLAIN);
    assertEquals("Time since pump stop [min]", plot.timeAxis().title());
    assertEquals(new HoldPlot.Mark(0, 2, false), plot.marks().get(0));
    assertEquals(10, plot.marks().get(10).time(), 1e-12);
    assertTrue(plot.curve().isEmpty() && plot.clampsOn().isEmpty());
    assertEquals("No clamps  ·  11 readings in 10 min", plot.caption());
  }

  @Test
  void aShortHoldIsInSeconds() {
    HoldPlot plot = HoldPlot.of(hold(Set.of(), 11, 10), HoldPlot.Wish.PLAIN);
    assertEquals("Time since pump stop [s]", plot.timeAxis().title());
    assertEquals(100, plot.marks().get(10).time(), 1e-12);
  }

  @Test
  void clampsAreNamedAndPlaced() {
    HoldPlot plot = HoldPlot.of(hold(Set.of("b", "a"), 11, 60), HoldPlot.Wish.PLAIN);
    assertTrue(plot.caption().startsWith("Clamped: a, b"), plot.caption());
    assertEquals(5 / 60.0, plot.clampsOn().getAsDouble(), 1e-12);
  }

  @Test
  void theCurveIsInBarAndMinutes() {
    HoldCurve chosen = curve(1.2e5, 1.6e5);
    HoldPlot plot = HoldPlot.of(hold(Set.of(), 11, 60), wish(List.of(chosen), chosen));
    HoldPlot.Curve curve = plot.curve().orElseThrow();
    assertEquals(10, curve.time()[1], 1e-12);
    assertEquals(1.2, curve.low()[1], 1e-12);
    assertEquals(1.4, curve.middle()[1], 1e-12);
    assertEquals(1.6, curve.high()[1], 1e-12);
    assertTrue(plot.pressure().low() < 1.2);
  }

  @Test
  void pressuresCanBeInOtherUnits() {
    HoldPlot.Wish psi =
        new HoldPlot.Wish(Optional.of(curve(1.2e5, 1.6e5)), List.of(), 1, false, PressureUnit.PSI);
    HoldPlot plot = HoldPlot.of(hold(Set.of(), 11, 60), psi);
    assertEquals(2e5 / 6894.757, plot.marks().get(0).pressure(), 1e-6);
    assertEquals(1.2e5 / 6894.757, plot.curve().orElseThrow().low()[1], 1e-6);
  }

  @Test
  void theAxisHoldsStillWhilePlausibleSuspectsAreLookedThrough() {
    HoldCurve near = curve(1.7e5, 1.9e5);
    HoldCurve far = curve(1.2e5, 1.4e5);
    List<HoldCurve> plausible = List.of(near, far);
    HoldTest test = hold(Set.of(), 11, 60);
    Scale withNear = HoldPlot.of(test, wish(plausible, near)).pressure();
    assertEquals(withNear, HoldPlot.of(test, wish(plausible, far)).pressure());
    assertTrue(withNear.low() > 0.5);
    HoldCurve silly = curve(0.1e5, 0.2e5);
    assertTrue(HoldPlot.of(test, wish(plausible, silly)).pressure().low() < 0.1);
  }

  @Test
  void theBuildUpIsPlottedWhereItIsWanted() {
    List<Reading> log =
        IntStream.range(0, 20).mapToObj(i -> Reading.of(2 * i - 10, 1e5 + 5e3 * i)).toList();
    HoldTest test = HoldTest.of("hold", Set.of(), new GaugeLog("log", log, 0));
    HoldPlot without = HoldPlot.of(test, HoldPlot.Wish.PLAIN);
    HoldPlot with =
        HoldPlot.of(
            test, new HoldPlot.Wish(Optional.empty(), List.of(), 1, true, PressureUnit.BAR));
    assertEquals(5, without.buildUp());
    assertEquals(15, without.marks().size());
    assertEquals(20, with.marks().size());
    assertEquals(-10, with.marks().get(0).time(), 1e-12);
    assertTrue(with.time().low() < -10 && without.time().low() > -1);
  }

  @Test
  void thousandsOfReadingsAreThinnedAndThatIsSaid() {
    HoldPlot plot = HoldPlot.of(hold(Set.of(), 6000, 0.1), HoldPlot.Wish.PLAIN);
    assertTrue(plot.marks().size() <= 400);
    assertTrue(plot.legend().endsWith("of 6000 readings)"), plot.legend());
    assertFalse(plot.clamped());
  }

  @Test
  void lengthsOfTimeAreInSecondsOrMinutes() {
    assertEquals("120 s", PlotWords.duration(120));
    assertEquals("12 min", PlotWords.duration(720));
  }
}
