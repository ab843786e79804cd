package holdcurve.evidence;

/** Draws in rounds, judging after each, until the diagnostics are good or the budget is spent. */
final class ImportanceRounds {
  private final DrawPool pool;
  private final Settings settings;

  ImportanceRounds(DrawPool pool, Settings settings) {
    this.pool = pool;
    this.settings = settings;
  }

  /** Whether the draws can be trusted at the end; the error may still be above the target. */
  boolean run(Mixture first) {
    Mixture mixture = first;
    pool.add(mixture, settings.drawsPerRound());
    while (!(trusted() && pool.standardError() <= settings.targetError())) {
      if (pool.size() + settings.drawsPerRound() > settings.maximumDraws()) {
        return trusted();
      }
      if (pool.logEvidence() > Double.NEGATIVE_INFINITY) {
        mixture = MixtureAdaptation.refit(pool, mixture);
      }
      pool.add(mixture, settings.drawsPerRound());
    }
    return true;
  }

  private boolean trusted() {
    if (pool.logEvidence() == Double.NEGATIVE_INFINITY) {
      return false;
    }
    double sampleSize = 1 / LogSum.squaredNorm(pool.weights());
    return sampleSize >= settings.minimumSampleSize()
        && ParetoTail.ofWeights(pool.logWeights()) <= ParetoTail.limit(pool.size());
  }
}
