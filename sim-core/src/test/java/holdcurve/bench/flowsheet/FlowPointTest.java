package holdcurve.bench.flowsheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import holdcurve.physics.fluid.Petrol;
import holdcurve.physics.fluid.PureLiquid;
import org.junit.jupiter.api.Test;

class FlowPointTest {
  private static final PureLiquid HEPTANE = PureLiquid.nHeptane();

  /** Trade rule Q = Qr √(Δp/Δpr): 200 g/min at 3.0 bar is 182.5742 g/min at 2.5 bar. */
  @Test
  void flowGoesWithTheRootOfPressure() {
    FlowPoint three = new FlowPoint(3.0e5, HEPTANE, 293.15);
    FlowPoint two = new FlowPoint(2.5e5, HEPTANE, 293.15);
    double ofOneDensity = three.factorTo(two) * Math.sqrt(two.density() / three.density());
    assertEquals(182.5742, 200 * ofOneDensity, 5e-5, "as printed");
  }

  /**
   * Same pressure, other density: volume flow goes with √(ρr/ρ); 684 to 745 kg/m³ gives 0.958186,
   * and mass flow 1.043638. n-heptane has 684.1 kg/m³ at 20 °C and 3 bar gauge (Span and Wagner
   * 2003), and a petrol of 745 at 15 °C has 740.
   */
  @Test
  void volumeGoesAgainstTheRootOfDensity() {
    FlowPoint bench = new FlowPoint(3e5, HEPTANE, 293.15);
    Petrol petrol = Petrol.of(60e3, 750);
    FlowPoint car = new FlowPoint(3e5, petrol, 293.15);
    assertEquals(Math.sqrt(684.1 / car.density()), bench.factorTo(car), 2e-4);
    double to745 = bench.factorTo(car) * Math.sqrt(car.density() / 745);
    assertEquals(0.958186, to745, 2e-4, "carried on to 745 kg/m³");
    assertEquals(1.043638, to745 * 745 / 684, 2e-4, "by mass");
  }

  @Test
  void thereAndBackIsOne() {
    FlowPoint a = new FlowPoint(3e5, HEPTANE, 295);
    FlowPoint b = new FlowPoint(2e5, Petrol.summer(), 310);
    assertEquals(1, a.factorTo(b) * b.factorTo(a), 1e-12);
  }

  @Test
  void refusesNoPressure() {
    assertThrows(IllegalArgumentException.class, () -> new FlowPoint(0, HEPTANE, 293.15));
  }
}
