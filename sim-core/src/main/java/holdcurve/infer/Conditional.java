package holdcurve.infer;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;

/**
 * The linear-Gaussian problem left when the sampled coordinates are fixed: whitened readings a = J
 * z + noise, with z ~ N(0, I).
 *
 * @param mean posterior mean of z [-]
 * @param factor Cholesky factorisation of the posterior precision I + JᵀJ
 * @param logMarginal log density of a, with the whitening's determinant left to the caller [nat]
 */
record Conditional(double[] mean, CholeskyDecomposition factor, double logMarginal) {
  /**
   * @param jacobian J, one row a reading, one column a coordinate of z
   * @param atZero a: whitened readings less the curve at z = 0, to first order
   */
  static Conditional of(double[][] jacobian, double[] atZero) {
    RealMatrix j = new Array2DRowRealMatrix(jacobian, false);
    RealMatrix precision = gram(jacobian);
    CholeskyDecomposition factor = new CholeskyDecomposition(precision);
    RealVector mean = factor.getSolver().solve(new ArrayRealVector(j.preMultiply(atZero), false));
    RealVector rest = new ArrayRealVector(atZero, false).subtract(j.operate(mean));
    double misfit = rest.dotProduct(rest) + mean.dotProduct(mean);
    double log = -0.5 * (misfit + logDeterminant(factor) + atZero.length * Math.log(2 * Math.PI));
    return new Conditional(mean.toArray(), factor, log);
  }

  private static RealMatrix gram(double[][] jacobian) {
    int m = jacobian[0].length;
    double[][] gram = new double[m][m];
    for (double[] row : jacobian) {
      for (int j = 0; j < m; j++) {
        double entry = row[j];
        if (entry != 0) {
          for (int k = 0; k <= j; k++) {
            gram[j][k] += entry * row[k];
          }
        }
      }
    }
    for (int j = 0; j < m; j++) {
      gram[j][j] += 1;
      for (int k = 0; k < j; k++) {
        gram[k][j] = gram[j][k];
      }
    }
    return new Array2DRowRealMatrix(gram, false);
  }

  private static double logDeterminant(CholeskyDecomposition factor) {
    double sum = 0;
    RealMatrix lower = factor.getL();
    for (int i = 0; i < lower.getRowDimension(); i++) {
      sum += 2 * Math.log(lower.getEntry(i, i));
    }
    return sum;
  }

  /**
   * A draw from the posterior of z.
   *
   * @param normal independent standard-normal numbers, as many as z
   */
  double[] draw(double[] normal) {
    RealMatrix upper = factor.getLT();
    int m = normal.length;
    double[] z = new double[m];
    for (int i = m - 1; i >= 0; i--) {
      double sum = normal[i];
      for (int k = i + 1; k < m; k++) {
        sum -= upper.getEntry(i, k) * z[k];
      }
      z[i] = sum / upper.getEntry(i, i);
    }
    for (int i = 0; i < m; i++) {
      z[i] += mean[i];
    }
    return z;
  }
}
