package holdcurve.advice.plan;

import holdcurve.common.message.Message;
import java.util.List;
import java.util.Optional;

/**
 * Something to do, and what to do after each of its outcomes.
 *
 * @param action in plain words
 * @param isTest whether it is a test rather than a repair
 * @param cost of doing it, the hold that proves a repair included
 * @param priced whether the user said so; else it is what the dearest repair costs
 * @param branches its outcomes
 */
public record OrderNode(
    String action, boolean isTest, double cost, boolean priced, List<Next> branches) {
  /**
   * An outcome.
   *
   * @param said what it shows
   * @param probability that it comes to this [-]
   * @param then what to do; absent where nothing is left to do
   */
  public record Next(Message said, double probability, Optional<OrderNode> then) {
    /** What it shows, with pressures in bar. */
    public String outcome() {
      return said.toString();
    }
  }

  public OrderNode {
    branches = List.copyOf(branches);
  }
}
