package holdcurve.record.job;

/**
 * The needle gauge that a job was read from.
 *
 * @param range end of its scale [Pa gauge]
 * @param accuracyClass limit of error as a share of the range [-], 0.016 for class 1.6 (EN 837-1)
 * @param resolution step to which it was read [Pa]
 */
public record GaugeSpec(double range, double accuracyClass, double resolution) {
  /** Class 1.6 to 4 bar, read to 0.02 bar: common practice. */
  public static GaugeSpec usual() {
    return new GaugeSpec(4e5, 0.016, 2e3);
  }

  /** What it shows at most: its end, the class error and a step of reading beyond [Pa]. */
  public double most() {
    return range * (1 + accuracyClass) + resolution;
  }

  /**
   * Standard uncertainty of the error common to all readings [Pa]: a rectangular distribution
   * inside the class limits.
   */
  public double classUncertainty() {
    return accuracyClass * range / Math.sqrt(3);
  }

  /**
   * Standard uncertainty of rounding to the resolution [Pa]: a rectangular distribution half a step
   * wide each way.
   */
  public double roundingUncertainty() {
    return resolution / Math.sqrt(12);
  }
}
