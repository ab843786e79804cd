package holdcurve.line;

import holdcurve.flow.Softplus;

/**
 * Rounded end stop: below its pressure a spring feels almost the stop pressure, above it the true
 * one.
 *
 * @param pressure gauge [Pa]
 * @param width of the rounding [Pa]; zero for no stop at all
 */
record EndStop(double pressure, double width) {
  static final EndStop NONE = new EndStop(0, 0);

  /** Gauge pressure that the spring feels [Pa]. */
  double felt(double outside) {
    return width == 0 ? outside : pressure + width * Softplus.value((outside - pressure) / width);
  }

  /** Derivative of {@link #felt} [-]. */
  double share(double outside) {
    return width == 0 ? 1 : Softplus.slope((outside - pressure) / width);
  }

  /** Derivative of {@link #share} [1/Pa]. */
  double shareSlope(double outside) {
    return width == 0 ? 0 : Softplus.curvature((outside - pressure) / width) / width;
  }
}
