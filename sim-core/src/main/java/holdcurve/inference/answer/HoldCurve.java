package holdcurve.inference.answer;

import java.util.Arrays;
import java.util.List;

/**
 * What the gauge should show in one hold test if a hypothesis is true, before reading error.
 *
 * @param test id of the hold test
 * @param time since the pump stopped [s], ascending
 * @param middle expected reading [Pa gauge], one a time
 * @param low 5 % quantile of the reading [Pa gauge]
 * @param high 95 % quantile of the reading [Pa gauge]
 */
public record HoldCurve(String test, double[] time, double[] middle, double[] low, double[] high) {
  /**
   * The middle and the 90 % range of equally likely curves.
   *
   * @param curves each with one reading a time [Pa gauge]
   */
  public static HoldCurve of(String test, double[] time, List<double[]> curves) {
    return new HoldCurve(
        test,
        time,
        quantile(curves, time.length, 0.5),
        quantile(curves, time.length, 0.05),
        quantile(curves, time.length, 0.95));
  }

  /**
   * Times to draw a hold at, denser at the start, where the curve bends.
   *
   * @param span how long it lasts [s]
   * @param pieces between the times
   */
  public static double[] times(double span, int pieces) {
    double[] times = new double[pieces + 1];
    for (int i = 0; i <= pieces; i++) {
      double share = (double) i / pieces;
      times[i] = span * share * (0.3 + 0.7 * share);
    }
    return times;
  }

  private static double[] quantile(List<double[]> curves, int points, double share) {
    double[] quantile = new double[curves.isEmpty() ? 0 : points];
    double[] column = new double[curves.size()];
    for (int k = 0; k < quantile.length; k++) {
      for (int i = 0; i < column.length; i++) {
        column[i] = curves.get(i)[k];
      }
      Arrays.sort(column);
      double place = share * (column.length - 1);
      int below = (int) place;
      int above = Math.min(below + 1, column.length - 1);
      quantile[k] = column[below] + (place - below) * (column[above] - column[below]);
    }
    return quantile;
  }
}
