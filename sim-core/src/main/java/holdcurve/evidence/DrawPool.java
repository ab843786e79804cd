package holdcurve.evidence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.random.RandomGenerator;

/**
 * Importance draws, each weighted against the mixture of everything drawn from.
 *
 * <p>Multiple importance sampling with the deterministic-mixture denominator (Owen and Zhou,
 * Journal of the American Statistical Association 95 (2000) 135). Every component gets a fixed
 * number of mirrored pairs, spread evenly over its radius, so the components are strata.
 */
final class DrawPool {
  private record Stratum(Component component, int firstDraw, int pairs) {}

  private final CountedLikelihood likelihood;
  private final RandomGenerator random;
  private final List<Stratum> strata = new ArrayList<>();
  private final List<double[]> draws = new ArrayList<>();
  private double[] logTarget = new double[0];

  /** ln Σ over strata of draws × density, at each draw. */
  private double[] logProposal = new double[0];

  DrawPool(CountedLikelihood likelihood, RandomGenerator random) {
    this.likelihood = likelihood;
    this.random = random;
  }

  /** Draws about {@code count} more from a mixture. */
  void add(Mixture mixture, int count) {
    int[] pairs = mixture.pairs(count);
    List<Stratum> freshStrata = new ArrayList<>();
    List<double[]> freshDraws = new ArrayList<>();
    for (int k = 0; k < pairs.length; k++) {
      Component component = mixture.components().get(k);
      freshStrata.add(new Stratum(component, draws.size() + freshDraws.size(), pairs[k]));
      for (int i = 0; i < pairs[k]; i++) {
        double share = (i + random.nextDouble()) / pairs[k];
        freshDraws.addAll(Arrays.asList(component.mirroredPair(random, share)));
      }
    }
    double[] freshTarget =
        freshDraws.stream()
            .mapToDouble(u -> likelihood.logLikelihood(u) + LogSum.standardNormal(u))
            .toArray();
    append(freshStrata, freshDraws, freshTarget);
  }

  /** Takes in the draws of another pool; none of the likelihood calls are repeated. */
  void absorb(DrawPool other) {
    List<Stratum> moved =
        other.strata.stream()
            .map(s -> new Stratum(s.component, s.firstDraw + draws.size(), s.pairs))
            .toList();
    append(moved, other.draws, other.logTarget);
  }

  private void append(List<Stratum> newStrata, List<double[]> newDraws, double[] newTarget) {
    int old = draws.size();
    draws.addAll(newDraws);
    grow();
    System.arraycopy(newTarget, 0, logTarget, old, newTarget.length);
    for (int i = 0; i < draws.size(); i++) {
      if (i >= old) {
        addDensities(i, strata);
      }
      addDensities(i, newStrata);
    }
    strata.addAll(newStrata);
  }

  private void grow() {
    int old = logTarget.length;
    logTarget = Arrays.copyOf(logTarget, draws.size());
    logProposal = Arrays.copyOf(logProposal, draws.size());
    Arrays.fill(logProposal, old, logProposal.length, Double.NEGATIVE_INFINITY);
  }

  private void addDensities(int i, List<Stratum> some) {
    for (Stratum stratum : some) {
      double density = stratum.component.logDensity(draws.get(i));
      logProposal[i] = LogSum.of(logProposal[i], Math.log(2 * stratum.pairs) + density);
    }
  }

  /** Whether {@link #hessianAt} may be asked. */
  boolean hasSlopes() {
    return likelihood.residualForm() != null;
  }

  /** Gauss–Newton Hessian of the negative log posterior at a draw [-]. */
  double[][] hessianAt(double[] u) {
    double[] residuals = new double[likelihood.residualForm().residualCount()];
    double logLikelihood = likelihood.residuals(u, residuals);
    return ResidualSlope.at(likelihood, u, residuals, logLikelihood).hessian();
  }

  int size() {
    return draws.size();
  }

  List<double[]> draws() {
    return draws;
  }

  /** Log weights whose sum is the evidence. */
  double[] logWeights() {
    double[] out = new double[draws.size()];
    for (int i = 0; i < out.length; i++) {
      out[i] = logTarget[i] - logProposal[i];
    }
    return out;
  }

  double logEvidence() {
    return LogSum.of(logWeights());
  }

  /** Effective sample size 1/Σw² [-]. */
  double sampleSize() {
    return 1 / LogSum.squaredNorm(weights());
  }

  double[] weights() {
    return LogSum.normalised(logWeights());
  }

  /**
   * Standard error of the log evidence [nat].
   *
   * <p>Pairs of a stratum are ordered by radius, one to a radial layer; differences of neighbours
   * bound the variance within layers from above (Cochran, "Sampling Techniques", 3rd ed. 1977,
   * chapter 5A, from memory). Where the tail is heavy, one more draw as heavy as the heaviest is
   * allowed for: our own caution, in full from k̂ = 0.3 on, since errors are judged too small just
   * when such a draw is missing.
   */
  double standardError() {
    double[] weights = weights();
    double variance = strata.stream().mapToDouble(s -> variance(s, weights)).sum();
    double heaviest = Arrays.stream(weights).max().orElse(0);
    double caution = Math.min(1, Math.max(0, ParetoTail.ofWeights(logWeights()) / 0.3));
    return Math.sqrt(variance + caution * heaviest * heaviest);
  }

  private static double variance(Stratum stratum, double[] weights) {
    double differences = 0;
    for (int j = 1; j < stratum.pairs; j++) {
      int i = stratum.firstDraw + 2 * j;
      double rise = weights[i] + weights[i + 1] - weights[i - 2] - weights[i - 1];
      differences += rise * rise;
    }
    return 0.5 * differences * stratum.pairs / (stratum.pairs - 1);
  }

  /** Share of each component of a mixture in the density at each draw, draws by components [-]. */
  double[][] responsibilities(Mixture mixture) {
    int k = mixture.weights().length;
    double[][] out = new double[draws.size()][k];
    for (int i = 0; i < out.length; i++) {
      for (int j = 0; j < k; j++) {
        double density = mixture.components().get(j).logDensity(draws.get(i));
        out[i][j] = Math.log(mixture.weights()[j]) + density;
      }
      out[i] = LogSum.normalised(out[i]);
    }
    return out;
  }
}
