package holdcurve.bench.droptest;

/**
 * How the readings of a drop test scatter: one set of guesses.
 *
 * <p>A pair of readings is taken as the true pressures, each with the unsteadiness of the eye, then
 * rounded to the step of the gauge. Rounding is no noise that repeats average out: if every priming
 * ends at the very same pressure, the reading before is rounded the same way each time. So the
 * pressure before is itself unknown, near a start common to all firings or, if priming varies by
 * more than the step, anywhere.
 *
 * @param step of the gauge [Pa]
 * @param unsteady standard deviation of the eye [Pa]
 * @param firing standard deviation of what one firing passes, as a share of it [-]
 * @param start pressure after priming [Pa gauge]; unused if {@code startScatter} is infinite
 * @param startScatter its standard deviation between primings [Pa]; infinite for anywhere
 */
record ReadingGuess(
    double step, double unsteady, double firing, double start, double startScatter) {
  /** Places and weights of Gauss's five-point rule on −1 to 1. */
  private static final double[] PLACES = {
    -0.906179845938664, -0.538469310105683, 0, 0.538469310105683, 0.906179845938664
  };

  private static final double[] WEIGHTS = {
    0.236926885056189, 0.478628670499366, 0.568888888888889, 0.478628670499366, 0.236926885056189
  };

  /**
   * Probability of a pair of readings.
   *
   * @param firing the readings
   * @param after pressure expected after a firing that begins at the reading before [Pa gauge]
   * @param slope by how much more that is for a higher beginning [-]
   */
  double probability(Firing firing, double after, double slope) {
    double drop = firing.before() - after;
    double own = unsteady * unsteady + square(this.firing * drop);
    boolean anywhere = Double.isInfinite(startScatter);
    double startVariance = anywhere ? 0 : startScatter * startScatter;
    double seenVariance = startVariance + unsteady * unsteady;
    double gain = anywhere ? slope : slope * startVariance / seenVariance;
    double variance =
        anywhere
            ? own + square(slope * unsteady)
            : own + slope * slope * startVariance - gain * slope * startVariance;
    double seenDeviation = Math.sqrt(seenVariance);
    double deviation = Math.sqrt(variance);
    double sum = 0;
    for (int i = 0; i < PLACES.length; i++) {
      double seen = firing.before() + 0.5 * step * PLACES[i];
      double density = anywhere ? 1 / step : gauss((seen - start) / seenDeviation) / seenDeviation;
      double middle =
          anywhere
              ? after + slope * (seen - firing.before())
              : after + slope * (start - firing.before()) + gain * (seen - start);
      double low = (firing.after() - 0.5 * step - middle) / deviation;
      double high = (firing.after() + 0.5 * step - middle) / deviation;
      sum += 0.5 * step * WEIGHTS[i] * density * (NormalCurve.below(high) - NormalCurve.below(low));
    }
    return sum;
  }

  private static double square(double x) {
    return x * x;
  }

  private static double gauss(double z) {
    return Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);
  }
}
