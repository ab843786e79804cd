package holdcurve.physics.run;

import holdcurve.physics.network.Network;
import holdcurve.physics.network.NetworkLayout;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.ode.sampling.StepHandler;
import org.apache.commons.math3.ode.sampling.StepInterpolator;

/** Notes gauge and pressures at given times, from one network after another. */
final class Sampler implements StepHandler {
  private final double[] times;
  private final double[] gauge;
  private final Map<String, double[]> pressures = new HashMap<>();
  private NetworkLayout layout;
  private int next;

  /**
   * @param times on the integrator's clock, ascending [s]
   */
  Sampler(double[] times, List<String> points) {
    this.times = times;
    this.gauge = new double[times.length];
    points.forEach(point -> pressures.put(point, new double[times.length]));
  }

  /** What is followed from now on. */
  void follow(Network network) {
    layout = network.layout();
  }

  @Override
  public void init(double t0, double[] y0, double t) {
    while (next < times.length && times[next] <= t0) {
      note(y0);
    }
  }

  @Override
  public void handleStep(StepInterpolator interpolator, boolean isLast) {
    double end = interpolator.getCurrentTime();
    while (next < times.length && times[next] <= end) {
      interpolator.setInterpolatedTime(times[next]);
      note(interpolator.getInterpolatedState());
    }
  }

  /** Notes what is left at the end of the run, where rounding may have put a time beyond it. */
  void finish(double[] y) {
    while (next < times.length) {
      note(y);
    }
  }

  private void note(double[] y) {
    gauge[next] = y[layout.gaugeRow()];
    pressures.forEach((point, values) -> values[next] = layout.node(point).pressure(y));
    next++;
  }

  double[] gauge() {
    return gauge;
  }

  Map<String, double[]> pressures() {
    return pressures;
  }
}
