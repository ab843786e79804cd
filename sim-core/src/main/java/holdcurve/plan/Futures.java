package holdcurve.plan;

import holdcurve.infer.Belief;
import holdcurve.infer.Beliefs;
import holdcurve.infer.Hypothesis;
import holdcurve.infer.Possibility;
import holdcurve.infer.ReadingScatter;
import java.util.List;

/**
 * The hypotheses that are still open, with ways in which each may be true. Their probabilities add
 * up to 1; what is left out is too unlikely to be worth a test.
 */
final class Futures {
  private final Beliefs beliefs;
  private final List<Belief> open;
  private final double[] prior;

  Futures(Beliefs beliefs) {
    this.beliefs = beliefs;
    this.open = beliefs.beliefs().stream().filter(b -> b.possibilities().size() > 3).toList();
    double sum = open.stream().mapToDouble(Belief::probability).sum();
    this.prior = open.stream().mapToDouble(b -> b.probability() / sum).toArray();
  }

  Beliefs beliefs() {
    return beliefs;
  }

  /** Power at which readings will count once there is one more test [-]. */
  double power() {
    return beliefs.powerWithOneMore();
  }

  int count() {
    return prior.length;
  }

  /** Probabilities [-]. */
  double[] prior() {
    return prior.clone();
  }

  List<Hypothesis> hypotheses() {
    return open.stream().map(Belief::hypothesis).toList();
  }

  Hypothesis hypothesis(int h) {
    return open.get(h).hypothesis();
  }

  List<Possibility> draws(int h) {
    return open.get(h).possibilities();
  }

  /** Scatter of readings, its squares averaged over all draws; without an offset. */
  ReadingScatter scatter() {
    double deviation = 0;
    double modelError = 0;
    for (int h = 0; h < count(); h++) {
      for (Possibility draw : draws(h)) {
        double weight = prior[h] / draws(h).size();
        deviation += weight * Math.pow(draw.scatter().deviation(), 2);
        modelError += weight * Math.pow(draw.scatter().modelError(), 2);
      }
    }
    return new ReadingScatter(0, Math.sqrt(deviation), Math.sqrt(modelError));
  }
}
