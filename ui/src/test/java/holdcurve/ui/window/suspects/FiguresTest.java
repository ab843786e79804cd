package holdcurve.ui.window.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.common.message.PressureUnit;
import holdcurve.common.number.Interval;
import holdcurve.inference.answer.FaultSize;
import holdcurve.physics.circuit.Unit;
import org.junit.jupiter.api.Test;

class FiguresTest {
  /** 1 mL/min is 1e-6 m³ in 60 s. */
  private static final double ML_PER_MIN = 1e-6 / 60;

  private static Interval around(double mLPerMin) {
    double flow = mLPerMin * ML_PER_MIN;
    return new Interval(0.8 * flow, flow, 1.25 * flow);
  }

  private static String leak(Interval flow) {
    String all =
        Figures.size(new FaultSize("leak", Unit.MILLILITRE_PER_MINUTE, flow), PressureUnit.BAR);
    return all.substring(0, all.indexOf(','));
  }

  @Test
  void otherFaultsHaveTheirOwnSize() {
    assertEquals(
        "shuts low by 0.30 bar (0.20 to 0.40)",
        Figures.size(
            new FaultSize("shuts low by", Unit.BAR, new Interval(0.2e5, 0.3e5, 0.4e5)),
            PressureUnit.BAR));
    assertEquals(
        "shuts low by 30 kPa (20 to 40)",
        Figures.size(
            new FaultSize("shuts low by", Unit.BAR, new Interval(0.2e5, 0.3e5, 0.4e5)),
            PressureUnit.KPA));
    assertEquals(
        "share blocked 0.50 (0.40 to 0.60)",
        Figures.size(
            new FaultSize("share blocked", Unit.NONE, new Interval(0.4, 0.5, 0.6)),
            PressureUnit.BAR));
  }

  @Test
  void percentagesSayNoMoreThanIsKnown() {
    assertEquals("55 %", Figures.percent(0.553));
    assertEquals("below 1 %", Figures.percent(0.0099));
    assertEquals("above 99 %", Figures.percent(0.9901));
    assertEquals("99 %", Figures.percent(0.99));
  }

  @Test
  void leaksAreInMillilitresAMinute() {
    assertEquals("0.40 mL/min (0.32 to 0.50)", leak(around(0.4)));
    assertEquals("4.0 mL/min (3.2 to 5.0)", leak(around(4)));
    assertEquals("0.040 mL/min (0.032 to 0.050)", leak(around(0.04)));
    assertEquals("40 mL/min (32 to 50)", leak(around(40)));
  }

  /** Thirty drops make a millilitre: common practice, no source. */
  @Test
  void dropsAreCountedAMinuteOrTheMinutesADrop() {
    assertEquals("about 3 drops a minute", Figures.drops(around(0.1)));
    assertEquals("about 12 drops a minute", Figures.drops(around(0.4)));
    assertEquals("about 120 drops a minute", Figures.drops(around(4.11)));
    assertEquals("about a drop a minute", Figures.drops(around(1 / 30.0)));
    assertEquals("about a drop in 10 min", Figures.drops(around(1 / 300.0)));
    assertEquals("less than a drop an hour", Figures.drops(around(1e-6)));
    assertEquals("less than a drop an hour", Figures.drops(around(0)));
  }
}
