package holdcurve.infer;

import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;

/**
 * Covariance of one test's readings about the model's curve, Σ = σ² W⁻¹ + A² B Bᵀ: independent
 * reading errors of variance σ² over the weight of a point, and a correlated model error of
 * amplitude A in the shapes B. Whitens residuals by a square root of Σ⁻¹.
 *
 * <p>With S = W^½ B and the eigenvectors of SᵀS, which depend on neither σ nor A, this costs one
 * pass over the points for each shape: (I + a S Sᵀ)^(−½) = I + Σ_k ((1 + a g_k)^(−½) − 1)/g_k s_k
 * s_kᵀ, with a = A²/σ², s_k = S u_k, g_k = ‖s_k‖².
 */
final class ReadingError {
  private final double[] rootWeight;
  private final double logWeights;
  private final double[][] shapes;
  private final double[] strength;

  ReadingError(ReadingSeries series) {
    double[] weight = series.weight();
    int n = weight.length;
    rootWeight = new double[n];
    double sum = 0;
    for (int i = 0; i < n; i++) {
      rootWeight[i] = Math.sqrt(weight[i]);
      sum += Math.log(weight[i]);
    }
    logWeights = sum;
    Array2DRowRealMatrix weighted =
        new Array2DRowRealMatrix(DiscrepancyBasis.at(series.time(), series.pressure()));
    for (int i = 0; i < n; i++) {
      for (int k = 0; k < weighted.getColumnDimension(); k++) {
        weighted.multiplyEntry(i, k, rootWeight[i]);
      }
    }
    EigenDecomposition eigen = new EigenDecomposition(weighted.transpose().multiply(weighted));
    strength = eigen.getRealEigenvalues();
    shapes = new double[strength.length][];
    for (int k = 0; k < strength.length; k++) {
      shapes[k] = weighted.operate(eigen.getEigenvector(k).toArray());
    }
  }

  /**
   * Whitens residuals.
   *
   * @param residuals reading minus curve [Pa], one a point
   * @param deviation σ of a point of weight one [Pa]
   * @param amplitude A [Pa]
   * @param out receives the whitened residuals from {@code offset} on
   * @return log determinant of Σ [nat]
   */
  double whiten(double[] residuals, double deviation, double amplitude, double[] out, int offset) {
    int n = residuals.length;
    for (int i = 0; i < n; i++) {
      out[offset + i] = residuals[i] * rootWeight[i] / deviation;
    }
    double ratio = amplitude * amplitude / (deviation * deviation);
    double logDeterminant = 2 * n * Math.log(deviation) - logWeights;
    for (int k = 0; k < shapes.length; k++) {
      double size = ratio * strength[k];
      if (size > 1e-9) {
        logDeterminant += Math.log1p(size);
        shrink(shapes[k], (1 / Math.sqrt(1 + size) - 1) / strength[k], out, offset);
      }
    }
    return logDeterminant;
  }

  /**
   * Whitens the slopes of residuals, in place: each column like residuals.
   *
   * @param rows slopes, one row a point [Pa], the first of this test at {@code offset}
   */
  void whitenRows(double[][] rows, double deviation, double amplitude, int offset) {
    for (int i = 0; i < rootWeight.length; i++) {
      double factor = rootWeight[i] / deviation;
      for (int c = 0; c < rows[offset + i].length; c++) {
        rows[offset + i][c] *= factor;
      }
    }
    double ratio = amplitude * amplitude / (deviation * deviation);
    for (int k = 0; k < shapes.length; k++) {
      double size = ratio * strength[k];
      if (size > 1e-9) {
        shrinkRows(shapes[k], (1 / Math.sqrt(1 + size) - 1) / strength[k], rows, offset);
      }
    }
  }

  private static void shrinkRows(double[] shape, double factor, double[][] rows, int offset) {
    double[] dot = new double[rows[offset].length];
    for (int i = 0; i < shape.length; i++) {
      double[] row = rows[offset + i];
      for (int c = 0; c < dot.length; c++) {
        dot[c] += shape[i] * row[c];
      }
    }
    for (int i = 0; i < shape.length; i++) {
      double[] row = rows[offset + i];
      for (int c = 0; c < dot.length; c++) {
        row[c] += factor * dot[c] * shape[i];
      }
    }
  }

  /** Adds factor · (s·r) s to r. The shapes are orthogonal, so their order doesn't matter. */
  private static void shrink(double[] shape, double factor, double[] r, int offset) {
    double dot = 0;
    for (int i = 0; i < shape.length; i++) {
      dot += shape[i] * r[offset + i];
    }
    for (int i = 0; i < shape.length; i++) {
      r[offset + i] += factor * dot * shape[i];
    }
  }
}
