package holdcurve.model;

import holdcurve.ode.StiffIntegrationException;
import java.util.Locale;

/**
 * A circuit whose equations can't be followed. The message is a sentence for the person who
 * described it: where in the circuit, when, and what to look at.
 */
public final class SimulationException extends RuntimeException {
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
            "%s can't be simulated beyond %.3g s: the %s changes too fast to follow; look at the"
                + " values stated for the parts there and for those that join them.",
            circuit,
            e.time(),
            where);
    return new SimulationException(sentence, e);
  }

  /** A valve that opens and shuts without end. */
  public static SimulationException restless(String circuit, String valve, double time) {
    String sentence =
        String.format(
            Locale.ROOT,
            "%s can't be simulated beyond %.3g s: '%s' opens and shuts without end; look at its"
                + " values and at those of the parts beside it.",
            circuit,
            time,
            valve);
    return new SimulationException(sentence, null);
  }
}
