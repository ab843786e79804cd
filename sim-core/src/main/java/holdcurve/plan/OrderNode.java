package holdcurve.plan;

import java.util.List;
import java.util.Optional;

/**
 * Something to do, and what to do after each of its outcomes.
 *
 * @param action in plain words
 * @param isTest whether it is a test rather than a repair
 * @param cost of doing it, the hold that proves a repair included
 * @param branches its outcomes
 */
public record OrderNode(String action, boolean isTest, double cost, List<Next> branches) {
  /**
   * An outcome.
   *
   * @param outcome in plain words
   * @param probability that it comes to this [-]
   * @param then what to do; absent where nothing is left to do
   */
  public record Next(String outcome, double probability, Optional<OrderNode> then) {}

  public OrderNode {
    branches = List.copyOf(branches);
  }
}
