package holdcurve.advice.plan;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.EigenDecomposition;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Directions in which the means of several clouds lie furthest apart for the spread within them
 * (Fisher's linear discriminants, as in Hastie, Tibshirani and Friedman, "The Elements of
 * Statistical Learning", 2nd ed. 2009, section 4.3).
 */
final class Discriminants {
  private final RealMatrix within;
  private final RealMatrix between;

  /**
   * @param weight of each cloud [-]
   * @param clouds cloud, point → coordinates, to which a unit scatter is added
   */
  Discriminants(double[] weight, double[][][] clouds) {
    int d = clouds[0][0].length;
    double[][] inner = new double[d][d];
    double[][] outer = new double[d][d];
    double[] centre = new double[d];
    double[][] means = new double[weight.length][];
    for (int h = 0; h < weight.length; h++) {
      means[h] = mean(clouds[h]);
      for (int k = 0; k < d; k++) {
        centre[k] += weight[h] * means[h][k];
      }
      for (double[] point : clouds[h]) {
        addSquare(inner, point, means[h], weight[h] / clouds[h].length);
      }
    }
    for (int h = 0; h < weight.length; h++) {
      addSquare(outer, means[h], centre, weight[h]);
    }
    for (int k = 0; k < d; k++) {
      inner[k][k] += 1;
    }
    within = new Array2DRowRealMatrix(inner, false);
    between = new Array2DRowRealMatrix(outer, false);
  }

  static double[] mean(double[][] points) {
    double[] mean = new double[points[0].length];
    for (double[] point : points) {
      for (int k = 0; k < mean.length; k++) {
        mean[k] += point[k] / points.length;
      }
    }
    return mean;
  }

  private static void addSquare(double[][] sum, double[] point, double[] from, double weight) {
    for (int k = 0; k < sum.length; k++) {
      for (int l = 0; l < sum.length; l++) {
        sum[k][l] += weight * ((point[k] - from[k]) * (point[l] - from[l]));
      }
    }
  }

  /** Columns are directions, best first; scaled to unit spread within. */
  RealMatrix directions(int most) {
    RealMatrix inverse = new LUDecomposition(lower()).getSolver().getInverse();
    RealMatrix turned = inverse.multiply(between).multiply(inverse.transpose());
    RealMatrix even = turned.add(turned.transpose()).scalarMultiply(0.5);
    int d = even.getRowDimension();
    RealMatrix vectors = new EigenDecomposition(even).getV();
    return inverse.transpose().multiply(vectors.getSubMatrix(0, d - 1, 0, Math.min(most, d) - 1));
  }

  private RealMatrix lower() {
    RealMatrix even = within.add(within.transpose()).scalarMultiply(0.5);
    return new CholeskyDecomposition(even).getL();
  }
}
