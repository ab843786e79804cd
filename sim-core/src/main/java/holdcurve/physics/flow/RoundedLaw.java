package holdcurve.physics.flow;

import holdcurve.common.input.Require;
import java.util.Objects;

/**
 * A law in proportion to the difference where that is too small to matter: Q = Q₀(r) d/r with r =
 * √(d² + L²). Far above L it is Q₀, less a part of L²/d²; a law in proportion stays what it is.
 *
 * <p>Newton's step towards no difference on a square root lands as far on the other side, and so do
 * the steps of a linearly implicit method. Where the true difference lies far below the error
 * allowed, as in a wide line through which little flows, such steps go on for ever without growing.
 *
 * @param inner Q₀
 * @param width L [Pa]
 */
public record RoundedLaw(FlowLaw inner, double width) implements FlowLaw {
  public RoundedLaw {
    Objects.requireNonNull(inner);
    Require.positive(width, "width", "Pa");
  }

  @Override
  public double flow(double difference) {
    double felt = Math.sqrt(difference * difference + width * width);
    return inner.flow(felt) * (difference / felt);
  }

  @Override
  public double slope(double difference) {
    double square = difference * difference + width * width;
    double felt = Math.sqrt(square);
    double share = difference * difference / square;
    return inner.flow(felt) / felt * (1 - share) + inner.slope(felt) * share;
  }
}
