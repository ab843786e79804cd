package holdcurve.bench.droptest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.bench.flowsheet.BenchLimits;
import holdcurve.common.number.Interval;
import holdcurve.file.CircuitReader;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.part.Injector;
import holdcurve.record.finding.DrawOff;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;

class TrappedFuelTest {
  private static final Circuit CIRCUIT =
      CircuitReader.read(Path.of("../scenarios/circuits/six-cylinder-return-line.circuit.json"));

  /** Closed form for a constant compliance: k t = 2 C (√before − √after), C = 20 mL/bar · 1e-6. */
  @Test
  void squareRootLawInClosedForm() {
    TrappedFuel fuel = TrappedFuel.unknown();
    double passed = fuel.passed(2e5, 1.2e5);
    assertEquals(2 * 2e-11 * (Math.sqrt(2e5) - Math.sqrt(1.2e5)), passed, 1e-6 * passed);
    assertEquals(1.2e5, fuel.after(2e5, passed), 1);
    assertEquals(0, fuel.after(2e5, 1), 0);
    assertFalse(fuel.isKnown());
  }

  /**
   * The same injector drops less from a lower pressure; without the correction it would look weak.
   * The exact ratio for a constant compliance: with s = √before, drop = 2 s a − a².
   */
  @Test
  void aLowerStartMakesNoInjectorLookWeak() {
    TrappedFuel fuel = TrappedFuel.unknown();
    double a = Math.sqrt(2e5) - Math.sqrt(1.5e5);
    double low = Math.sqrt(1.5e5);
    double drop = 2 * low * a - a * a;
    assertEquals(fuel.passed(2e5, 1.5e5), fuel.passed(1.5e5, 1.5e5 - drop), 1e-15);
  }

  /** A draw-off of 2 mL for 0.8 bar is 2.5 mL/bar, whatever the circuit was thought to take. */
  @Test
  void aDrawOffSetsTheSize() {
    DrawOff drawn = new DrawOff(2e-6, 2e5, 1.2e5, 10, Set.of());
    TrappedFuel fuel = TrappedFuel.unknown().measuredBy(drawn, 0.05e5);
    assertEquals(2.5e-11, fuel.compliance(1.6e5), 1e-15);
    assertTrue(fuel.isKnown());
    assertTrue(fuel.spread() > 0.05 && fuel.spread() < 0.25, "spread " + fuel.spread());
  }

  /** The simulated circuit's own flow: Q = Q_s √(p/p_rated), the trade's square-root rule. */
  @Test
  void flowsComeOutAsTheyWere() {
    Part injectors = CIRCUIT.partsOf(Injector.KIND).get(0);
    DropPlan plan = new DropPlan(new Shot(1, 0.25, 8), 12, 2e5, 0.03e5, 0.02e5, 60);
    double[] alike = {1, 1, 1, 1};
    DropTest test = DropTestSimulator.simulate(Condition.sound(CIRCUIT), alike, plan, 3);
    DropReport report =
        DropAssessment.judge(test, TrappedFuel.of(CIRCUIT, 8), BenchLimits.shipped(), 1);
    double expected =
        injectors.value(Injector.STATIC_FLOW)
            * Math.sqrt(report.pressure() / injectors.value(Injector.RATED));
    for (InjectorDrop injector : report.injectors()) {
      Interval flow = injector.flow().orElseThrow();
      assertEquals(expected, flow.middle(), 0.06 * expected, "injector " + injector.id());
      assertTrue(flow.contains(expected));
    }
  }

  @Test
  void theSameSeedGivesTheSameAnswer() {
    DropPlan plan = new DropPlan(new Shot(1, 0.25, 8), 2, 2e5, 0.03e5, 0.05e5, 60);
    double[] alike = {1, 0.9};
    DropTest test = DropTestSimulator.simulate(Condition.sound(CIRCUIT), alike, plan, 3);
    TrappedFuel fuel = TrappedFuel.unknown();
    assertEquals(
        DropAssessment.judge(test, fuel, BenchLimits.shipped(), 5),
        DropAssessment.judge(test, fuel, BenchLimits.shipped(), 5));
  }

  /** More drop, fewer repeats; a coarser gauge, more. */
  @Test
  void repeatsFollowGaugeAndDrop() {
    int usual = RepeatAdvice.repeats(0.05e5, 0.4e5, 6, 0.05);
    assertTrue(RepeatAdvice.repeats(0.05e5, 0.8e5, 6, 0.05) < usual);
    assertTrue(RepeatAdvice.repeats(0.1e5, 0.4e5, 6, 0.05) > 3 * usual - 3);
  }
}
