package holdcurve.physics.ode;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.apache.commons.math3.ode.sampling.StepHandler;
import org.apache.commons.math3.ode.sampling.StepInterpolator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class IntegratorsAgreeTest {
  private static final double RELATIVE = 1e-6;

  static RosenbrockIntegrator integrator(RosenbrockMethod method, double relative, double[] floor) {
    double[] relatives = new double[floor.length];
    Arrays.fill(relatives, relative);
    double[] absolutes = Arrays.stream(floor).map(size -> relative * size).toArray();
    return new RosenbrockIntegrator(method.tableau(), 0, 1e300, absolutes, relatives);
  }

  /** Fills rows at given times from the dense output of each step. */
  private record Sampler(double[] times, double[][] rows) implements StepHandler {
    @Override
    public void init(double t0, double[] y0, double t) {
      rows[0] = y0.clone();
    }

    @Override
    public void handleStep(StepInterpolator interpolator, boolean isLast) {
      for (int k = 0; k < times.length; k++) {
        if (times[k] > interpolator.getPreviousTime()
            && times[k] <= interpolator.getCurrentTime()) {
          interpolator.setInterpolatedTime(times[k]);
          rows[k] = interpolator.getInterpolatedState().clone();
        }
      }
    }
  }

  @ParameterizedTest
  @EnumSource(RosenbrockMethod.class)
  void leanDriverAndCommonsMathIntegratorTakeTheSameSteps(RosenbrockMethod method) {
    double[] times = HoldBenchmark.TIMES;
    HoldBenchmark equations = new HoldBenchmark(false);
    double[][] lean = new double[times.length][9];
    double[] leanEnd = HoldBenchmark.initial("A");
    StiffRun leanRun =
        new LeanRosenbrockDriver(
                method.tableau(), Tolerances.relative(RELATIVE, HoldBenchmark.FLOOR))
            .integrate(equations, 0, leanEnd, 1800, times, lean);

    double[][] sampled = new double[times.length][];
    RosenbrockIntegrator integrator = integrator(method, RELATIVE, HoldBenchmark.FLOOR);
    integrator.addStepHandler(new Sampler(times, sampled));
    double[] end = new double[9];
    integrator.integrate(equations, 0, HoldBenchmark.initial("A"), 1800, end);

    assertEquals(leanRun, integrator.statistics());
    assertEquals(leanRun.evaluations(), integrator.getEvaluations());
    assertArrayEquals(leanEnd, end, "same arithmetic, same digits");
    for (int k = 0; k < times.length; k++) {
      for (int i = 0; i < 9; i++) {
        assertEquals(lean[k][i], sampled[k][i], 1e-13 * Math.abs(lean[k][i]), "time " + times[k]);
      }
    }
  }

  @ParameterizedTest
  @EnumSource(RosenbrockMethod.class)
  void whatADriverSolvedBeforeLeavesNoTrace(RosenbrockMethod method) {
    LeanRosenbrockDriver driver =
        new LeanRosenbrockDriver(
            method.tableau(), Tolerances.relative(RELATIVE, HoldBenchmark.FLOOR));
    double[][] fresh = HoldBenchmarkTest.solve("A", driver, new int[2]);
    HoldBenchmarkTest.solve("B", driver, new int[2]);
    double[][] again = HoldBenchmarkTest.solve("A", driver, new int[2]);
    for (int k = 0; k < fresh.length; k++) {
      assertArrayEquals(fresh[k], again[k]);
    }
  }

  /** An explicit integrator of another make, on the first, mildly stiff part of HIRES. */
  @ParameterizedTest
  @EnumSource(RosenbrockMethod.class)
  void agreesWithDormandPrince853(RosenbrockMethod method) {
    Hires hires = new Hires();
    double[] explicit = new double[8];
    new DormandPrince853Integrator(0, 10, 1e-15, 1e-13)
        .integrate(hires, 0, hires.initial(), 20, explicit);
    double[] implicit = new double[8];
    integrator(method, 1e-9, hires.floor()).integrate(hires, 0, hires.initial(), 20, implicit);
    for (int i = 0; i < 8; i++) {
      assertEquals(explicit[i], implicit[i], 1e-8 * (Math.abs(explicit[i]) + 1e-4), "y" + (i + 1));
    }
  }

  /** On the way back errors grow by exp ∫ 3 sin t dt, a factor of 70. */
  @ParameterizedTest
  @EnumSource(RosenbrockMethod.class)
  void goesBackToWhereItCameFrom(RosenbrockMethod method) {
    double[] there = new double[1];
    double[] back = new double[1];
    RosenbrockIntegrator integrator = integrator(method, 1e-10, new double[] {1});
    integrator.integrate(new FadingPull(), 0, new double[] {1}, 2, there);
    assertEquals(FadingPull.exact(2), there[0], 1e-9);
    integrator.integrate(new FadingPull(), 2, there, 0, back);
    assertEquals(1, back[0], 5e-8);
  }

  @Test
  void leanDriverFillsRowsBackwardsToo() {
    double[] times = {2, 1.5, 0.7, 0, -1};
    double[][] rows = new double[times.length][1];
    rows[4][0] = 42;
    double[] y = {FadingPull.exact(2)};
    Tolerances tolerances = Tolerances.uniform(1, 1e-10, 1e-10);
    new LeanRosenbrockDriver(RosenbrockMethod.RODAS5P.tableau(), tolerances)
        .integrate(new FadingPull(), 2, y, 0, times, rows);
    for (int k = 0; k < 4; k++) {
      assertEquals(FadingPull.exact(times[k]), rows[k][0], 1e-8, "time " + times[k]);
    }
    assertEquals(42, rows[4][0], "outside the run");
  }

  @Test
  void differencedJacobianServesWhereNoneIsWritten() {
    FadingPull pull = new FadingPull();
    double[] end = new double[1];
    integrator(RosenbrockMethod.RODAS4, 1e-8, new double[] {1})
        .integrate(
            new DifferencedJacobian(new PlainProblem(pull), 1, 1), 0, new double[] {1}, 1.5, end);
    assertEquals(FadingPull.exact(1.5), end[0], 1e-7);
  }
}
