package holdcurve.ui.command;

import holdcurve.circuit.Circuit;
import holdcurve.infer.Beliefs;
import holdcurve.infer.Progress;
import holdcurve.pass.PassLimit;
import holdcurve.plan.CheapestOrder;
import holdcurve.plan.CostPlan;
import holdcurve.plan.Planner;
import holdcurve.whatif.PriceList;
import holdcurve.whatif.RepairChances;
import java.util.function.Function;

/** What repairs on a list are worth for a job. */
record Offers(PriceList prices, PassLimit limit, RepairChances chances, CostPlan order) {
  static Offers of(
      Beliefs beliefs, PriceList prices, Function<Circuit, PassLimit> limits, long seed) {
    Circuit circuit = beliefs.job().circuit();
    PassLimit limit = limits.apply(circuit);
    RepairChances chances =
        new RepairChances(beliefs.beliefs(), circuit, limit, prices.offers(), seed);
    CostPlan order = CheapestOrder.of(Planner.plan(beliefs, seed, Progress.NONE), chances, prices);
    return new Offers(prices, limit, chances, order);
  }
}
