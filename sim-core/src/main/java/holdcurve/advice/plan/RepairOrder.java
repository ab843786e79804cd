package holdcurve.advice.plan;

import holdcurve.advice.whatif.PriceList;
import holdcurve.advice.whatif.RepairChances;
import holdcurve.common.message.Message;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The cheapest order of repairs under given beliefs: each is followed by a hold, and the first that
 * passes ends it. Exact, by working back from the set of all repairs: V(S) = min_r c_r +
 * F(S∪r)/F(S) V(S∪r), with F(S) the probability that the hold fails after the repairs S.
 */
final class RepairOrder {
  /** Repairs that would help with less than this share of what still fails are not tried [-]. */
  private static final double HOPELESS = 0.02;

  private final List<String> hypotheses;
  private final double[][] fails;
  private final double[] cost;
  private final List<String> names;
  private final boolean[] priced;

  RepairOrder(RepairChances chances, PriceList prices, double check) {
    hypotheses = List.copyOf(chances.probabilities().keySet());
    int sets = 1 << chances.offers().size();
    fails = new double[hypotheses.size()][sets];
    for (int h = 0; h < fails.length; h++) {
      String id = hypotheses.get(h);
      Arrays.setAll(fails[h], done -> chances.fails(id, done));
    }
    cost = chances.offers().stream().mapToDouble(o -> prices.cost(o) + check).toArray();
    names = chances.offers().stream().map(o -> o.name()).toList();
    priced = new boolean[names.size()];
    for (int r = 0; r < priced.length; r++) {
      priced[r] = chances.offers().get(r).isPriced();
    }
  }

  List<String> hypotheses() {
    return hypotheses;
  }

  /** The cheapest order for one set of beliefs. */
  final class Solution {
    private final double[] failing;
    private final double[] value;
    private final int[] next;

    /**
     * @param belief probability of each hypothesis [-]
     */
    Solution(double[] belief) {
      int sets = fails[0].length;
      failing = new double[sets];
      value = new double[sets];
      next = new int[sets];
      for (int done = 0; done < sets; done++) {
        for (int h = 0; h < belief.length; h++) {
          failing[done] += belief[h] * fails[h][done];
        }
      }
      for (int done = sets - 1; done >= 0; done--) {
        choose(done);
      }
    }

    private void choose(int done) {
      next[done] = -1;
      double all = failing[failing.length - 1];
      if (failing[done] <= 0 || failing[done] - all < HOPELESS * failing[done]) {
        return;
      }
      value[done] = Double.POSITIVE_INFINITY;
      for (int r = 0; r < cost.length; r++) {
        int then = done | 1 << r;
        if (then != done && failing[done] - failing[then] > 1e-9) {
          double total = cost[r] + failing[then] / failing[done] * value[then];
          if (total < value[done]) {
            value[done] = total;
            next[done] = r;
          }
        }
      }
      if (next[done] < 0) {
        value[done] = 0;
      }
    }

    /** Expected cost, given that the hold fails now. */
    double cost() {
      return value[0];
    }

    /** Probability that the hold passes in the end, given that it fails now [-]. */
    double solved() {
      int done = 0;
      while (next[done] >= 0) {
        done |= 1 << next[done];
      }
      return failing[0] > 0 ? 1 - failing[done] / failing[0] : 1;
    }

    /** Probability that the hold fails now [-]. */
    double failing() {
      return failing[0];
    }

    Optional<OrderNode> first() {
      return node(0);
    }

    private Optional<OrderNode> node(int done) {
      int repair = next[done];
      if (repair < 0) {
        return Optional.empty();
      }
      int then = done | 1 << repair;
      double on = failing[then] / failing[done];
      return Optional.of(
          new OrderNode(
              names.get(repair),
              false,
              cost[repair],
              priced[repair],
              List.of(
                  new OrderNode.Next(Message.plain("the hold passes"), 1 - on, Optional.empty()),
                  new OrderNode.Next(Message.plain("it doesn't"), on, node(then)))));
    }
  }
}
