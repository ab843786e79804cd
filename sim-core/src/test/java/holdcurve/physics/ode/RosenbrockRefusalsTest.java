package holdcurve.physics.ode;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.physics.ode.StiffIntegrationException.Reason;
import org.apache.commons.math3.exception.MaxCountExceededException;
import org.apache.commons.math3.ode.ExpandableStatefulODE;
import org.apache.commons.math3.ode.SecondaryEquations;
import org.junit.jupiter.api.Test;

class RosenbrockRefusalsTest {
  private static final RosenbrockTableau TABLE = RosenbrockMethod.RODAS4.tableau();

  /** A quiet component beside y' = y², which from 1 reaches infinity at 1 s. */
  private static class BlowUp implements StiffEquations {
    @Override
    public int getDimension() {
      return 2;
    }

    @Override
    public void computeDerivatives(double t, double[] y, double[] slope) {
      slope[0] = -y[0];
      slope[1] = y[1] * y[1];
    }

    @Override
    public void computeJacobian(double t, double[] y, double[][] dfdy) {
      dfdy[0][0] = -1;
      dfdy[0][1] = 0;
      dfdy[1][0] = 0;
      dfdy[1][1] = 2 * y[1];
    }
  }

  /** Can't be evaluated where the second component passes 2, which is at 0.5 s. */
  private static final class EndOfDomain extends BlowUp {
    @Override
    public void computeDerivatives(double t, double[] y, double[] slope) {
      super.computeDerivatives(t, y, slope);
      slope[1] *= Math.sqrt(2 - y[1]) / Math.sqrt(2 - y[1]);
    }
  }

  private static StiffIntegrationException failureOf(StiffEquations equations, StepLimits limits) {
    LeanRosenbrockDriver driver =
        new LeanRosenbrockDriver(TABLE, Tolerances.uniform(2, 1e-6, 1e-6), limits);
    return assertThrows(
        StiffIntegrationException.class,
        () ->
            driver.integrate(equations, 0, new double[] {1, 1}, 2, new double[0], new double[0][]));
  }

  @Test
  void saysWhenAndWhereTheStepsCollapse() {
    StiffIntegrationException failure = failureOf(new BlowUp(), StepLimits.WIDE);
    assertEquals(1, failure.time(), 1e-3);
    assertEquals(1, failure.component(), failure.getMessage());
    assertTrue(failure.getMessage().startsWith("component 1 of the state"), failure.getMessage());
    assertEquals(
        Reason.STEP_TOO_SMALL, failureOf(new BlowUp(), new StepLimits(1e-3, 1, 1000)).reason());
  }

  @Test
  void saysWhenAndWhereValuesCease() {
    StiffIntegrationException failure = failureOf(new EndOfDomain(), StepLimits.WIDE);
    assertEquals(Reason.NOT_FINITE, failure.reason());
    assertEquals(0.5, failure.time(), 1e-6);
    assertEquals(1, failure.component(), failure.getMessage());
  }

  @Test
  void saysWhichComponentStartsWithoutAValue() {
    LeanRosenbrockDriver driver =
        new LeanRosenbrockDriver(TABLE, Tolerances.uniform(2, 1e-6, 1e-6));
    double[] y = {1, Double.NaN};
    StiffIntegrationException failure =
        assertThrows(
            StiffIntegrationException.class,
            () -> driver.integrate(new BlowUp(), 0, y, 2, new double[0], new double[0][]));
    assertEquals(Reason.NOT_FINITE, failure.reason());
    assertEquals(0, failure.time());
    assertEquals(1, failure.component(), failure.getMessage());
  }

  @Test
  void stopsAtTheLimitOnSteps() {
    StiffIntegrationException failure =
        failureOf(new BlowUp(), new StepLimits(0, Double.POSITIVE_INFINITY, 5));
    assertEquals(Reason.TOO_MANY_STEPS, failure.reason());
  }

  @Test
  void integratorKeepsToTheLimitOnEvaluations() {
    RosenbrockIntegrator integrator = new RosenbrockIntegrator(TABLE, 0, 10, 1e-6, 1e-6);
    integrator.setMaxEvaluations(20);
    assertThrows(
        MaxCountExceededException.class,
        () -> integrator.integrate(new BlowUp(), 0, new double[] {1, 1}, 0.9, new double[2]));
  }

  @Test
  void integratorPassesFailuresOn() {
    RosenbrockIntegrator integrator = new RosenbrockIntegrator(TABLE, 0, 10, 1e-6, 1e-6);
    StiffIntegrationException failure =
        assertThrows(
            StiffIntegrationException.class,
            () -> integrator.integrate(new BlowUp(), 0, new double[] {1, 1}, 2, new double[2]));
    assertEquals(1, failure.component(), failure.getMessage());
  }

  @Test
  void integratorNeedsAJacobian() {
    RosenbrockIntegrator integrator = new RosenbrockIntegrator(TABLE, 0, 10, 1e-6, 1e-6);
    IllegalArgumentException refusal =
        assertThrows(
            IllegalArgumentException.class,
            () ->
                integrator.integrate(
                    new PlainProblem(new BlowUp()), 0, new double[] {1, 1}, 0.5, new double[2]));
    assertTrue(refusal.getMessage().contains("Jacobian"), refusal.getMessage());
  }

  @Test
  void integratorTakesNoSecondaryEquations() {
    ExpandableStatefulODE pair = new ExpandableStatefulODE(new BlowUp());
    pair.addSecondaryEquations(
        new SecondaryEquations() {
          @Override
          public int getDimension() {
            return 1;
          }

          @Override
          public void computeDerivatives(
              double t, double[] primary, double[] primaryDot, double[] y, double[] slope) {
            slope[0] = 0;
          }
        });
    RosenbrockIntegrator integrator = new RosenbrockIntegrator(TABLE, 0, 10, 1e-6, 1e-6);
    assertThrows(IllegalArgumentException.class, () -> integrator.integrate(pair, 0.5));
  }

  @Test
  void tolerancesAndLimitsAreChecked() {
    assertThrows(IllegalArgumentException.class, () -> Tolerances.uniform(2, 0, 1e-6));
    assertThrows(IllegalArgumentException.class, () -> Tolerances.uniform(2, 1e-6, -1));
    assertThrows(IllegalArgumentException.class, () -> Tolerances.uniform(2, Double.NaN, 1e-6));
    assertThrows(IllegalArgumentException.class, () -> Tolerances.of(new double[1], new double[2]));
    assertThrows(IllegalArgumentException.class, () -> new StepLimits(2, 1, 10));
    assertThrows(IllegalArgumentException.class, () -> new StepLimits(0, 1, 0));
  }

  @Test
  void driverChecksStateAndInterval() {
    LeanRosenbrockDriver driver =
        new LeanRosenbrockDriver(TABLE, Tolerances.uniform(2, 1e-6, 1e-6));
    double[] none = new double[0];
    double[][] noRows = new double[0][];
    assertThrows(
        IllegalArgumentException.class,
        () -> driver.integrate(new BlowUp(), 0, new double[3], 1, none, noRows));
    assertThrows(
        IllegalArgumentException.class,
        () -> driver.integrate(new BlowUp(), 1, new double[2], 1, none, noRows));
    assertThrows(
        IllegalArgumentException.class,
        () -> driver.integrate(new FadingPull(), 0, new double[2], 1, none, noRows));
  }
}
