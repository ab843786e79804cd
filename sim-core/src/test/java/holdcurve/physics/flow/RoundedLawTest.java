package holdcurve.physics.flow;

import static holdcurve.oracle.Near.assertNear;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class RoundedLawTest {
  private static final PipeLaw LINE = new PipeLaw(new Pipe(12e-3, 0.05, 1.5e-6, 1.5), 740, 0.45e-3);
  private static final RoundedLaw ROUNDED = new RoundedLaw(LINE, 1);

  @Test
  void isTheLawItselfWhereTheDifferenceCounts() {
    for (double difference : new double[] {100, 1e3, 1e5}) {
      double off = 1 / (difference * difference);
      assertNear(LINE.flow(difference), ROUNDED.flow(difference), off, "flow");
      assertNear(LINE.slope(difference), ROUNDED.slope(difference), 3 * off, "slope");
    }
  }

  @Test
  void leavesALawInProportionAlone() {
    LaminarLaw tube = new LaminarLaw(4.7e-8);
    RoundedLaw rounded = new RoundedLaw(tube, 1);
    for (double difference : new double[] {1e-6, 0.1, 2, 1e4}) {
      assertNear(tube.flow(difference), rounded.flow(difference), 1e-15, "flow");
      assertNear(tube.conductance(), rounded.slope(difference), 1e-15, "slope");
    }
  }

  /** Of a root, Newton's step from d towards 0 lands at −d; of a rounded one, far nearer. */
  @Test
  void stepsTowardsNoDifferenceComeNearer() {
    OrificeLaw root = new OrificeLaw(1, 1e-3);
    RoundedLaw rounded = new RoundedLaw(root, 1);
    double d = 0.5;
    assertNear(-d, d - root.flow(d) / root.slope(d), 1e-4, "the root");
    assertEquals(0, d - rounded.flow(d) / rounded.slope(d), 0.15 * d, "rounded");
  }
}
