package holdcurve.calibration.blind;

/**
 * A gauge with the faults of one: its needle follows with a lag, sticks until it is a little off,
 * and its scale is off by an offset, a slope and a bend, together inside its class.
 *
 * @param range end of the scale [Pa]
 * @param accuracyClass limit of error as a share of the range [-]
 * @param resolution step to which it is read [Pa]
 * @param lag [s]
 * @param sticking how far off the needle lets itself be [Pa]
 */
record SimulatedNeedle(
    double range,
    double accuracyClass,
    double resolution,
    double lag,
    double sticking,
    double offset,
    double slope,
    double bend) {
  static SimulatedNeedle draw(Draw draw, double set, boolean logger) {
    double range = set > 2.6e5 || draw.chance(0.3) ? 6e5 : 4e5;
    double accuracyClass = logger ? 0.005 : draw.one(java.util.List.of(0.01, 0.016, 0.016, 0.025));
    double limit = accuracyClass * range;
    double resolution = logger ? 500 : draw.one(java.util.List.of(2e3, 2e3, 2.5e3, 5e3));
    return new SimulatedNeedle(
        range,
        accuracyClass,
        resolution,
        logger ? 0.05 : draw.between(0.1, 2),
        logger ? 0 : draw.between(0, 1500),
        limit * draw.between(-0.6, 0.6),
        0.3 * limit / range * draw.between(-1, 1),
        0.12 * limit * draw.between(-1, 1));
  }

  /** The same needle, quicker or slower. */
  SimulatedNeedle withLag(double seconds) {
    return new SimulatedNeedle(
        range, accuracyClass, resolution, seconds, sticking, offset, slope, bend);
  }

  /** Who sees the needle near its stop takes a gauge to 6 bar. */
  SimulatedNeedle longEnoughFor(double pressure) {
    double enough = pressure > 0.95 * range ? 6e5 : range;
    return new SimulatedNeedle(
        enough, accuracyClass, resolution, lag, sticking, offset, slope, bend);
  }

  /**
   * Where the needle stands.
   *
   * @param pressure every tenth of a second [Pa]
   * @return likewise [Pa]
   */
  double[] follow(double[] pressure) {
    double[] shown = new double[pressure.length];
    double driven = pressure[0];
    double needle = pressure[0];
    for (int i = 0; i < shown.length; i++) {
      driven += (pressure[i] - driven) * -Math.expm1(-0.1 / lag);
      needle = Math.max(driven - sticking, Math.min(driven + sticking, needle));
      shown[i] = needle + offset + slope * needle + bend * Math.sin(2 * Math.PI * needle / range);
    }
    return shown;
  }
}
