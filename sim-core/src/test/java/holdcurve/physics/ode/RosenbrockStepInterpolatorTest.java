package holdcurve.physics.ode;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.ObjectInputStream;
import java.io.ObjectOutputStream;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.ode.ContinuousOutputModel;
import org.apache.commons.math3.ode.sampling.StepHandler;
import org.apache.commons.math3.ode.sampling.StepInterpolator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RosenbrockStepInterpolatorTest {

  /** Commons Math's own collector copies each step and asks later. */
  @ParameterizedTest
  @EnumSource(RosenbrockMethod.class)
  void copiesOfStepsAnswerLater(RosenbrockMethod method) {
    ContinuousOutputModel model = new ContinuousOutputModel();
    run(method, model);
    for (double t = 0; t <= 1.5; t += 0.01) {
      model.setInterpolatedTime(t);
      assertEquals(FadingPull.exact(t), model.getInterpolatedState()[0], 1e-7, "time " + t);
      double slope = -2 * t * FadingPull.exact(t) * FadingPull.exact(t);
      assertEquals(slope, model.getInterpolatedDerivatives()[0], 1e-4, "time " + t);
    }
  }

  @Test
  void storedStepsAnswerAsBefore() throws IOException, ClassNotFoundException {
    List<StepInterpolator> steps = new ArrayList<>();
    run(RosenbrockMethod.RODAS5P, collector(steps));
    StepInterpolator step = steps.get(steps.size() / 2);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    try (ObjectOutputStream out = new ObjectOutputStream(bytes)) {
      out.writeObject(step);
    }
    StepInterpolator read;
    try (ObjectInputStream in =
        new ObjectInputStream(new ByteArrayInputStream(bytes.toByteArray()))) {
      read = (StepInterpolator) in.readObject();
    }
    double middle = (step.getPreviousTime() + step.getCurrentTime()) / 2;
    step.setInterpolatedTime(middle);
    read.setInterpolatedTime(middle);
    assertArrayEquals(step.getInterpolatedState(), read.getInterpolatedState());
    assertArrayEquals(step.getInterpolatedDerivatives(), read.getInterpolatedDerivatives());
  }

  @Test
  void firstStepIsTheOneAskedFor() {
    List<StepInterpolator> steps = new ArrayList<>();
    RosenbrockIntegrator integrator = integrator(RosenbrockMethod.RODAS4);
    integrator.setInitialStepSize(1e-4);
    integrator.addStepHandler(collector(steps));
    integrator.integrate(new FadingPull(), 0, new double[] {1}, 1.5, new double[1]);
    assertEquals(1e-4, steps.get(0).getCurrentTime(), 1e-18);
  }

  private static RosenbrockIntegrator integrator(RosenbrockMethod method) {
    return new RosenbrockIntegrator(method.tableau(), 0, 10, 1e-8, 1e-8);
  }

  private static void run(RosenbrockMethod method, StepHandler handler) {
    RosenbrockIntegrator integrator = integrator(method);
    integrator.addStepHandler(handler);
    integrator.integrate(new FadingPull(), 0, new double[] {1}, 1.5, new double[1]);
  }

  private static StepHandler collector(List<StepInterpolator> steps) {
    return new StepHandler() {
      @Override
      public void init(double t0, double[] y0, double t) {
        steps.clear();
      }

      @Override
      public void handleStep(StepInterpolator interpolator, boolean isLast) {
        steps.add(interpolator.copy());
      }
    };
  }
}
