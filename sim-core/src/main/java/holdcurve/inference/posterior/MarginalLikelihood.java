package holdcurve.inference.posterior;

import holdcurve.common.input.Cancellation;
import holdcurve.inference.evidence.Mode;
import holdcurve.inference.fit.Conditional;
import holdcurve.inference.fit.Fit;
import holdcurve.inference.fit.LinearGaussianProblem;
import holdcurve.inference.likelihood.HypothesisModel;
import holdcurve.inference.likelihood.JobModel;
import holdcurve.inference.likelihood.Latents;
import java.util.Comparator;
import java.util.List;

/**
 * The likelihood of a hypothesis over its sampled coordinates alone. The others are integrated out:
 * at each point the curves are made linear in them about the place where they are expected, which
 * leaves a Gaussian integral (Laplace's approximation of the conditional, as in Rue, Martino and
 * Chopin, J. R. Statist. Soc. B 71 (2009) 319).
 */
public final class MarginalLikelihood {
  /**
   * A fit this far behind the best lends no expectation: its neighbourhood is another's tail [nat].
   */
  private static final double BEHIND = 3;

  private final JobModel data;
  private final HypothesisModel model;
  private final Latents latents;
  private final int[] conditional;
  private final List<ExpansionPoint> centres;

  /**
   * @param fits at least one, the best first
   */
  public MarginalLikelihood(JobModel data, HypothesisModel model, List<Fit> fits) {
    this.data = data;
    this.model = model;
    latents = model.latentMap().latents();
    conditional = latents.conditional();
    centres =
        fits.stream()
            .filter(fit -> fit.logEvidence() >= fits.get(0).logEvidence() - BEHIND)
            .map(fit -> new ExpansionPoint(data, model, fit))
            .toList();
  }

  /** Number of sampled coordinates. */
  public int dimension() {
    return latents.dimension() - conditional.length;
  }

  /** Modes over the sampled coordinates, the best first. */
  public List<Mode> modes() {
    return centres.stream().map(ExpansionPoint::mode).toList();
  }

  /**
   * A point over all coordinates with its conditional.
   *
   * @param u all coordinates, the conditional ones at their posterior mean
   * @param conditional distribution of the conditional ones
   */
  public record Point(double[] u, Conditional conditional) {}

  /**
   * The conditional distribution at a point of the sampled coordinates, from curves simulated where
   * the conditional ones are predicted to lie; null where the model fails.
   */
  public Point at(double[] s) {
    Cancellation.check();
    Foreseen predicted = predict(s);
    return new ConditionalSearch(model, predicted.sensitivities(), conditional)
        .from(predicted.point().u());
  }

  /** Likewise, but from curves predicted: nothing is simulated. */
  public Point pointPredicted(double[] s) {
    return predict(s).point();
  }

  private record Foreseen(Point point, LinearGaussianProblem sensitivities) {}

  private Foreseen predict(double[] s) {
    ExpansionPoint centre = nearest(s);
    double[] u = centre.expected(s);
    Surrogate.Foreseen curves = centre.field().at(u);
    LinearGaussianProblem sensitivities = curves.sensitivities().scaled(model.scales(u));
    Conditional rest = sensitivities.about(Latents.pick(u, conditional), curves.residuals());
    Latents.put(u, conditional, rest.mean());
    return new Foreseen(new Point(u, rest), sensitivities);
  }

  private ExpansionPoint nearest(double[] s) {
    return centres.stream()
        .min(Comparator.comparingDouble(centre -> centre.mode().distance(s)))
        .orElseThrow();
  }

  /**
   * All coordinates of a posterior draw: the sampled ones as given, the rest drawn from their
   * conditional.
   */
  double[] complete(Point point, double[] normal) {
    double[] u = point.u().clone();
    Latents.put(u, conditional, point.conditional().draw(normal));
    return u;
  }

  int conditionalCount() {
    return conditional.length;
  }
}
