package holdcurve.advice.plan;

import holdcurve.advice.whatif.PriceList;
import holdcurve.advice.whatif.RepairChances;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Looks for the order of tests and repairs that costs least on average: up to two tests first,
 * chosen by what each outcome would lead to, then repairs in their cheapest order.
 */
public final class CheapestOrder {
  private static final int MOST_TESTS = 2;

  /** A hold proves each repair; the limits of the trade ask for no more than this [min]. */
  private static final double CHECK_MINUTES = HoldWords.PREPARE + 5;

  private final PriceList prices;
  private final RepairOrder repairs;
  private final List<Tried> tests = new ArrayList<>();
  private final double[] prior;

  /**
   * A test as its outcomes stand to the hypotheses.
   *
   * @param chance outcome, hypothesis → probability of the outcome [-]
   */
  private record Tried(PlannedTest test, double cost, double[][] chance) {}

  /** A best way on. */
  private record Way(double cost, double solved, Optional<OrderNode> first) {}

  private CheapestOrder(Plan plan, RepairChances chances, PriceList prices) {
    this.prices = prices;
    this.repairs = new RepairOrder(chances, prices, prices.time(CHECK_MINUTES));
    this.prior =
        repairs.hypotheses().stream().mapToDouble(id -> chances.probabilities().get(id)).toArray();
    for (PlannedTest test : plan.tests()) {
      if (!test.branches().isEmpty()) {
        tests.add(tried(test));
      }
    }
  }

  /**
   * @param chances of every repair on the list
   */
  public static CostPlan of(Plan plan, RepairChances chances, PriceList prices) {
    return new CheapestOrder(plan, chances, prices).costPlan();
  }

  private Tried tried(PlannedTest test) {
    double[][] chance = new double[test.branches().size()][prior.length];
    for (int o = 0; o < chance.length; o++) {
      Branch branch = test.branches().get(o);
      Map<String, Double> believed = new HashMap<>();
      branch.believed().forEach(share -> believed.put(share.id(), share.probability()));
      for (int h = 0; h < prior.length; h++) {
        double after = believed.getOrDefault(repairs.hypotheses().get(h), prior[h]);
        chance[o][h] = prior[h] > 0 ? branch.probability() * after / prior[h] : 0;
      }
    }
    for (int h = 0; h < prior.length; h++) {
      normalise(chance, h);
    }
    return new Tried(test, prices.time(test.procedure().minutes()), chance);
  }

  private static void normalise(double[][] chance, int h) {
    double sum = 0;
    for (double[] row : chance) {
      sum += row[h];
    }
    for (double[] row : chance) {
      row[h] = sum > 0 ? row[h] / sum : 1.0 / chance.length;
    }
  }

  private CostPlan costPlan() {
    RepairOrder.Solution plain = repairs.new Solution(prior);
    Way best = way(prior, MOST_TESTS, new HashSet<>());
    return new CostPlan(
        prices.currency(),
        best.cost(),
        plain.cost(),
        best.solved(),
        prices.unpriced(),
        prices.unpriced().size() < prices.offers().size(),
        best.first(),
        assumptions());
  }

  private List<String> assumptions() {
    return List.of(
        "The hold falls short now. Hold for five minutes after each repair, and stop once it passes.",
        "At most "
            + MOST_TESTS
            + " tests are done before any repair. Their outcomes are taken as independent.",
        prices.perHour() > 0
            ? String.format(
                    Locale.ROOT,
                    "An hour of work counts %.2f %s.",
                    prices.perHour(),
                    prices.currency())
                .replace(" .", ".")
            : "Your own time counts nothing. State a price of an hour to change that.",
        "A repair is taken to cure its fault for certain.");
  }

  private Way way(double[] belief, int testsLeft, Set<Tried> used) {
    RepairOrder.Solution plain = repairs.new Solution(belief);
    Way best = new Way(plain.cost(), plain.solved(), plain.first());
    if (testsLeft == 0 || plain.first().isEmpty()) {
      return best;
    }
    for (Tried test : tests) {
      if (!used.contains(test) && test.cost() < best.cost()) {
        used.add(test);
        Way other = tested(belief, test, testsLeft - 1, used);
        used.remove(test);
        best = other.cost() < best.cost() - 1e-9 ? other : best;
      }
    }
    return best;
  }

  private Way tested(double[] belief, Tried test, int testsLeft, Set<Tried> used) {
    double cost = test.cost();
    double solved = 0;
    List<OrderNode.Next> branches = new ArrayList<>();
    for (int o = 0; o < test.chance().length; o++) {
      double[] after = new double[belief.length];
      double p = 0;
      for (int h = 0; h < belief.length; h++) {
        after[h] = belief[h] * test.chance()[o][h];
        p += after[h];
      }
      for (int h = 0; h < belief.length; h++) {
        after[h] /= Math.max(p, 1e-300);
      }
      Way then = way(after, testsLeft, used);
      cost += p * then.cost();
      solved += p * then.solved();
      branches.add(new OrderNode.Next(test.test().branches().get(o).said(), p, then.first()));
    }
    String name = test.test().procedure().name();
    return new Way(
        cost, solved, Optional.of(new OrderNode(name, true, test.cost(), true, branches)));
  }
}
