package holdcurve.advice.plan;

import java.util.List;
import java.util.Optional;

/**
 * The order of tests and repairs that costs least on average.
 *
 * @param currency of all costs
 * @param expectedCost of this order
 * @param withoutTests expected cost of the best order that only repairs
 * @param solved probability that the hold passes in the end [-]
 * @param unpriced names of repairs without a price
 * @param anyPrice whether any repair has a price; else the costs say nothing
 * @param first what to do first; absent where nothing on the list would help
 * @param assumptions plain sentences
 */
public record CostPlan(
    String currency,
    double expectedCost,
    double withoutTests,
    double solved,
    List<String> unpriced,
    boolean anyPrice,
    Optional<OrderNode> first,
    List<String> assumptions) {
  public CostPlan {
    unpriced = List.copyOf(unpriced);
    assumptions = List.copyOf(assumptions);
  }
}
