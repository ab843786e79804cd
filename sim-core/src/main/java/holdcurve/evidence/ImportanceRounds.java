package holdcurve.evidence;

import java.util.Optional;
import org.apache.commons.math3.random.RandomGenerator;

/**
 * Rounds of importance draws: refit the proposal until a round of fresh draws looks good, then keep
 * that proposal and draw on until the error is small enough.
 *
 * <p>Only draws from the one kept proposal enter the evidence. Pooling them with the draws that
 * shaped the proposal would bias it low, because pieces placed on heavy draws weigh these down.
 */
final class ImportanceRounds {
  /** Effective share of draws that ends the refitting, less after each refit [-]. */
  private static final double[] WANTED_EFFICIENCY = {0.35, 0.3, 0.25, 0.2, 0.1, 0.05, 0};

  /** Above k = 1/2 the weights have no variance; k̂ itself is unsure by about 0.1 [-]. */
  private static final double LARGEST_SHAPE = 0.4;

  /** Still below the 0.7 up to which the evidence itself is usable [-]. */
  private static final double LARGEST_SHAPE_AT_END = 0.6;

  private final CountedLikelihood likelihood;
  private final RandomGenerator random;
  private final Settings settings;
  private int spent;
  private int refits;

  ImportanceRounds(CountedLikelihood likelihood, RandomGenerator random, Settings settings) {
    this.likelihood = likelihood;
    this.random = random;
    this.settings = settings;
  }

  /** Draws whose diagnostics are good; empty when the budget was spent without any. */
  Optional<DrawPool> run(Mixture first) {
    DrawPool history = new DrawPool(likelihood, random);
    Mixture mixture = first;
    while (affordable()) {
      DrawPool fresh = new DrawPool(likelihood, random);
      add(fresh, mixture);
      while (promising(fresh) && affordable() && !finished(fresh)) {
        add(fresh, mixture);
      }
      if (promising(fresh) && trusted(fresh)) {
        return Optional.of(fresh);
      }
      history.absorb(fresh);
      if (history.logEvidence() > Double.NEGATIVE_INFINITY) {
        mixture = MixtureAdaptation.refit(history, mixture);
      }
      refits++;
    }
    return Optional.empty();
  }

  private boolean affordable() {
    return spent + settings.drawsPerRound() <= settings.maximumDraws();
  }

  private void add(DrawPool pool, Mixture mixture) {
    int before = pool.size();
    pool.add(mixture, settings.drawsPerRound());
    spent += pool.size() - before;
  }

  private boolean finished(DrawPool pool) {
    return trusted(pool) && pool.standardError() <= settings.targetError();
  }

  private boolean promising(DrawPool pool) {
    double wanted = WANTED_EFFICIENCY[Math.min(refits, WANTED_EFFICIENCY.length - 1)];
    return pool.logEvidence() > Double.NEGATIVE_INFINITY
        && pool.sampleSize() >= wanted * pool.size()
        && shape(pool) <= ParetoTail.limit(pool.size());
  }

  /**
   * A heavy tail is forgiven where the error, caution included, is far below the target, and at the
   * end of the budget in part: tempering would cost ten times more for a larger error.
   */
  private boolean trusted(DrawPool pool) {
    boolean nearlyNormal = shape(pool) < 0.2 && pool.sampleSize() > 0.5 * pool.size();
    boolean enough = nearlyNormal || pool.size() >= 2 * settings.drawsPerRound();
    boolean last = !affordable() && pool.size() >= 0.25 * settings.maximumDraws();
    return enough
        && pool.sampleSize() >= settings.minimumSampleSize()
        && (shape(pool) <= (last ? LARGEST_SHAPE_AT_END : LARGEST_SHAPE)
            || pool.standardError() <= 0.5 * settings.targetError());
  }

  private static double shape(DrawPool pool) {
    return ParetoTail.ofWeights(pool.logWeights());
  }
}
