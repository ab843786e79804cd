package holdcurve.physics.flow;

import holdcurve.common.input.Require;
import java.util.Objects;

/**
 * A law whose flow grows a little faster or slower with pressure than its textbook form, while it
 * passes the same at a reference pressure: Q = Q₀(d) ((d² + ε²)/(p² + ε²))^(b/2). Far above ε its
 * exponent is that of Q₀ plus b.
 *
 * @param inner Q₀
 * @param bend b [-], -0.4 to 0.6, so that the exponents of the usual laws stay positive
 * @param reference p, where both laws pass the same [Pa]
 */
public record BentLaw(FlowLaw inner, double bend, double reference) implements FlowLaw {
  /** ε: below this the law keeps its textbook form [Pa]. */
  private static final double SMALL = 5e3;

  public BentLaw {
    Objects.requireNonNull(inner);
    Require.within(bend, -0.4, 0.6, "bend", "-");
    Require.positive(reference, "reference pressure", "Pa");
  }

  @Override
  public double flow(double difference) {
    return inner.flow(difference) * factor(difference);
  }

  @Override
  public double slope(double difference) {
    double byFactor = bend * difference / (difference * difference + SMALL * SMALL);
    return factor(difference) * (inner.slope(difference) + inner.flow(difference) * byFactor);
  }

  private double factor(double difference) {
    double ratio =
        (difference * difference + SMALL * SMALL) / (reference * reference + SMALL * SMALL);
    return Math.pow(ratio, bend / 2);
  }
}
