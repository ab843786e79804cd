package holdcurve.physics.ode;

/**
 * Length of a first step, after Hairer, Nørsett &amp; Wanner, Solving Ordinary Differential
 * Equations I, 2nd ed. 1993, sect. II.4 ("starting step size"), with the second derivative taken
 * from the Jacobian that is there anyway instead of from one more call of f.
 */
final class StartingStep {
  private static final double SHARE = 0.01;
  private static final double TINY = 1e-5;
  private static final double FALLBACK = 1e-6;

  private StartingStep() {}

  /**
   * @param stepper linearized at the start
   * @param y state there
   * @param scale error allowed in each component
   * @param work overwritten
   * @return unsigned length [s], positive unless the slopes are not finite
   */
  static double estimate(RosenbrockStepper stepper, double[] y, double[] scale, double[] work) {
    double size = ErrorNorm.rms(y, scale);
    double slope = ErrorNorm.rms(stepper.slopeAtStart(), scale);
    stepper.fillCurvature(work);
    double bend = Math.max(slope, ErrorNorm.rms(work, scale));
    double bySlope = size < TINY || slope < TINY ? FALLBACK : SHARE * size / slope;
    double byBend =
        bend <= 1e-15
            ? Math.max(FALLBACK, bySlope * 1e-3)
            : Math.pow(SHARE / bend, 1.0 / stepper.tableau().orders().main());
    return Math.min(100 * bySlope, byBend);
  }
}
