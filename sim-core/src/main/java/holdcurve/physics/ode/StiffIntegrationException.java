package holdcurve.physics.ode;

import holdcurve.common.work.ComputationException;
import java.util.Locale;

/**
 * An integration that can't go on. It says when and in which component of the state, so that a
 * caller who knows what the component means (which node, which element) can add the name.
 */
public final class StiffIntegrationException extends ComputationException {

  /** What went wrong. */
  public enum Reason {
    /** A state, a derivative or an entry of the Jacobian is infinite or not a number. */
    NOT_FINITE("is not finite"),
    /** The error stays above the tolerance down to the smallest step allowed. */
    STEP_TOO_SMALL("can't be followed within the tolerance"),
    /** The matrix I/(hγ) − J has no inverse at any step tried. */
    SINGULAR("has no pivot: the linear system of the step is singular"),
    /** The limit on the number of steps was reached; the component is the one of largest error. */
    TOO_MANY_STEPS("still holds the steps short when their number reached its limit");

    private final String text;

    Reason(String text) {
      this.text = text;
    }
  }

  private final Reason reason;
  private final double time;
  private final double step;
  private final int component;

  StiffIntegrationException(Reason reason, double time, double step, int component) {
    super(message(reason, time, step, component), null);
    this.reason = reason;
    this.time = time;
    this.step = step;
    this.component = component;
  }

  private static String message(Reason reason, double time, double step, int component) {
    return String.format(
        Locale.ROOT,
        "component %d of the state %s at time %.9g s (step %.3g s)",
        component,
        reason.text,
        time,
        step);
  }

  public Reason reason() {
    return reason;
  }

  /** Start of the step that failed [s]. */
  public double time() {
    return time;
  }

  /** Index of the offending component of the state, from 0. */
  public int component() {
    return component;
  }
}
