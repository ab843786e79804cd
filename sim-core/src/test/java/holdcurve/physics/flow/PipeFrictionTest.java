package holdcurve.physics.flow;

import static holdcurve.oracle.Near.assertNear;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.oracle.Near;
import holdcurve.oracle.OutsideCheck;
import holdcurve.oracle.OutsideChecks;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PipeFrictionTest {
  /** Colebrook's formula solved to ten digits; Re 1e5, 1e-4 also in the tests of fluids 1.3.1. */
  @OutsideCheck(
      what = "friction factor of a pipe",
      source = "Colebrook's formula, computed apart, and tests of fluids 1.3.1",
      value = "5 values, Re 4e3 to 1e6",
      tolerance = 1e-7,
      unit = "%")
  @ParameterizedTest
  @CsvSource({
    "4e3, 0, 0.03990701406",
    "1e4, 1e-4, 0.0310372122",
    "1e5, 1e-4, 0.01851386608",
    "1e5, 1e-2, 0.03850354353",
    "1e6, 0, 0.011645041"
  })
  void colebrook(double reynolds, double roughness, double factor) {
    OutsideChecks.holds(
        "friction factor of a pipe", factor, PipeFriction.colebrook(reynolds, roughness));
    PipeFriction friction = new PipeFriction(roughness);
    double karman = reynolds * Math.sqrt(factor);
    assertNear(reynolds, friction.reynolds(karman), 1e-8, "explicit form");
  }

  /** Explicit approximations: Haaland 0.01826505301, Swamee–Jain 0.01845244531 at 1e5, 1e-4. */
  @Test
  void explicitApproximationsLieClose() {
    assertNear(0.01826505301, PipeFriction.colebrook(1e5, 1e-4), 0.02, "Haaland");
    assertNear(0.01845244531, PipeFriction.colebrook(1e5, 1e-4), 0.01, "Swamee–Jain");
  }

  /** f = 64/Re. */
  @Property
  void laminar(@ForAll @DoubleRange(min = 0, max = 2000) double reynolds) {
    double karman = Math.sqrt(64 * reynolds);
    assertEquals(reynolds, new PipeFriction(0.01).reynolds(karman), 1e-12 * reynolds);
  }

  @Property
  void risesThroughTheTransition(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.05) double roughness,
      @ForAll @DoubleRange(min = 300, max = 1200) double karman) {
    PipeFriction friction = new PipeFriction(roughness);
    double slope = friction.reynoldsSlope(karman);
    assertTrue(slope > 0, "slope " + slope);
    double difference = Near.derivative(friction::reynolds, karman, 1e-4);
    assertEquals(difference, slope, 2e-3 * slope + 1e-3);
  }

  @Property
  void valueAndSlopeMeetAtBothEnds(
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 0.05) double roughness) {
    PipeFriction friction = new PipeFriction(roughness);
    double upper = 4000 * Math.sqrt(PipeFriction.colebrook(4000, roughness));
    for (double karman : new double[] {Math.sqrt(64 * 2000.0), upper}) {
      double below = karman * (1 - 1e-10);
      double above = karman * (1 + 1e-10);
      assertNear(friction.reynolds(below), friction.reynolds(above), 1e-9, "value");
      assertNear(friction.reynoldsSlope(below), friction.reynoldsSlope(above), 1e-8, "slope");
    }
  }

  @Test
  void refusesRoughnessBeyondTheFormula() {
    assertThrows(IllegalArgumentException.class, () -> new PipeFriction(0.2));
  }
}
