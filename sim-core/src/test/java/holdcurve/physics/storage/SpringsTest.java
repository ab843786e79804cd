package holdcurve.physics.storage;

import static holdcurve.oracle.Near.assertNear;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.oracle.Near;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Closed forms. */
class SpringsTest {
  /** p Vⁿ constant, 2.5 bar absolute, 50 to 40 mL. */
  @ParameterizedTest
  @CsvSource({"1, 3.125e5", "1.3, 3.341358125e5", "1.4, 3.416756481e5"})
  void gasSpring(double exponent, double pressure) {
    GasSpring spring = GasSpring.charged(50e-6, 2.5e5 - 101_325, exponent, 100);
    assertNear(40e-6, spring.gas(pressure - 101_325), 1e-9, "gas volume");
    assertNear(10e-6, spring.volume(pressure - 101_325), 1e-9, "liquid taken in");
  }

  @Test
  void chargedSpringTakesNothingBelowItsCharge() {
    GasSpring spring = GasSpring.charged(50e-6, 1.5e5, 1, 2e3);
    assertTrue(spring.volume(1.2e5) < 1e-6 * spring.volume(2.5e5));
  }

  /** Isothermal trapped air: dV/dp = V p₀/(p₀ + p)², V at atmospheric pressure p₀. */
  @Property
  void trappedAir(@ForAll @DoubleRange(min = -8e4, max = 5e5) double p) {
    double absolute = 101_325 + p;
    double capacity = 3e-6 * 101_325 / (absolute * absolute);
    assertNear(capacity, GasSpring.trappedAir(3e-6, 1).capacity(p), 1e-12, "capacity");
  }

  @Test
  void airStaysFiniteBelowVacuum() {
    GasSpring air = GasSpring.trappedAir(3e-6, 1.2);
    assertTrue(Double.isFinite(air.volume(-3e5)));
    assertEquals(0, air.capacitySlope(-3e5));
    double slope = Near.derivative(air::volume, -3e5, 100);
    assertNear(slope, air.capacity(-3e5), 1e-9, "tangent");
  }

  /** Volume runs over the whole stroke; capacity at mid-stroke is Vd/(2 w). */
  @Test
  void diaphragm() {
    SpringDiaphragm damper = new SpringDiaphragm(1.2e-6, 1.8e5, 0.9e5);
    assertNear(1.2e-6, damper.volume(1e9) - damper.volume(-1e9), 1e-6, "stroke");
    assertNear(1.2e-6 / 1.8e5, damper.capacity(1.8e5), 1e-12, "capacity");
    assertEquals(0, damper.capacitySlope(1.8e5), 1e-30);
  }

  /** Hard stops leave a spring: volume in proportion between pd − w and pd + w, none beyond. */
  @Test
  void hardStops() {
    SpringDiaphragm damper = new SpringDiaphragm(1.2e-6, 1.8e5, 0.5e5, 20);
    assertNear(0.6e-6, damper.volume(2.05e5) - damper.volume(1.55e5), 1e-6, "half the stroke");
    assertNear(1.2e-6, damper.volume(2.6e5) - damper.volume(1e5), 1e-3, "whole stroke");
    assertNear(1, 1 + damper.capacity(2.6e5) / damper.capacity(1.8e5), 1e-3, "behind a stop");
  }

  /** Half a width below the vapour pressure, 0.3 L of node has already given up 50 mL. */
  @Test
  void pressureSettlesAtTheVapourPressure() {
    VapourGrowth vapour = new VapourGrowth(3e-4, -6e4, 2e3);
    Storage node = Storage.sum(List.of(new LinearStorage(2e-11), vapour));
    double atVapour = node.volume(-6e4);
    assertTrue(atVapour - node.volume(-6.1e4) > 5e-5);
    assertTrue(vapour.capacity(0) < 1e-3 * 2e-11);
    assertNear(1.5e-7, vapour.capacity(-9e4), 1e-5, "V/w far below");
  }
}
