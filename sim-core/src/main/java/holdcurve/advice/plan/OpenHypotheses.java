package holdcurve.advice.plan;

import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.noise.ReadingScatter;
import holdcurve.inference.posterior.HypothesisPosterior;
import holdcurve.inference.posterior.Posterior;
import holdcurve.inference.posterior.PosteriorDraw;
import java.util.List;

/**
 * The hypotheses that are still open, with ways in which each may be true. Their probabilities add
 * up to 1; what is left out is too unlikely to be worth a test.
 */
final class OpenHypotheses {
  private final Posterior posterior;
  private final List<HypothesisPosterior> open;
  private final double[] prior;

  OpenHypotheses(Posterior posterior) {
    this.posterior = posterior;
    this.open = posterior.posterior().stream().filter(b -> b.posteriorDraws().size() > 3).toList();
    double sum = open.stream().mapToDouble(HypothesisPosterior::probability).sum();
    this.prior = open.stream().mapToDouble(b -> b.probability() / sum).toArray();
  }

  Posterior posterior() {
    return posterior;
  }

  /** Power at which readings will count once there is one more test [-]. */
  double power() {
    return posterior.powerWithOneMore();
  }

  int count() {
    return prior.length;
  }

  /** Probabilities [-]. */
  double[] prior() {
    return prior.clone();
  }

  List<Hypothesis> hypotheses() {
    return open.stream().map(HypothesisPosterior::hypothesis).toList();
  }

  Hypothesis hypothesis(int h) {
    return open.get(h).hypothesis();
  }

  List<PosteriorDraw> draws(int h) {
    return open.get(h).posteriorDraws();
  }

  /** Scatter of readings, its squares averaged over all draws; without an offset. */
  ReadingScatter scatter() {
    double deviation = 0;
    double modelError = 0;
    for (int h = 0; h < count(); h++) {
      for (PosteriorDraw draw : draws(h)) {
        double weight = prior[h] / draws(h).size();
        deviation += weight * Math.pow(draw.scatter().deviation(), 2);
        modelError += weight * Math.pow(draw.scatter().modelError(), 2);
      }
    }
    return new ReadingScatter(0, Math.sqrt(deviation), Math.sqrt(modelError));
  }
}
