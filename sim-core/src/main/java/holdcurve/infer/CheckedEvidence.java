package holdcurve.infer;

import holdcurve.evidence.Evidence;
import holdcurve.evidence.EvidenceEstimator;
import holdcurve.evidence.LogLikelihood;
import holdcurve.evidence.Mode;
import holdcurve.evidence.Settings;
import java.util.List;

/**
 * The evidence of a hypothesis, sampled with foreseen curves and put right by simulated ones: Z =
 * Z' · E'[L/L'], a mean over draws from the foreseen posterior. Where the ratio scatters, the
 * simulated curves are taken in and it is done again, and the answers are averaged. Where that
 * doesn't help, readings are so precise that the posterior is narrow and all but Gaussian, and
 * Laplace's approximation stands in.
 */
final class CheckedEvidence {
  private static final int ROUNDS = 6;

  /** Draws simulated in a round. */
  private static final int CHECKS = 16;

  /** Share of the error wanted that is left to draws with foreseen curves, which cost little. */
  private static final double OF_DRAWS = 0.5;

  /**
   * Where simulated curves say so much else than foreseen ones, the draws lie in the wrong place,
   * and the few among them that count are no fair sample [nat].
   */
  private static final double FAR = 1.25;

  /** Error that will do in the end [nat]. */
  private static final double ENOUGH = 0.5;

  /** Error granted to an approximate evidence [nat]. */
  private static final double APPROXIMATION_ERROR = 1;

  /** Draws from the Gaussian about a fit, for the range of a size. */
  private static final int APPROXIMATE_DRAWS = 60;

  private final MarginalLikelihood likelihood;
  private final LogLikelihood foreseen;
  private final Progress progress;

  CheckedEvidence(MarginalLikelihood likelihood, Progress progress) {
    this.likelihood = likelihood;
    this.progress = progress;
    foreseen = watched(likelihood.foreseen());
  }

  private LogLikelihood watched(LogLikelihood inner) {
    return new WatchedMarginal(inner, progress);
  }

  /**
   * @param error wanted [nat]
   */
  Evidence estimate(long seed, double error) {
    Settings cheap =
        Settings.standard().withDraws(200, 4000, 100, OF_DRAWS * error).withTempering(60, 2, 1);
    MeanEvidence mean = new MeanEvidence();
    for (int round = 0; round < ROUNDS; round++) {
      Evidence rough = EvidenceEstimator.estimate(foreseen, likelihood.modes(), seed, cheap);
      List<MarginalLikelihood.Check> checks =
          rough.draws().resample(seed + round, CHECKS).stream().map(likelihood::check).toList();
      Excess excess = Excess.of(checks);
      if (Math.abs(excess.log()) < FAR) {
        mean.add(rough, excess);
      }
      if (mean.error() < (round < ROUNDS - 1 ? error : Math.max(error, ENOUGH))) {
        return mean.of(rough);
      }
      checks.forEach(check -> check.learn().run());
    }
    return approximate(likelihood.modes(), seed);
  }

  /** Laplace's approximation, with draws from the Gaussian about the best fit. */
  static Evidence approximate(List<Mode> modes, long seed) {
    Mode mode = modes.get(0);
    return new Evidence(
        mode.laplaceLogEvidence(),
        APPROXIMATION_ERROR,
        mode.draws(seed, APPROXIMATE_DRAWS),
        APPROXIMATE_DRAWS,
        Double.NaN,
        Evidence.Method.IMPORTANCE,
        true,
        1,
        mode.laplaceLogEvidence(),
        mode.logLikelihood(),
        mode.u(),
        modes.size());
  }

  /**
   * What checks say.
   *
   * @param log of the mean ratio of likelihoods [nat]
   * @param error of it [nat]
   */
  private record Excess(double log, double error) {
    static Excess of(List<MarginalLikelihood.Check> checks) {
      double most = checks.stream().mapToDouble(MarginalLikelihood.Check::excess).max().orElse(0);
      double sum = 0;
      double squares = 0;
      for (MarginalLikelihood.Check check : checks) {
        double ratio = Math.exp(check.excess() - most);
        sum += ratio;
        squares += ratio * ratio;
      }
      int n = checks.size();
      double scatter = Math.max(0, n * squares / (sum * sum) - 1);
      double error = sum > 0 ? Math.sqrt(scatter / (n - 1)) : Double.POSITIVE_INFINITY;
      return new Excess(most + Math.log(sum / n), error);
    }
  }

  /** Answers of several rounds, each weighing as its error has it. */
  private static final class MeanEvidence {
    /** No round is believed to be better than this [nat]. */
    private static final double LEAST_ERROR = 0.02;

    private double weight;
    private double sum;

    void add(Evidence rough, Excess excess) {
      double error = Math.max(LEAST_ERROR, Math.hypot(rough.standardError(), excess.error()));
      double log = rough.logEvidence() + excess.log();
      if (Double.isFinite(log) && Double.isFinite(error)) {
        weight += 1 / (error * error);
        sum += log / (error * error);
      }
    }

    double error() {
      return 1 / Math.sqrt(weight);
    }

    Evidence of(Evidence e) {
      double log = sum / weight;
      return new Evidence(
          log,
          error(),
          e.draws(),
          e.effectiveSampleSize(),
          e.paretoShape(),
          e.method(),
          e.reliable(),
          e.likelihoodCalls(),
          e.laplaceLogEvidence(),
          e.maximumLogLikelihood() + log - e.logEvidence(),
          e.bestPoint(),
          e.modes());
    }
  }
}
