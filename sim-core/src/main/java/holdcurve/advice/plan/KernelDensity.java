package holdcurve.advice.plan;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Densities of outcomes, one a hypothesis: mixtures of Gaussians about its draws, drawn together so
 * that mean and covariance stay (West, J. R. Statist. Soc. B 55 (1993) 409). Covariances are drawn
 * towards the one common to all hypotheses (Friedman, J. Am. Statist. Assoc. 84 (1989) 165).
 */
final class KernelDensity {
  /**
   * How the mixtures are made.
   *
   * @param width of a kernel as a share of the spread of all draws [-]; 1 is one Gaussian
   * @param common share of the common covariance in each [-]
   */
  record Shape(double width, double common) {}

  static final List<Shape> SHAPES =
      List.of(new Shape(1, 1), new Shape(1, 0.4), new Shape(0.6, 0.4), new Shape(0.35, 0.4));

  private final double[][][] centres;
  private final double[][][] inverse;
  private final double[] logNorm;
  private final int dimension;

  /**
   * @param prior weight of each hypothesis [-]
   * @param place hypothesis, draw → where its outcome is expected, the scatter not included
   * @param scatter covariance of an outcome about its place
   * @param directions how many of its coordinates are used
   * @param left fold of draws that is left out; none if negative
   * @param folds how many there are; every {@code folds}-th draw belongs to one
   */
  KernelDensity(
      double[] prior,
      double[][][] place,
      double[][] scatter,
      int directions,
      Shape shape,
      int left,
      int folds) {
    dimension = Math.min(directions, place[0][0].length);
    centres = new double[place.length][][];
    inverse = new double[place.length][][];
    logNorm = new double[place.length];
    double[][][] own = new double[place.length][][];
    double[][] common = new double[dimension][dimension];
    for (int h = 0; h < place.length; h++) {
      double[][] used = used(place[h], left, folds);
      double[] mean = Discriminants.mean(used);
      own[h] = covariance(used, mean);
      add(common, own[h], prior[h]);
      centres[h] = centres(used, mean, shape.width());
    }
    for (int h = 0; h < place.length; h++) {
      double[][] mixed = new double[dimension][dimension];
      add(mixed, scatter, 1);
      double scale = shape.width() * shape.width();
      add(mixed, common, scale * shape.common());
      add(mixed, own[h], scale * (1 - shape.common()));
      finish(h, mixed);
    }
  }

  private static double[][] used(double[][] draws, int left, int folds) {
    List<double[]> used = new ArrayList<>();
    for (int i = 0; i < draws.length; i++) {
      if (i % folds != left) {
        used.add(draws[i]);
      }
    }
    return used.toArray(double[][]::new);
  }

  private double[][] covariance(double[][] draws, double[] mean) {
    double[][] covariance = new double[dimension][dimension];
    for (double[] draw : draws) {
      for (int k = 0; k < dimension; k++) {
        for (int l = 0; l < dimension; l++) {
          double product = (draw[k] - mean[k]) * (draw[l] - mean[l]);
          covariance[k][l] += product / Math.max(1, draws.length - 1);
        }
      }
    }
    return covariance;
  }

  private double[][] centres(double[][] draws, double[] mean, double width) {
    if (width >= 1) {
      return new double[][] {mean};
    }
    double shrunk = Math.sqrt(1 - width * width);
    double[][] places = new double[draws.length][dimension];
    for (int i = 0; i < draws.length; i++) {
      for (int k = 0; k < dimension; k++) {
        places[i][k] = mean[k] + shrunk * (draws[i][k] - mean[k]);
      }
    }
    return places;
  }

  private static void add(double[][] sum, double[][] matrix, double weight) {
    for (int k = 0; k < sum.length; k++) {
      for (int l = 0; l < sum.length; l++) {
        sum[k][l] += weight * matrix[k][l];
      }
    }
  }

  private void finish(int h, double[][] covariance) {
    CholeskyDecomposition factor =
        new CholeskyDecomposition(new Array2DRowRealMatrix(covariance, false), 1e-9, 1e-12);
    inverse[h] = inverse(factor.getL());
    logNorm[h] = -0.5 * Math.log(factor.getDeterminant()) - Math.log(centres[h].length);
  }

  /** Of a lower triangular matrix. */
  private static double[][] inverse(RealMatrix lower) {
    int d = lower.getRowDimension();
    double[][] inverse = new double[d][d];
    for (int column = 0; column < d; column++) {
      for (int i = column; i < d; i++) {
        double sum = i == column ? 1 : 0;
        for (int k = column; k < i; k++) {
          sum -= lower.getEntry(i, k) * inverse[k][column];
        }
        inverse[i][column] = sum / lower.getEntry(i, i);
      }
    }
    return inverse;
  }

  /** Log density at y, but for a constant that is the same for all hypotheses [nat]. */
  double log(int h, double[] y) {
    double most = Double.NEGATIVE_INFINITY;
    double sum = 0;
    for (double[] centre : centres[h]) {
      double log = -0.5 * distance(inverse[h], centre, y);
      if (log > most) {
        sum = sum * Math.exp(most - log) + 1;
        most = log;
      } else {
        sum += Math.exp(log - most);
      }
    }
    return most + Math.log(sum) + logNorm[h];
  }

  private static double distance(double[][] inverse, double[] centre, double[] y) {
    double distance = 0;
    for (int i = 0; i < inverse.length; i++) {
      double along = 0;
      for (int k = 0; k <= i; k++) {
        along += inverse[i][k] * (y[k] - centre[k]);
      }
      distance += along * along;
    }
    return distance;
  }
}
