package holdcurve.physics.run;

import holdcurve.physics.network.Network;
import holdcurve.physics.network.PressureLimit;
import org.apache.commons.math3.ode.sampling.StepHandler;
import org.apache.commons.math3.ode.sampling.StepInterpolator;

/** Breaks a run off where a pressure passes what a circuit holds. */
record LimitHandler(String circuit, Network network) implements StepHandler {
  @Override
  public void init(double t0, double[] y0, double t) {
    PressureLimit.check(circuit, network, t0, y0);
  }

  @Override
  public void handleStep(StepInterpolator interpolator, boolean isLast) {
    double time = interpolator.getCurrentTime();
    interpolator.setInterpolatedTime(time);
    PressureLimit.check(circuit, network, time, interpolator.getInterpolatedState());
  }
}
