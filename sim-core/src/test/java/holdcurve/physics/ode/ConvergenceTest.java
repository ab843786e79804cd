package holdcurve.physics.ode;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Order seen when the step is halved, on {@link FadingPull} from 0 s to 1.5 s. The same problem run
 * in Python with the same tables gave 4 for the methods of order 4 and 5 for RODAS5P, for the step
 * ends and for the dense output alike.
 */
class ConvergenceTest {
  private static final double SPAN = 1.5;

  /** Largest error at step ends and inside the steps. */
  private record Errors(double ends, double inside) {}

  private static Errors fixedSteps(RosenbrockMethod method, int count) {
    RosenbrockStepper stepper = new RosenbrockStepper(method.tableau(), 1);
    stepper.setEquations(new FadingPull());
    double h = SPAN / count;
    double[] y = {1};
    double[] end = new double[1];
    double[][] dense = new double[method.tableau().denseCount()][1];
    double ends = 0;
    double inside = 0;
    for (int k = 0; k < count; k++) {
      stepper.linearize(k * h, y);
      stepper.factor(h, new double[] {1});
      stepper.attempt(k * h, y, h, end, new double[1]);
      stepper.fillDense(dense);
      for (double theta : new double[] {0.2, 0.5, 0.8}) {
        double[] value = new double[1];
        DenseOutput.state(theta, y, end, dense, value);
        inside = Math.max(inside, Math.abs(value[0] - FadingPull.exact((k + theta) * h)));
      }
      y[0] = end[0];
      ends = Math.max(ends, Math.abs(y[0] - FadingPull.exact((k + 1) * h)));
    }
    return new Errors(ends, inside);
  }

  @ParameterizedTest
  @CsvSource({"RODAS4, 4", "RODAS4P2, 4", "RODAS5P, 5"})
  void halvingTheStepShowsTheOrder(RosenbrockMethod method, int order) {
    Errors coarse = fixedSteps(method, 40);
    Errors fine = fixedSteps(method, 80);
    assertEquals(order, Math.log(coarse.ends / fine.ends) / Math.log(2), 0.35);
    assertEquals(order, Math.log(coarse.inside / fine.inside) / Math.log(2), 0.35);
  }
}
