package holdcurve.evidence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.stat.StatUtils;

/**
 * All importance draws so far, each weighted against the mixture of everything ever drawn from.
 *
 * <p>Adaptive multiple importance sampling (Cornuet, Marin, Mira and Robert, Scandinavian Journal
 * of Statistics 39 (2012) 798) with the deterministic-mixture denominator (Owen and Zhou, JASA 95
 * (2000) 135). Every component gets a fixed number of mirrored pairs, so the components are strata
 * and the variance of the evidence is summed stratum by stratum, pair by pair.
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

  void add(Mixture mixture, int count) {
    int[] pairs = mixture.pairs(count);
    int firstNew = draws.size();
    List<Stratum> fresh = new ArrayList<>();
    for (int k = 0; k < pairs.length; k++) {
      Component component = mixture.components().get(k);
      fresh.add(new Stratum(component, draws.size(), pairs[k]));
      for (int i = 0; i < pairs[k]; i++) {
        draws.addAll(Arrays.asList(component.mirroredPair(random)));
      }
    }
    grow();
    for (int i = 0; i < draws.size(); i++) {
      if (i >= firstNew) {
        double[] u = draws.get(i);
        logTarget[i] = likelihood.logLikelihood(u) + LogSum.standardNormal(u);
        addDensities(i, strata);
      }
      addDensities(i, fresh);
    }
    strata.addAll(fresh);
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

  double[] weights() {
    return LogSum.normalised(logWeights());
  }

  /** Standard error of the log evidence from the spread of pair sums within strata [nat]. */
  double standardError() {
    double[] weights = weights();
    double variance = 0;
    for (Stratum stratum : strata) {
      double[] sums = new double[stratum.pairs];
      for (int j = 0; j < sums.length; j++) {
        int i = stratum.firstDraw + 2 * j;
        sums[j] = weights[i] + weights[i + 1];
      }
      variance += stratum.pairs * StatUtils.variance(sums);
    }
    return Math.sqrt(variance);
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
