package holdcurve.inference.prior;

import holdcurve.physics.circuit.Unit;
import holdcurve.record.job.GaugeSpec;

/**
 * How wide the unknowns of a circuit at rest are before any reading, from the data file {@code
 * priors.json}, which has the sources.
 *
 * @param statedSpread of what a circuit file states of a hose or damper, logarithm [-]
 * @param quickCreep stretch within seconds about its share of all stretch [-]
 * @param airShare air in the gauge hose about its default, as a share of it [-]
 * @param weepShare weep of a sound seat, likewise [-]
 * @param overshoot pressure at the pump stop over the set pressure: the running pump holds the
 *     regulator open [Pa]
 * @param startDeviation likewise about that, near the middle; a weak pump or a kinked hose can put
 *     it far off [Pa]
 * @param startTail where that pressure lies twice as far out as a normal one [standard deviations]
 * @param startBetweenHolds share of it that differs between holds of one circuit [-]
 * @param setShare set pressure about the stated one, as a share of it: regulators are set to about
 *     0.1 bar, common practice, no source [-]
 * @param clampFlow flow past a clamp at 2 bar [m³/s]
 * @param clampShare likewise, as a factor [-]
 * @param squeezed fuel that a clamp pushes to each side on average; exponentially distributed,
 *     since a clamp may push none [m³]
 * @param clampPlace where on its hose a clamp sits, as a factor [-]
 * @param damperSize what an undescribed damper takes up about its default, logarithm [-]
 * @param damperPressure pressure at which it works about its default, logarithm [-]
 * @param damperCentre pressure at mid-stroke of a damper that suits its circuit, of the set
 *     pressure
 * @param gasCharge charge of a gas damper that suits its circuit, likewise
 * @param testVariation variation of a seat's leak between tests, standard deviation of its
 *     logarithm [-]
 * @param lawBend exponent of a leak's law about its textbook value, standard deviation [-]
 * @param leastBend what an exponent can be bent by and stay above nothing [-]
 * @param largestBend likewise, upwards [-]
 * @param eyeShare reading error beside rounding, as a share of the resolution [-]
 * @param eyeFactor likewise, as a factor [-]
 * @param leastEye smallest scatter about the curve [Pa]; measured loggers scatter by 3 to 4 mbar,
 *     and no curve is right to that
 * @param modelError amplitude of the model's own error while little has fallen [Pa]
 * @param modelErrorFactor likewise, as a factor [-]
 * @param drift how far an unknown of a car drifts until its next job, of its own spread [-]
 * @param learned what earlier jobs of the same car taught
 */
public record UnknownPriors(
    double statedSpread,
    double quickCreep,
    double airShare,
    double weepShare,
    double overshoot,
    double startDeviation,
    double startTail,
    double startBetweenHolds,
    double setShare,
    double clampFlow,
    double clampShare,
    double squeezed,
    double clampPlace,
    double damperSize,
    double damperPressure,
    double damperCentre,
    double gasCharge,
    double testVariation,
    double lawBend,
    double leastBend,
    double largestBend,
    double eyeShare,
    double eyeFactor,
    double leastEye,
    double modelError,
    double modelErrorFactor,
    double drift,
    LearnedUnknowns learned) {
  private static final UnknownPriors USUAL = learned(LearnedUnknowns.NONE);

  /** The shipped ones. */
  public static UnknownPriors usual() {
    return USUAL;
  }

  private static UnknownPriors read(PriorFile file, LearnedUnknowns learned) {
    return new UnknownPriors(
        file.value("stated_spread"),
        file.value("quick_creep"),
        file.value("gauge_air"),
        file.value("seat_weep"),
        Unit.BAR.toSi(file.value("overshoot_bar")),
        Unit.BAR.toSi(file.value("start_spread_bar")),
        file.value("start_tail"),
        file.value("start_between_holds"),
        file.value("set_share"),
        Unit.MILLILITRE_PER_MINUTE.toSi(file.value("clamp_flow_ml_min")),
        file.value("clamp_flow_spread"),
        Unit.MILLILITRE.toSi(file.value("clamp_squeeze_ml")),
        file.value("clamp_place"),
        file.value("damper_size"),
        file.value("damper_pressure"),
        file.value("damper_centre"),
        file.value("damper_gas_charge"),
        file.value("leak_between_holds"),
        file.value("law_bend"),
        file.value("law_bend_least"),
        file.value("law_bend_most"),
        file.value("eye_share"),
        file.value("eye_factor"),
        Unit.BAR.toSi(file.value("least_eye_bar")),
        Unit.BAR.toSi(file.value("model_error_bar")),
        file.value("model_error_factor"),
        file.value("between_jobs"),
        learned);
  }

  /** The shipped ones, but for what earlier jobs of the same car taught. */
  public static UnknownPriors learned(LearnedUnknowns learned) {
    return read(PriorFile.section("resting"), learned);
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
