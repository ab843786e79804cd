package holdcurve.ui.command;

import holdcurve.advice.plan.CheapestOrder;
import holdcurve.advice.plan.CostPlan;
import holdcurve.advice.plan.Planner;
import holdcurve.advice.whatif.PriceList;
import holdcurve.advice.whatif.RepairChances;
import holdcurve.common.work.Progress;
import holdcurve.inference.posterior.Posterior;
import holdcurve.physics.circuit.Circuit;
import holdcurve.record.limit.PassLimit;
import java.util.function.Function;

/** What repairs on a list are worth for a job. */
record Offers(PriceList prices, PassLimit limit, RepairChances chances, CostPlan order) {
  static Offers of(
      Posterior posterior, PriceList prices, Function<Circuit, PassLimit> limits, long seed) {
    Circuit circuit = posterior.job().circuit();
    PassLimit limit = limits.apply(circuit);
    RepairChances chances =
        new RepairChances(posterior.posterior(), circuit, limit, prices.offers(), seed);
    CostPlan order =
        CheapestOrder.of(Planner.plan(posterior, seed, Progress.NONE), chances, prices);
    return new Offers(prices, limit, chances, order);
  }
}
