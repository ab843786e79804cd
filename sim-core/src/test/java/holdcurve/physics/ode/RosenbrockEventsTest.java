package holdcurve.physics.ode;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.oracle.OutsideCheck;
import holdcurve.oracle.OutsideChecks;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.apache.commons.math3.ode.sampling.StepHandler;
import org.apache.commons.math3.ode.sampling.StepInterpolator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class RosenbrockEventsTest {

  /** Notes when a component passes a level. */
  private static final class Crossing implements EventHandler {
    private final int component;
    private final double level;
    private double time = Double.NaN;
    private boolean rising;

    Crossing(int component, double level) {
      this.component = component;
      this.level = level;
    }

    @Override
    public void init(double t0, double[] y0, double t) {
      time = Double.NaN;
    }

    @Override
    public double g(double t, double[] y) {
      return y[component] - level;
    }

    @Override
    public Action eventOccurred(double t, double[] y, boolean increasing) {
      time = t;
      rising = increasing;
      return Action.CONTINUE;
    }

    @Override
    public void resetState(double t, double[] y) {
      throw new IllegalStateException("nothing is reset at a crossing");
    }
  }

  /**
   * Event times of Robertson's problem printed by SUNDIALS' example cvRoberts_dns: 0.26391 s (y3
   * rises through 0.01) and 2.0790e7 s (y1 falls through 1e-4). That run had a relative tolerance
   * of 1e-4, so the gap accepted is 1e-3. The finer values are by SciPy 1.17.1, solve_ivp with
   * Radau at a relative tolerance of 1e-11; its BDF agrees in eight digits.
   */
  @OutsideCheck(
      what = "rise of Robertson's third through 0.01",
      source = "SUNDIALS, example cvRoberts_dns",
      value = "0.26391 s",
      tolerance = 0.1,
      unit = "%")
  @OutsideCheck(
      what = "fall of Robertson's first through 1e-4",
      source = "SUNDIALS, example cvRoberts_dns",
      value = "2.0790e7 s",
      tolerance = 0.1,
      unit = "%")
  @ParameterizedTest
  @EnumSource(RosenbrockMethod.class)
  void findsTheEventsOfRobertson(RosenbrockMethod method) {
    Robertson robertson = new Robertson();
    Crossing thirdRises = new Crossing(2, 0.01);
    Crossing firstFalls = new Crossing(0, 1e-4);
    RosenbrockIntegrator integrator =
        IntegratorsAgreeTest.integrator(method, 1e-8, robertson.floor());
    integrator.addEventHandler(thirdRises, 1e9, 1e-10, 100);
    integrator.addEventHandler(firstFalls, 1e9, 1e-3, 100);
    integrator.integrate(robertson, 0, robertson.initial(), 1e9, new double[3]);
    OutsideChecks.holds("rise of Robertson's third through 0.01", thirdRises.time);
    assertTrue(thirdRises.rising);
    OutsideChecks.holds("fall of Robertson's first through 1e-4", firstFalls.time);
    assertEquals(0.264019078188, thirdRises.time, 1e-7);
    assertEquals(2.0795496883e7, firstFalls.time, 1e-6 * 2.0795496883e7);
    assertFalse(firstFalls.rising);
    assertEquals(explicitTime(), thirdRises.time, 1e-8, "against an explicit integrator");
  }

  /** The first event by Commons Math's explicit integrator, for which 0.3 s is still bearable. */
  private static double explicitTime() {
    Crossing thirdRises = new Crossing(2, 0.01);
    Robertson robertson = new Robertson();
    DormandPrince853Integrator explicit = new DormandPrince853Integrator(0, 1, 1e-16, 1e-12);
    explicit.addEventHandler(thirdRises, 1, 1e-12, 100);
    explicit.integrate(robertson, 0, robertson.initial(), 0.3, new double[3]);
    return thirdRises.time;
  }

  /**
   * With loose tolerances a careless method lets y2 go negative, after which the problem blows up.
   */
  @ParameterizedTest
  @EnumSource(RosenbrockMethod.class)
  void robertsonStaysOnTheRightSideWithLooseTolerance(RosenbrockMethod method) {
    double[] absolute = {1e-8, 1e-14, 1e-6};
    double[] relative = {1e-3, 1e-3, 1e-3};
    RosenbrockIntegrator integrator =
        new RosenbrockIntegrator(method.tableau(), 0, 1e300, absolute, relative);
    double[] lowest = {1};
    integrator.addStepHandler(
        new StepHandler() {
          @Override
          public void init(double t0, double[] y0, double t) {}

          @Override
          public void handleStep(StepInterpolator interpolator, boolean isLast) {
            lowest[0] = Math.min(lowest[0], interpolator.getInterpolatedState()[1]);
          }
        });
    double[] end = new double[3];
    integrator.integrate(new Robertson(), 0, new double[] {1, 0, 0}, 1e11, end);
    assertTrue(lowest[0] >= -absolute[1], "y2 fell to " + lowest[0]);
    assertEquals(1, end[0] + end[1] + end[2], 1e-9, "mass is kept");
  }

  /** Pump on and return open until the switch, then off and pinched: one run, one event. */
  private static final class SwitchedHold implements StiffEquations, EventHandler {
    private final HoldBenchmark prime = new HoldBenchmark(true);
    private final HoldBenchmark hold = new HoldBenchmark(false);
    private HoldBenchmark now = prime;

    @Override
    public int getDimension() {
      return 9;
    }

    @Override
    public void computeDerivatives(double t, double[] y, double[] slope) {
      now.computeDerivatives(t, y, slope);
    }

    @Override
    public void computeJacobian(double t, double[] y, double[][] dfdy) {
      now.computeJacobian(t, y, dfdy);
    }

    @Override
    public void init(double t0, double[] y0, double t) {
      now = prime;
    }

    @Override
    public double g(double t, double[] y) {
      return t - HoldBenchmark.SWITCH;
    }

    @Override
    public Action eventOccurred(double t, double[] y, boolean increasing) {
      now = hold;
      return Action.RESET_DERIVATIVES;
    }

    @Override
    public void resetState(double t, double[] y) {
      throw new IllegalStateException("the state is carried over");
    }
  }

  /** Reference: variant B of the hold problem, see {@link HoldBenchmarkTest}. */
  @ParameterizedTest
  @EnumSource(RosenbrockMethod.class)
  void startsAnewWhenAnEventChangesTheEquations(RosenbrockMethod method) {
    SwitchedHold equations = new SwitchedHold();
    RosenbrockIntegrator integrator =
        IntegratorsAgreeTest.integrator(method, 1e-9, HoldBenchmark.FLOOR);
    integrator.addEventHandler(equations, 10, 1e-9, 100);
    double[] end = new double[9];
    integrator.integrate(equations, 0, HoldBenchmark.initial("B"), 1800, end);
    double[] reference = HoldBenchmark.published("B")[8];
    for (int i = 0; i < 9; i++) {
      double allowed = 1e-8 * (Math.abs(reference[i]) + HoldBenchmark.FLOOR[i]);
      assertEquals(reference[i], end[i], allowed, "state " + i);
    }
  }

  /** Sets the only component to 5 at a given time. */
  private record JumpAt(double when) implements EventHandler {
    @Override
    public void init(double t0, double[] y0, double t) {}

    @Override
    public double g(double t, double[] y) {
      return t - when;
    }

    @Override
    public Action eventOccurred(double t, double[] y, boolean increasing) {
      return Action.RESET_STATE;
    }

    @Override
    public void resetState(double t, double[] y) {
      y[0] = 5;
    }
  }

  @ParameterizedTest
  @ValueSource(doubles = {1.4999999999, 1.5})
  void keepsAStateThatIsSetAtTheVeryEnd(double when) {
    RosenbrockIntegrator integrator =
        IntegratorsAgreeTest.integrator(RosenbrockMethod.RODAS4, 1e-6, new double[] {1});
    integrator.addEventHandler(new JumpAt(when), 0.1, 1e-12, 100);
    double[] end = new double[1];
    double stopped = integrator.integrate(new FadingPull(), 0, new double[] {1}, 1.5, end);
    assertEquals(1.5, stopped);
    assertEquals(5, end[0], 1e-6);
  }
}
