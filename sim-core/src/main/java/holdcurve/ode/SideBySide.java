package holdcurve.ode;

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

  /** Adds factor · row {@code from} of b to row {@code to} of a. */
  static void add(double[] a, int to, double factor, double[] b, int from, int stride) {
    int i = to * stride;
    int j = from * stride;
    for (int end = i + stride; i < end; i += LANES, j += LANES) {
      double first = a[i] + factor * b[j];
      double second = a[i + 1] + factor * b[j + 1];
      double third = a[i + 2] + factor * b[j + 2];
      double fourth = a[i + 3] + factor * b[j + 3];
      a[i] = first;
      a[i + 1] = second;
      a[i + 2] = third;
      a[i + 3] = fourth;
    }
  }

  /** Multiplies row {@code row} of a. */
  static void scale(double[] a, int row, double factor, int stride) {
    int i = row * stride;
    for (int end = i + stride; i < end; i += LANES) {
      a[i] *= factor;
      a[i + 1] *= factor;
      a[i + 2] *= factor;
      a[i + 3] *= factor;
    }
  }
}
