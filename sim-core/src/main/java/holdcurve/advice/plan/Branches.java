package holdcurve.advice.plan;

import holdcurve.common.message.Message;
import holdcurve.inference.hypothesis.Hypothesis;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Beliefs after an outcome. */
final class Branches {
  private Branches() {}

  /**
   * @param chances hypothesis, outcome → probability of the outcome [-]
   * @param o which outcome
   */
  static Branch of(OpenHypotheses futures, Message said, double[][] chances, int o) {
    double[] prior = futures.prior();
    double total = 0;
    for (int h = 0; h < prior.length; h++) {
      total += prior[h] * chances[h][o];
    }
    List<Branch.Share> shares = new ArrayList<>();
    for (int h = 0; h < prior.length; h++) {
      Hypothesis hypothesis = futures.hypothesis(h);
      double after = total > 0 ? prior[h] * chances[h][o] / total : 0;
      shares.add(new Branch.Share(hypothesis.id(), hypothesis.name(), after));
    }
    shares.sort(Comparator.comparingDouble(Branch.Share::probability).reversed());
    return new Branch(said, total, shares);
  }
}
