package holdcurve.physics.ode;

/**
 * Arithmetic on vectors that lie side by side, one for each of up to {@code stride} parameters:
 * entry i of vector k at {@code [i * stride + k]}. The stride is a multiple of four, and loops take
 * four at a time by hand: with a dozen parameters the loops that the compiler would unroll never
 * get past their beginnings.
 */
final class SideBySide {
  private static final int LANES = 4;

  private SideBySide() {}

  /** The least stride that holds {@code count} vectors. */
  static int stride(int count) {
    return (count + LANES - 1) / LANES * LANES;
  }

  /**
   * Replaces row k by factor · row k − Σ values_e · row columns_e, e from start to before end. Long
   * because it keeps four sums in registers.
   */
  static void reduce(
      double[] b,
      int k,
      double factor,
      double[] values,
      int[] columns,
      int start,
      int end,
      int stride) {
    for (int lane = 0; lane < stride; lane += LANES) {
      int at = k * stride + lane;
      double first = factor * b[at];
      double second = factor * b[at + 1];
      double third = factor * b[at + 2];
      double fourth = factor * b[at + 3];
      for (int e = start; e < end; e++) {
        double value = values[e];
        int from = columns[e] * stride + lane;
        first -= value * b[from];
        second -= value * b[from + 1];
        third -= value * b[from + 2];
        fourth -= value * b[from + 3];
      }
      b[at] = first;
      b[at + 1] = second;
      b[at + 2] = third;
      b[at + 3] = fourth;
    }
  }
}
