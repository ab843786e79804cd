package holdcurve.physics.run;

import holdcurve.physics.network.Threshold;
import org.apache.commons.math3.ode.events.EventHandler;

/** Stops an integration where a valve changes its state. */
final class ThresholdEvent implements EventHandler {
  private final Threshold threshold;
  private boolean passed;

  ThresholdEvent(Threshold threshold) {
    this.threshold = threshold;
  }

  Threshold threshold() {
    return threshold;
  }

  /** Whether the last integration ended here. */
  boolean passed() {
    return passed;
  }

  @Override
  public void init(double t0, double[] y0, double t) {
    passed = false;
  }

  @Override
  public double g(double t, double[] y) {
    return threshold.beyond(y);
  }

  @Override
  public Action eventOccurred(double t, double[] y, boolean increasing) {
    passed = increasing;
    return increasing ? Action.STOP : Action.CONTINUE;
  }

  @Override
  public void resetState(double t, double[] y) {
    throw new IllegalStateException("a threshold changes no state");
  }
}
