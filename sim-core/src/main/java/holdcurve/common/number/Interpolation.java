package holdcurve.common.number;

import java.util.Arrays;

/** Values between the points of a curve. */
public final class Interpolation {
  private Interpolation() {}

  /**
   * The value on the straight line between the points on either side; beyond the ends that of the
   * end.
   *
   * @param x ascending, at least one
   * @param values one an x
   */
  public static double at(double[] x, double[] values, double where) {
    int last = x.length - 1;
    if (where <= x[0]) {
      return values[0];
    }
    if (where >= x[last]) {
      return values[last];
    }
    int found = Arrays.binarySearch(x, where);
    int after = found < 0 ? -found - 1 : found;
    double share = (where - x[after - 1]) / (x[after] - x[after - 1]);
    return values[after - 1] + share * (values[after] - values[after - 1]);
  }
}
