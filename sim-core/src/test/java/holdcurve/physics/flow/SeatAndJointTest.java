package holdcurve.physics.flow;

import static holdcurve.oracle.Near.assertNear;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Limits in closed form. */
class SeatAndJointTest {
  @Test
  void rigidSeatIsLaminar() {
    SeatLaw seat = new SeatLaw(1e-14, 2e4, 0);
    assertEquals(1e-14 * 2e5, seat.flow(2e5), 1e-24);
    assertEquals(1e-14, seat.slope(-7e4), 1e-28);
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.25, 0.5, 0.75})
  void farAboveThePreloadFlowIsAPower(double exponent) {
    SeatLaw seat = new SeatLaw(1e-14, 1, exponent);
    double local = 2e5 * seat.slope(2e5) / seat.flow(2e5);
    assertEquals(1 - exponent, local, 1e-5);
  }

  @Test
  void fullyYieldingSeatLevelsOff() {
    SeatLaw seat = new SeatLaw(1e-14, 1e3, 1);
    assertNear(1e-14 * 1e3, seat.flow(1e9), 1e-5, "flow");
    assertThrows(IllegalArgumentException.class, () -> new SeatLaw(1e-14, 1e3, 1.5));
  }

  @Test
  void seatPassesThroughItsPoint() {
    assertNear(1.7e-9, SeatLaw.throughPoint(1.7e-9, 2e5, 3e4, 0.6).flow(2e5), 1e-14, "seat");
  }

  @Test
  void jointIsShutBelowItsOpeningPressureAndLinearAbove() {
    OpeningJointLaw joint = new OpeningJointLaw(1e-13, 1.5e5, 2e3);
    assertTrue(joint.flow(1e5) < 1e-10 * joint.flow(2e5));
    assertNear(1e-13 * 0.5e5, joint.flow(2e5), 1e-9, "above");
    assertNear(1e-13 * 2e3 * Math.log(2), joint.flow(1.5e5), 1e-12, "at the opening pressure");
    assertNear(
        1.7e-9, OpeningJointLaw.throughPoint(1.7e-9, 2e5, 1.5e5, 2e3).flow(2e5), 1e-14, "point");
  }

  @Test
  void jointThatOpensAtOnceIsLaminar() {
    OpeningJointLaw joint = new OpeningJointLaw(1e-13, 0, 2e3);
    assertNear(1e-13 * 123, joint.flow(123), 1e-12, "flow");
  }
}
