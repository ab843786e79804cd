package holdcurve.physics.flow;

import static holdcurve.oracle.Near.assertNear;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** Numbers worked by hand from the textbook laws of Hagen–Poiseuille and of the ring gap. */
class LaminarPassageTest {
  private static final double VISCOSITY = 0.45e-3;
  private static final double DENSITY = 740;
  private static final double PER_MINUTE = 60e6;

  @Test
  void fineTube() {
    LaminarLaw law = LaminarLaw.tube(1e-5, 2e-3, VISCOSITY);
    assertNear(4.36332313e-15, law.conductance(), 1e-8, "conductance");
    assertEquals(law, new TubePassage(1e-5, 2e-3).laminar(DENSITY, VISCOSITY, 2e5));
    assertEquals(law, new TubePassage(1e-5, 2e-3).law(DENSITY, VISCOSITY, 2e5));
  }

  /** Tube and orifice of the closed-form hold: C 2.444444e-13 m³/Pa, τ = C/G = 56.0225 s. */
  @Test
  void fineTubeGivesTheClosedFormTimeConstant() {
    double capacity = 40e-6 / 0.9e9 + 2e-13;
    double conductance = LaminarLaw.tube(1e-5, 2e-3, VISCOSITY).conductance();
    assertEquals(56.02253997, capacity / conductance, 1e-6);
  }

  @Test
  void ringGap() {
    double centred = LaminarLaw.annularGap(8e-3, 5e-6, 5e-3, 0, VISCOSITY).flow(2e5);
    double touching = LaminarLaw.annularGap(8e-3, 5e-6, 5e-3, 1, VISCOSITY).flow(2e5);
    assertNear(1.396263402, PER_MINUTE * centred, 1e-8, "centred");
    assertNear(3.490658504, PER_MINUTE * touching, 1e-8, "touching");
    assertTrue(new GapPassage(8e-3, 5e-6, 5e-3, 1).reynolds(touching, DENSITY, VISCOSITY) < 20);
  }

  /**
   * Radius 50 µm, length 2 mm, 2 bar: the tube law says 32.7 mL/min at a Reynolds number 11 400.
   */
  @Test
  void wideTubeIsRefused() {
    TubePassage wide = new TubePassage(5e-5, 2e-3);
    double flow = LaminarLaw.tube(5e-5, 2e-3, VISCOSITY).flow(2e5);
    assertNear(32.72492347, PER_MINUTE * flow, 1e-8, "what the law would say");
    assertNear(11419.75, wide.reynolds(flow, DENSITY, VISCOSITY), 1e-6, "Reynolds number");
    var refusal =
        assertThrows(IllegalArgumentException.class, () -> wide.laminar(DENSITY, VISCOSITY, 2e5));
    assertTrue(refusal.getMessage().contains("Reynolds number of 11420"), refusal.getMessage());
  }

  /** What is handed over instead stays below an ideal nozzle, A √(2Δp/ρ), and the tube law. */
  @Test
  void wideTubeIsHandedOverToAPipe() {
    FlowLaw law = new TubePassage(5e-5, 2e-3).law(DENSITY, VISCOSITY, 2e5);
    assertInstanceOf(PipeLaw.class, law);
    double nozzle = Math.PI * 25e-10 * Math.sqrt(2 * 2e5 / DENSITY);
    assertTrue(law.flow(2e5) < nozzle);
    assertTrue(law.flow(2e5) > 0.3 * nozzle);
  }

  @Test
  void refusesWhatIsNoPassage() {
    assertThrows(IllegalArgumentException.class, () -> LaminarLaw.tube(0, 1, VISCOSITY));
    assertThrows(IllegalArgumentException.class, () -> LaminarLaw.tube(1e-5, 1, 0));
    assertThrows(IllegalArgumentException.class, () -> new GapPassage(8e-3, 2e-3, 1e-3, 0));
    assertThrows(IllegalArgumentException.class, () -> LaminarLaw.throughPoint(1e-9, 0));
  }
}
