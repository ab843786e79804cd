package holdcurve.inference.evidence;

import java.util.Arrays;
import org.apache.commons.math3.random.RandomGenerator;

/**
 * One run of sequential Monte Carlo from the prior to the posterior through prior × likelihood^β
 * (Del Moral, Doucet and Jasra, Journal of the Royal Statistical Society B 68 (2006) 411).
 *
 * <p>The next β keeps the conditional effective sample size at half the particles. Particles then
 * move by random-walk Metropolis steps with the particles' own covariance and a scale that follows
 * the acceptance; Student increments mix short steps with long ones.
 */
final class TemperedRun {
  private static final double KEPT_SAMPLE_SIZE = 0.5;
  private static final double ACCEPTANCE = 0.25;
  private static final int MOST_SWEEPS = 60;
  private static final int INCREMENT_FREEDOM = 4;

  private final LogLikelihood likelihood;
  private final RandomGenerator random;
  private final double acceptedMoves;
  private final int n;
  private double[][] u;
  private double[] logLikelihood;
  private int[] ancestor;
  private double beta;
  private double logEvidence;
  private int levels;
  private double stepScale;

  TemperedRun(LogLikelihood likelihood, RandomGenerator random, int particles, double moves) {
    this.likelihood = likelihood;
    this.random = random;
    this.acceptedMoves = moves;
    this.n = particles;
    this.u = new double[n][];
    this.logLikelihood = new double[n];
    this.ancestor = new int[n];
    this.stepScale = 2.38 / Math.sqrt(likelihood.dimension());
  }

  /** Runs to β = 1; false when every particle of the prior is impossible. */
  boolean run() {
    for (int i = 0; i < n; i++) {
      u[i] = Gaussians.vector(random, likelihood.dimension());
      logLikelihood[i] = likelihood.logLikelihood(u[i]);
      ancestor[i] = i;
    }
    if (LogSum.of(logLikelihood) == Double.NEGATIVE_INFINITY) {
      logEvidence = Double.NEGATIVE_INFINITY;
      return false;
    }
    while (beta < 1) {
      double next = nextBeta();
      double[] increments = increments(next);
      logEvidence += LogSum.of(increments) - Math.log(n);
      double[] weights = LogSum.normalised(increments);
      double[][] factor = Spread.factor(u, weights);
      resample(weights);
      beta = next;
      levels++;
      move(factor);
    }
    return true;
  }

  private double[] increments(double next) {
    return Arrays.stream(logLikelihood)
        .map(l -> l == Double.NEGATIVE_INFINITY ? l : (next - beta) * l)
        .toArray();
  }

  private double nextBeta() {
    double low = beta;
    double high = 1;
    if (sampleSize(high) >= KEPT_SAMPLE_SIZE * n) {
      return high;
    }
    for (int i = 0; i < 60; i++) {
      double middle = 0.5 * (low + high);
      if (sampleSize(middle) >= Math.min(KEPT_SAMPLE_SIZE, 0.9 * possible()) * n) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Math.max(low, Math.nextUp(beta));
  }

  /** Share of particles with a likelihood above zero: no β can keep more than these [-]. */
  private double possible() {
    return Arrays.stream(logLikelihood).filter(l -> l > Double.NEGATIVE_INFINITY).count()
        / (double) n;
  }

  private double sampleSize(double next) {
    return 1 / LogSum.squaredNorm(LogSum.normalised(increments(next)));
  }

  private void resample(double[] weights) {
    int[] chosen = Resampling.systematic(weights, n, random.nextDouble());
    double[][] newU = new double[n][];
    double[] newLog = new double[n];
    int[] newAncestor = new int[n];
    for (int i = 0; i < n; i++) {
      newU[i] = u[chosen[i]];
      newLog[i] = logLikelihood[chosen[i]];
      newAncestor[i] = ancestor[chosen[i]];
    }
    u = newU;
    logLikelihood = newLog;
    ancestor = newAncestor;
  }

  private void move(double[][] factor) {
    double accepted = 0;
    for (int sweep = 0; sweep < MOST_SWEEPS && accepted < acceptedMoves * n; sweep++) {
      int now = 0;
      for (int i = 0; i < n; i++) {
        now += moveOne(i, factor) ? 1 : 0;
      }
      accepted += now;
      stepScale *= Math.exp((double) now / n - ACCEPTANCE);
    }
  }

  private boolean moveOne(int i, double[][] factor) {
    double chiSquare = LogSum.squaredNorm(Gaussians.vector(random, INCREMENT_FREEDOM));
    double step = stepScale * Math.sqrt(INCREMENT_FREEDOM / chiSquare);
    double[] z = Gaussians.vector(random, u[i].length);
    double[] trial = Gaussians.affine(u[i], factor, step, z);
    double priorGain = 0.5 * (LogSum.squaredNorm(u[i]) - LogSum.squaredNorm(trial));
    double trialLog = likelihood.logLikelihood(trial);
    double gain = priorGain + beta * (trialLog - logLikelihood[i]);
    if (Math.log(random.nextDouble()) >= gain) {
      return false;
    }
    u[i] = trial;
    logLikelihood[i] = trialLog;
    return true;
  }

  double logEvidence() {
    return logEvidence;
  }

  double[][] particles() {
    return u;
  }

  /**
   * Relative variance of the evidence from the family tree of the particles (Lee and Whiteley,
   * Biometrika 105 (2018) 609) [-].
   */
  double relativeVariance() {
    int[] family = new int[n];
    for (int eve : ancestor) {
      family[eve]++;
    }
    double same = Arrays.stream(family).mapToDouble(c -> (double) c * c).sum() / ((double) n * n);
    return Math.max(0, 1 - Math.pow(n / (n - 1.0), levels + 1) * (1 - same));
  }
}
