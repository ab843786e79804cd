package holdcurve.physics.flow;

import java.util.Objects;

/**
 * Two passages side by side: their flows add.
 *
 * @param first one passage
 * @param second the other
 */
public record ParallelLaw(FlowLaw first, FlowLaw second) implements FlowLaw {
  public ParallelLaw {
    Objects.requireNonNull(first);
    Objects.requireNonNull(second);
  }

  @Override
  public double flow(double difference) {
    return first.flow(difference) + second.flow(difference);
  }

  @Override
  public double slope(double difference) {
    return first.slope(difference) + second.slope(difference);
  }
}
