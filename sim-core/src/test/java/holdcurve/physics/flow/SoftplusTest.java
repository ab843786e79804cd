package holdcurve.physics.flow;

import static holdcurve.oracle.Near.assertNear;
import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.oracle.Near;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class SoftplusTest {
  /** ln 2; ln(1 + e) = 1.3132616875182228; series e^z − e^2z/2 for very negative z. */
  @Test
  void agreesWithKnownValues() {
    assertEquals(Math.log(2), Softplus.value(0), 1e-16);
    assertEquals(1.3132616875182228, Softplus.value(1), 1e-15);
    assertNear(Math.exp(-30) - Math.exp(-60) / 2, Softplus.value(-30), 1e-15, "far below");
    assertEquals(0.5, Softplus.slope(0));
    assertEquals(0.25, Softplus.curvature(0));
  }

  @Test
  void neitherOverflowsNorLosesItsTail() {
    assertEquals(1e6, Softplus.value(1e6));
    assertEquals(0, Softplus.value(-1e6));
    assertEquals(1, Softplus.slope(1e6));
    assertEquals(0, Softplus.slope(-1e6));
    assertEquals(0, Softplus.curvature(1e6));
  }

  @Property
  void reflects(@ForAll @DoubleRange(min = -60, max = 60) double z) {
    assertEquals(z, Softplus.value(z) - Softplus.value(-z), 1e-13);
    assertEquals(1, Softplus.slope(z) + Softplus.slope(-z), 1e-15);
  }

  @Property
  void slopesAreDerivatives(@ForAll @DoubleRange(min = -39, max = 39) double z) {
    double slope = Near.derivative(Softplus::value, z, 1e-3);
    assertEquals(slope, Softplus.slope(z), 1e-10);
    assertEquals(Near.derivative(Softplus::slope, z, 1e-3), Softplus.curvature(z), 1e-10);
  }
}
