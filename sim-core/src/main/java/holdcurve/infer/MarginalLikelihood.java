package holdcurve.infer;

import holdcurve.check.Cancellation;
import holdcurve.evidence.Mode;
import java.util.Comparator;
import java.util.List;

/**
 * The likelihood of a hypothesis over its sampled coordinates alone. The others are integrated out:
 * at each point the curves are made linear in them about the place where they are expected, which
 * leaves a Gaussian integral (Laplace's approximation of the conditional, as in Rue, Martino and
 * Chopin, J. R. Statist. Soc. B 71 (2009) 319).
 */
final class MarginalLikelihood {
  /**
   * A fit this far behind the best lends no expectation: its neighbourhood is another's tail [nat].
   */
  private static final double BEHIND = 3;

  private final JobModel data;
  private final HypothesisModel model;
  private final Latents latents;
  private final int[] conditional;
  private final List<Centre> centres;

  /**
   * @param fits at least one, the best first
   */
  MarginalLikelihood(JobModel data, HypothesisModel model, List<Fit> fits) {
    this.data = data;
    this.model = model;
    latents = model.realisation().latents();
    conditional = latents.conditional();
    centres =
        fits.stream()
            .filter(fit -> fit.logEvidence() >= fits.get(0).logEvidence() - BEHIND)
            .map(fit -> new Centre(data, model, fit))
            .toList();
  }

  /** Number of sampled coordinates. */
  int dimension() {
    return latents.dimension() - conditional.length;
  }

  /** Modes over the sampled coordinates, the best first. */
  List<Mode> modes() {
    return centres.stream().map(Centre::mode).toList();
  }

  /**
   * A point over all coordinates with its conditional.
   *
   * @param u all coordinates, the conditional ones at their posterior mean
   * @param conditional distribution of the conditional ones
   */
  record Point(double[] u, Conditional conditional) {}

  /**
   * The conditional distribution at a point of the sampled coordinates, from curves simulated where
   * the conditional ones are foreseen to lie; null where the model fails.
   */
  Point at(double[] s) {
    Cancellation.check();
    Foreseen foreseen = foresee(s);
    return new ConditionalSearch(model, foreseen.slopes(), conditional).from(foreseen.point().u());
  }

  /** Likewise, but from curves foreseen: nothing is simulated. */
  Point pointForeseen(double[] s) {
    return foresee(s).point();
  }

  private record Foreseen(Point point, ScaledSlopes slopes) {}

  private Foreseen foresee(double[] s) {
    Centre centre = nearest(s);
    double[] u = centre.expected(s);
    CurveField.Foreseen curves = centre.field().at(u);
    ScaledSlopes slopes = curves.slopes().scaled(model.scales(u));
    Conditional rest = slopes.about(Latents.pick(u, conditional), curves.departures());
    Latents.put(u, conditional, rest.mean());
    return new Foreseen(new Point(u, rest), slopes);
  }

  private Centre nearest(double[] s) {
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
