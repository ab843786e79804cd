package holdcurve.physics.storage;

import holdcurve.physics.flow.Softplus;

/**
 * Rounded end stop: below its pressure a spring feels almost the stop pressure, above it the true
 * one.
 *
 * @param pressure gauge [Pa]
 * @param width of the rounding [Pa]; zero for no stop at all
 */
record EndStop(double pressure, double width) {
  /** Where the rounding begins and ends, in widths from the stop. */
  private static final double BEND = 5;

  /** How much of it one step may pass, in widths: with 3, one that came from afar lost 0.09 mL. */
  private static final double LONGEST = 1;

  static final EndStop NONE = new EndStop(0, 0);

  /** Gauge pressure that the spring feels [Pa]. */
  double felt(double outside) {
    return width == 0 ? outside : pressure + width * Softplus.value((outside - pressure) / width);
  }

  /** Derivative of {@link #felt} [-]. */
  double share(double outside) {
    return width == 0 ? 1 : Softplus.slope((outside - pressure) / width);
  }

  /** Whether a step from one pressure to another passes most of the rounding at once. */
  boolean isJumped(double from, double to) {
    double low = Math.max(Math.min(from, to), pressure - BEND * width);
    double high = Math.min(Math.max(from, to), pressure + BEND * width);
    return high - low > LONGEST * width;
  }

  /** Derivative of {@link #share} [1/Pa]. */
  double shareSlope(double outside) {
    return width == 0 ? 0 : Softplus.curvature((outside - pressure) / width) / width;
  }
}
