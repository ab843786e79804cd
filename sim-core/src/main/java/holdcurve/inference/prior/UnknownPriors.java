package holdcurve.inference.prior;

import holdcurve.inference.likelihood.LatentMap;
import holdcurve.record.job.GaugeSpec;

/**
 * How wide the unknowns are before any reading. All assumed but where it says otherwise.
 *
 * @param quickCreep stretch within seconds about its share of all stretch [-]
 * @param airShare air in the gauge hose about its default, as a share of it [-]
 * @param weepShare weep of a sound seat, likewise [-]
 * @param overshoot pressure at the pump stop over the set pressure: the running pump holds the
 *     regulator open [Pa]
 * @param startDeviation likewise about that, near the middle; a weak pump or a kinked hose can put
 *     it far off, see {@link LatentMap#tailed} [Pa]
 * @param setShare set pressure about the stated one, as a share of it: regulators are set to about
 *     0.1 bar, common practice, no source [-]
 * @param clampFlow flow past a clamp at 2 bar [m³/s]
 * @param clampShare likewise, as a factor [-]
 * @param squeezed fuel that a clamp pushes to each side on average; exponentially distributed,
 *     since a clamp may push none [m³]
 * @param clampPlace where on its hose a clamp sits, as a factor [-]
 * @param damperSize what an undescribed damper takes up about its default, logarithm [-]
 * @param damperPressure pressure at which it works about its default, logarithm [-]
 * @param testVariation variation of a seat's leak between tests, standard deviation of its
 *     logarithm [-]
 * @param lawBend exponent of a leak's law about its textbook value, standard deviation [-]
 * @param eyeShare reading error beside rounding, as a share of the resolution [-]
 * @param eyeFactor likewise, as a factor [-]
 * @param leastEye smallest scatter about the curve [Pa]; measured loggers scatter by 3 to 4 mbar,
 *     and no curve is right to that
 * @param modelError amplitude of the model's own error while little has fallen [Pa]
 * @param modelErrorFactor likewise, as a factor [-]
 */
public record UnknownPriors(
    double quickCreep,
    double airShare,
    double weepShare,
    double overshoot,
    double startDeviation,
    double setShare,
    double clampFlow,
    double clampShare,
    double squeezed,
    double clampPlace,
    double damperSize,
    double damperPressure,
    double testVariation,
    double lawBend,
    double eyeShare,
    double eyeFactor,
    double leastEye,
    double modelError,
    double modelErrorFactor) {
  /** The usual ones. */
  public static UnknownPriors usual() {
    return new UnknownPriors(
        0.8,
        1.2,
        1.5,
        3e3,
        4e3,
        0.025,
        0.01e-6 / 60,
        1,
        0.08e-6,
        0.3,
        0.8,
        0.3,
        0.3,
        0.35,
        0.4,
        1.7,
        500,
        1000,
        1.3);
  }

  /**
   * Standard deviation of one reading about the true needle [Pa].
   *
   * @param eye what the eye and the hand add beside rounding, of the usual [-]
   */
  public double readingDeviation(GaugeSpec gauge, double eye) {
    double usual = Math.max(eyeShare * gauge.resolution(), leastEye);
    return Math.hypot(gauge.roundingUncertainty(), eye * usual);
  }
}
