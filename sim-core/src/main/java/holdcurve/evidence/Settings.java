package holdcurve.evidence;

import java.util.List;

/**
 * Budgets and limits of an evidence estimate. {@link #standard()} suits likelihoods of about 0.1 to
 * 1 ms a call.
 *
 * @param starts starting points of the mode search besides the prior mean, each of the likelihood's
 *     dimension [-]
 * @param seededStarts further starting points drawn from the prior, in mirrored pairs [-]
 * @param drawsPerRound importance draws between two judgements, at least 40 [-]
 * @param maximumDraws importance draws after which tempering takes over [-]
 * @param minimumSampleSize effective sample size wanted [-]
 * @param targetError standard error of the log evidence wanted [nat]
 * @param temperedParticles particles of one tempered run, at least 20 [-]
 * @param temperedRuns independent tempered runs, at least 2 [-]
 * @param temperedMoves accepted moves per particle and temperature [-]
 */
public record Settings(
    List<double[]> starts,
    int seededStarts,
    int drawsPerRound,
    int maximumDraws,
    double minimumSampleSize,
    double targetError,
    int temperedParticles,
    int temperedRuns,
    double temperedMoves) {

  public Settings {
    starts = starts.stream().map(double[]::clone).toList();
    atLeast("seededStarts", seededStarts, 0);
    atLeast("drawsPerRound", drawsPerRound, 40);
    atLeast("maximumDraws", maximumDraws, drawsPerRound);
    atLeast("minimumSampleSize", minimumSampleSize, 1);
    atLeast("targetError", targetError, 0);
    atLeast("temperedParticles", temperedParticles, 20);
    atLeast("temperedRuns", temperedRuns, 2);
    atLeast("temperedMoves", temperedMoves, 0.1);
  }

  /** Prior mean and four drawn starts; rounds of 150 draws, at most 4000; error 0.05 nat. */
  public static Settings standard() {
    return new Settings(List.of(), 4, 150, 4000, 100, 0.05, 150, 8, 2);
  }

  /** These settings with other starting points. */
  public Settings withStarts(List<double[]> other) {
    return new Settings(
        other,
        seededStarts,
        drawsPerRound,
        maximumDraws,
        minimumSampleSize,
        targetError,
        temperedParticles,
        temperedRuns,
        temperedMoves);
  }

  /** These settings with another number of starts drawn from the prior. */
  public Settings withSeededStarts(int count) {
    return new Settings(
        starts,
        count,
        drawsPerRound,
        maximumDraws,
        minimumSampleSize,
        targetError,
        temperedParticles,
        temperedRuns,
        temperedMoves);
  }

  /** These settings with another importance budget. */
  public Settings withDraws(int perRound, int maximum, double sampleSize, double error) {
    return new Settings(
        starts,
        seededStarts,
        perRound,
        maximum,
        sampleSize,
        error,
        temperedParticles,
        temperedRuns,
        temperedMoves);
  }

  /** These settings with another tempering budget. */
  public Settings withTempering(int particles, int runs, double moves) {
    return new Settings(
        starts,
        seededStarts,
        drawsPerRound,
        maximumDraws,
        minimumSampleSize,
        targetError,
        particles,
        runs,
        moves);
  }

  private static void atLeast(String name, double value, double limit) {
    if (!(value >= limit)) {
      throw new IllegalArgumentException(name + " must be at least " + limit + ", got " + value);
    }
  }
}
