package holdcurve.infer;

import holdcurve.check.Cancellation;
import holdcurve.evidence.LogLikelihood;
import holdcurve.evidence.Mode;
import java.util.Comparator;
import java.util.List;

/**
 * The likelihood of a hypothesis over its sampled coordinates alone. The others are integrated out:
 * at each point the curves are made linear in them about the place where they are expected, which
 * leaves a Gaussian integral (Laplace's approximation of the conditional, as in Rue, Martino and
 * Chopin, J. R. Statist. Soc. B 71 (2009) 319).
 */
final class MarginalLikelihood implements LogLikelihood {
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

  @Override
  public int dimension() {
    return latents.dimension() - conditional.length;
  }

  /** Modes over the sampled coordinates, for the proposals. */
  List<Mode> modes() {
    return centres.stream().map(Centre::mode).toList();
  }

  @Override
  public double logLikelihood(double[] s) {
    Point point = at(s);
    return point == null ? Double.NEGATIVE_INFINITY : point.logLikelihood();
  }

  /**
   * A point over all coordinates with its conditional.
   *
   * @param u all coordinates, the conditional ones at their posterior mean
   * @param conditional distribution of the conditional ones
   */
  record Point(double[] u, Conditional conditional) {
    /** With the conditional coordinates integrated out [nat]. */
    double logLikelihood() {
      return conditional.logMarginal();
    }
  }

  /**
   * The conditional distribution at a point of the sampled coordinates, from curves simulated where
   * the conditional ones are foreseen to lie; null where the model fails.
   */
  Point at(double[] s) {
    Cancellation.check();
    Foreseen foreseen = foresee(s);
    return search(foreseen.slopes()).from(foreseen.point().u());
  }

  private ConditionalSearch search(ScaledSlopes slopes) {
    return new ConditionalSearch(model, slopes, conditional);
  }

  /** Likewise, but from curves foreseen: nothing is simulated. */
  Point pointForeseen(double[] s) {
    return foresee(s).point();
  }

  /** This likelihood from curves foreseen. */
  LogLikelihood foreseen() {
    return new LogLikelihood() {
      @Override
      public int dimension() {
        return MarginalLikelihood.this.dimension();
      }

      @Override
      public double logLikelihood(double[] s) {
        return pointForeseen(s).logLikelihood();
      }
    };
  }

  /**
   * A look at what was foreseen.
   *
   * @param excess log likelihood from simulated curves less that from foreseen ones; negative
   *     infinity where the model fails [nat]
   * @param learn takes the simulated curves in
   */
  record Check(double excess, Runnable learn) {}

  /** Simulates where curves were foreseen. */
  Check check(double[] s) {
    Foreseen foreseen = foresee(s);
    ConditionalSearch search = search(foreseen.slopes());
    Point point = search.from(foreseen.point().u());
    if (point == null) {
      return new Check(Double.NEGATIVE_INFINITY, () -> {});
    }
    CurveField field = nearest(s).field();
    return new Check(
        point.logLikelihood() - foreseen.point().logLikelihood(),
        () -> field.learn(search.place(), search.departures()));
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
