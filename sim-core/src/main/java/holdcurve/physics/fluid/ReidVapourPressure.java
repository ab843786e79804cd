package holdcurve.physics.fluid;

/**
 * True vapour pressure of petrol from its Reid vapour pressure: ln P = A − B/T, with P in psi
 * absolute, T in degrees Rankine, and A and B linear in ln RVP and in the root of the slope of the
 * distillation curve at 10 %, for which 3.0 °F per % is the figure for motor petrol.
 *
 * <p>Source: US EPA, AP-42, 5th ed., chapter 7.1, constants for refined petroleum stocks (from
 * memory; three public programs carry the same constants). The chart behind it ends at 38 °C; above
 * that the straight line is extended, which is common but unchecked. The vapour pressure of EN
 * 13016-1 is used as if it were Reid's.
 */
final class ReidVapourPressure {
  private static final double PASCAL_PER_PSI = 6894.757293168;
  private static final double RANKINE_PER_KELVIN = 1.8;
  private static final double ROOT_OF_SLOPE = Math.sqrt(3.0);

  private ReidVapourPressure() {}

  /**
   * @param reid Reid vapour pressure at 37.8 °C [Pa]
   * @param temperature [K]
   * @return [Pa absolute]
   */
  static double trueVapourPressure(double reid, double temperature) {
    double ln = Math.log(reid / PASCAL_PER_PSI);
    double a = 15.64 - 1.854 * ROOT_OF_SLOPE - (0.8742 - 0.3280 * ROOT_OF_SLOPE) * ln;
    double b = 8742 - 1042 * ROOT_OF_SLOPE - (1049 - 179.4 * ROOT_OF_SLOPE) * ln;
    return PASCAL_PER_PSI * Math.exp(a - b / (RANKINE_PER_KELVIN * temperature));
  }
}
