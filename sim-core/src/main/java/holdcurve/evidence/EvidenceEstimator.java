package holdcurve.evidence;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.random.Well19937c;

/**
 * Estimates the evidence of one model.
 *
 * <p>A model with residuals is sampled by adaptive importance sampling on its modes; that costs a
 * few hundred likelihood calls. Where the diagnostics stay bad within the budget, and for a model
 * without residuals, tempered runs from the prior do the work for some ten thousand calls or more.
 */
public final class EvidenceEstimator {
  private EvidenceEstimator() {}

  /**
   * @param likelihood the model
   * @param seed seed of all draws
   * @param settings budgets
   * @return evidence, draws and diagnostics
   */
  public static Evidence estimate(LogLikelihood likelihood, long seed, Settings settings) {
    CountedLikelihood counted = new CountedLikelihood(likelihood);
    List<Mode> modes =
        counted.residualForm() == null
            ? List.of()
            : ModeFinder.find(counted, new Well19937c(Gaussians.seed(seed, 0)), settings);
    return estimate(counted, modes, seed, settings);
  }

  /**
   * Like {@link #estimate(LogLikelihood, long, Settings)}, for a caller who knows the modes.
   *
   * @param modes modes of the posterior, their shape included; the proposals start there
   */
  public static Evidence estimate(
      LogLikelihood likelihood, List<Mode> modes, long seed, Settings settings) {
    return estimate(new CountedLikelihood(likelihood), modes, seed, settings);
  }

  private static Evidence estimate(
      CountedLikelihood counted, List<Mode> modes, long seed, Settings settings) {
    if (!modes.isEmpty()) {
      Optional<DrawPool> pool =
          new ImportanceRounds(counted, new Well19937c(Gaussians.seed(seed, 1)), settings)
              .run(Mixture.at(modes, counted.dimension()));
      if (pool.isPresent()) {
        return importance(counted, pool.get(), modes);
      }
    }
    return tempered(counted, modes, seed, settings);
  }

  private static Evidence importance(
      CountedLikelihood likelihood, DrawPool pool, List<Mode> modes) {
    return new Evidence(
        pool.logEvidence(),
        pool.standardError(),
        new WeightedDraws(pool.draws(), pool.weights()),
        pool.sampleSize(),
        ParetoTail.ofWeights(pool.logWeights()),
        Evidence.Method.IMPORTANCE,
        true,
        likelihood.calls(),
        laplace(modes),
        likelihood.best(),
        likelihood.bestPoint(),
        modes.size());
  }

  private static Evidence tempered(
      CountedLikelihood likelihood, List<Mode> modes, long seed, Settings settings) {
    TemperedEvidence runs = new TemperedEvidence(likelihood, Gaussians.seed(seed, 2), settings);
    WeightedDraws draws = runs.draws();
    double sampleSize = draws.effectiveSampleSize();
    return new Evidence(
        runs.logEvidence(),
        runs.standardError(),
        draws,
        sampleSize,
        Double.NaN,
        Evidence.Method.TEMPERED,
        sampleSize >= settings.minimumSampleSize() && runs.standardError() < 0.5,
        likelihood.calls(),
        laplace(modes),
        likelihood.best(),
        likelihood.bestPoint(),
        modes.size());
  }

  private static double laplace(List<Mode> modes) {
    return modes.isEmpty()
        ? Double.NaN
        : LogSum.of(modes.stream().mapToDouble(Mode::laplaceLogEvidence).toArray());
  }
}
