package holdcurve.plan;

import java.util.List;
import java.util.Optional;

/**
 * The order of tests and repairs that costs least on average.
 *
 * @param currency of all costs
 * @param expectedCost of this order
 * @param withoutTests expected cost of the best order that only repairs
 * @param solved probability that the hold passes in the end [-]
 * @param first what to do first; absent where nothing on the list would help
 * @param assumptions plain sentences
 */
public record CostPlan(
    String currency,
    double expectedCost,
    double withoutTests,
    double solved,
    Optional<OrderNode> first,
    List<String> assumptions) {
  public CostPlan {
    assumptions = List.copyOf(assumptions);
  }
}
