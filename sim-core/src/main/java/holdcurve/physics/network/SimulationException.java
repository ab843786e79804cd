package holdcurve.physics.network;

import holdcurve.common.work.ComputationException;
import holdcurve.physics.ode.StiffIntegrationException;
import java.util.Locale;

/**
 * A circuit whose equations can't be followed. The message is a sentence for the person who
 * described it: where in the circuit, when, and what to look at.
 */
public final class SimulationException extends ComputationException {
  private SimulationException(String message, Throwable cause) {
    super(message, cause);
  }

  /**
   * @param circuit what its owner calls it
   * @param network whose equations they are
   */
  public static SimulationException of(
      StiffIntegrationException e, String circuit, Network network) {
    String where = network.layout().describe(e.component());
    String sentence =
        String.format(
            Locale.ROOT,
            "%s can't be simulated beyond %s: the %s changes too fast to follow; look at the"
                + " values stated for the parts there and for those that join them.",
            circuit,
            moment(e.time()),
            where);
    return new SimulationException(sentence, e);
  }

  /** A valve that opens and shuts without end. */
  public static SimulationException restless(String circuit, String valve, double time) {
    String sentence =
        String.format(
            Locale.ROOT,
            "%s can't be simulated beyond %s: '%s' opens and shuts without end; look at its"
                + " values and at those of the parts beside it.",
            circuit,
            moment(time),
            valve);
    return new SimulationException(sentence, null);
  }

  /** More pressure than a circuit holds together under. */
  static SimulationException bursting(String circuit, String point, double time, double most) {
    String sentence =
        String.format(
            Locale.ROOT,
            "%s can't be simulated beyond %s: the pressure at %s climbs past %.0f bar, more"
                + " than hoses and joints hold; fuel that is shut in and warms rises by several bar"
                + " for each kelvin where no hose, damper or trapped air gives: look at the"
                + " temperatures, the clamps and the values stated for those.",
            circuit,
            moment(time),
            point,
            most / 1e5);
    return new SimulationException(sentence, null);
  }

  private static String moment(double time) {
    double size = Math.abs(time);
    String seconds = String.format(Locale.ROOT, size < 1000 ? "%.3g s" : "%.0f s", size);
    return time < 0 ? seconds + " before the pump stop" : seconds;
  }
}
