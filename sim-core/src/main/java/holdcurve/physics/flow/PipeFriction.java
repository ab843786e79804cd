package holdcurve.physics.flow;

import holdcurve.common.input.Require;

/**
 * Darcy friction of a pipe, solved for the flow: Reynolds number as an explicit function of the
 * Kármán number Ka = Re √f, which depends on pressure difference but not on flow.
 *
 * <p>Below Re 2000: f = 64/Re. Above Re 4000: Colebrook's formula, which in Ka is explicit, Re = −2
 * Ka lg(ε/3.7 + 2.51/Ka). Between, where real flow is undecided, one cubic in ln Ka and ln Re with
 * both end slopes: continuously differentiable and, for roughness up to 5 %, always rising. Costs a
 * logarithm, in the transition an exponential too.
 */
public final class PipeFriction {
  /** Reynolds number where laminar flow ends [-]. */
  public static final double LAMINAR_END = 2000;

  /** Reynolds number from which flow is taken as fully turbulent [-]. */
  public static final double TURBULENT_START = 4000;

  /** Largest relative roughness that the formula covers [-]. */
  public static final double ROUGHEST = 0.05;

  /** Kármán number at {@link #LAMINAR_END} [-]. */
  static final double KARMAN_LAMINAR_END = Math.sqrt(64 * LAMINAR_END);

  private static final double TWO_PER_LN10 = 2 / Math.log(10);
  private static final double LAMINAR_SLOPE = 2;

  private final double roughTerm;
  private final double karmanTurbulentStart;
  private final double lowerLog = Math.log(KARMAN_LAMINAR_END);
  private final double logSpan;
  private final double turbulentSlope;

  /**
   * @param relativeRoughness sand roughness over bore [-], 0 to 0.05
   */
  public PipeFriction(double relativeRoughness) {
    Require.within(relativeRoughness, 0, ROUGHEST, "relative roughness", "-");
    roughTerm = relativeRoughness / 3.7;
    karmanTurbulentStart =
        TURBULENT_START * Math.sqrt(colebrook(TURBULENT_START, relativeRoughness));
    logSpan = Math.log(karmanTurbulentStart) - lowerLog;
    turbulentSlope =
        karmanTurbulentStart / TURBULENT_START * turbulentReynoldsSlope(karmanTurbulentStart);
  }

  /**
   * Friction factor of Colebrook (J. Inst. Civ. Eng. 11 (1939) 133) by Newton's method.
   *
   * @param reynolds [-], turbulent
   * @param relativeRoughness [-]
   * @return Darcy friction factor [-]
   */
  public static double colebrook(double reynolds, double relativeRoughness) {
    Require.positive(reynolds, "Reynolds number", "-");
    Require.notNegative(relativeRoughness, "relative roughness", "-");
    double root = 7;
    double step = 1;
    for (int i = 0; i < 50 && Math.abs(step) > 1e-14 * root; i++) {
      double sum = relativeRoughness / 3.7 + 2.51 * root / reynolds;
      double gap = root + TWO_PER_LN10 * Math.log(sum);
      step = gap / (1 + TWO_PER_LN10 * 2.51 / (reynolds * sum));
      root -= step;
    }
    return 1 / (root * root);
  }

  /**
   * @param karman Kármán number (D/ν) √(2 Δp D/(ρ L)) [-], zero or more
   * @return Reynolds number [-]
   */
  public double reynolds(double karman) {
    if (karman <= KARMAN_LAMINAR_END) {
      return karman * karman / 64;
    }
    if (karman >= karmanTurbulentStart) {
      return -karman * TWO_PER_LN10 * Math.log(roughTerm + 2.51 / karman);
    }
    return transition((Math.log(karman) - lowerLog) / logSpan);
  }

  /**
   * @param karman Kármán number [-], zero or more
   * @return derivative of {@link #reynolds} [-]
   */
  public double reynoldsSlope(double karman) {
    if (karman <= KARMAN_LAMINAR_END) {
      return karman / 32;
    }
    if (karman >= karmanTurbulentStart) {
      return turbulentReynoldsSlope(karman);
    }
    double s = (Math.log(karman) - lowerLog) / logSpan;
    return transition(s) / karman * transitionLogSlope(s);
  }

  private double turbulentReynoldsSlope(double karman) {
    double sum = roughTerm + 2.51 / karman;
    return TWO_PER_LN10 * (2.51 / (karman * sum) - Math.log(sum));
  }

  /** Cubic Hermite curve in the logarithms, s from 0 (laminar end) to 1. */
  private double transition(double s) {
    double rise = Math.log(TURBULENT_START / LAMINAR_END);
    double t = 1 - s;
    double curve =
        s * s * (3 - 2 * s) * rise + logSpan * s * t * (t * LAMINAR_SLOPE - s * turbulentSlope);
    return LAMINAR_END * Math.exp(curve);
  }

  private double transitionLogSlope(double s) {
    double rise = Math.log(TURBULENT_START / LAMINAR_END) / logSpan;
    double t = 1 - s;
    return 6 * s * t * rise + t * (1 - 3 * s) * LAMINAR_SLOPE + s * (3 * s - 2) * turbulentSlope;
  }
}
