package holdcurve.fault;

import holdcurve.common.message.Message;
import holdcurve.physics.circuit.Unit;
import java.util.List;
import java.util.Objects;

/**
 * One number that says how bad a fault is.
 *
 * @param name plain words, such as "leak at 2 bar"; a pressure in it is given in bar
 * @param unit how it is shown
 * @param prior what is believed before any reading [SI]
 * @param source where the prior comes from: a publication, {@code common practice} or {@code
 *     assumed}
 * @param variesBetweenTests whether it may differ somewhat from one hold to the next, as a seat
 *     doesn't close twice the same way
 */
public record FaultParameter(
    String name, Unit unit, Prior prior, String source, boolean variesBetweenTests) {
  public FaultParameter {
    Objects.requireNonNull(name);
    Objects.requireNonNull(unit);
    Objects.requireNonNull(prior);
    Objects.requireNonNull(source);
  }

  /** The name, its pressures in the reader's unit. */
  public Message words() {
    return Message.stated(name);
  }

  /** The middle of what is believed of each before any reading, in their order [SI]. */
  public static double[] usual(List<FaultParameter> parameters) {
    return parameters.stream().mapToDouble(p -> p.prior().at(0)).toArray();
  }
}
