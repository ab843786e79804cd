package holdcurve.inference.noise;

import holdcurve.inference.data.ReadingSeries;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.EigenDecomposition;

/**
 * Covariance of one test's readings about the model's curve, Σ = σ² W⁻¹ + A² B Bᵀ: independent
 * reading errors of variance σ² over the weight of a point, and a correlated model error of
 * amplitude A in the shapes B.
 *
 * <p>With S = W^½ B and the eigenvectors u_k of SᵀS, which depend on neither σ nor A, its inverse
 * is σ⁻² W^½ (I − Σ_k h_k s_k s_kᵀ) W^½, with s_k = S u_k, g_k = ‖s_k‖², a = A²/σ² and h_k = a/(1 +
 * a g_k) (Woodbury; the s_k are orthogonal).
 */
public final class ReadingError {
  private final double share;
  private final double[] rootWeight;
  private final double logWeights;
  private final double[][] shapes;
  private final double[] strength;

  /**
   * @param share of the power of the readings that this test has [-]
   */
  public ReadingError(ReadingSeries series, double share) {
    this.share = share;
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
    for (int i = 0; i < n; i++) {
      rootWeight[i] *= Math.sqrt(share);
    }
  }

  /** Share of the power of the readings that this test has [-]. */
  public double share() {
    return share;
  }

  /** Number of points. */
  public int size() {
    return rootWeight.length;
  }

  /** Number of shapes s_k. */
  public int shapeCount() {
    return shapes.length;
  }

  /**
   * Residuals r of this test, (ρ W)^½ r.
   *
   * @param residuals of all tests [Pa], those of this one from {@code offset} on
   */
  public double[] weighted(double[] residuals, int offset) {
    double[] weighted = new double[size()];
    for (int i = 0; i < weighted.length; i++) {
      weighted[i] = rootWeight[i] * residuals[offset + i];
    }
    return weighted;
  }

  /** Multiplies the rows of this test by (ρ W)^½, in place. */
  public void weightRows(double[][] rows, int offset) {
    for (int i = 0; i < rootWeight.length; i++) {
      for (int c = 0; c < rows[offset + i].length; c++) {
        rows[offset + i][c] *= rootWeight[i];
      }
    }
  }

  /** s_k · (ρ W)^½ r. */
  public double along(int k, double[] weighted) {
    double sum = 0;
    for (int i = 0; i < weighted.length; i++) {
      sum += shapes[k][i] * weighted[i];
    }
    return sum;
  }

  /**
   * s_kᵀ W^½ G for each shape.
   *
   * @param rows W^½ G, the first of this test at {@code offset}
   */
  public double[][] alongRows(double[][] rows, int offset) {
    double[][] sums = new double[shapes.length][rows[0].length];
    for (int k = 0; k < shapes.length; k++) {
      for (int i = 0; i < rootWeight.length; i++) {
        double entry = shapes[k][i];
        double[] row = rows[offset + i];
        for (int c = 0; c < row.length; c++) {
          sums[k][c] += entry * row[c];
        }
      }
    }
    return sums;
  }

  /**
   * Fills in h_k of each shape, the part of it that the model error may explain away.
   *
   * @param first place of the first
   * @return the place after the last
   */
  public int fillShares(Scales scales, double[] shares, int first) {
    double ratio = ratio(scales);
    for (int k = 0; k < strength.length; k++) {
      shares[first + k] = ratio / (1 + ratio * strength[k]);
    }
    return first + strength.length;
  }

  /** Log determinant of Σ at full power [nat]. */
  public double logDeterminant(Scales scales) {
    double ratio = ratio(scales);
    double sum = 2 * size() * Math.log(scales.deviation()) - logWeights;
    for (double g : strength) {
      sum += Math.log1p(Math.max(0, ratio * g));
    }
    return sum;
  }

  /**
   * Whitened residuals, σ⁻¹ (I + a S Sᵀ)^(−½) W^½ r: each row belongs to one reading.
   *
   * @param residuals of all tests [Pa], those of this one from {@code offset} on
   * @param out receives this test's rows from {@code offset} on [-]
   */
  public void whiten(double[] residuals, Scales scales, double[] out, int offset) {
    double[] weighted = weighted(residuals, offset);
    for (int i = 0; i < weighted.length; i++) {
      out[offset + i] = weighted[i] / scales.deviation();
    }
    for (int k = 0; k < shapes.length; k++) {
      double size = ratio(scales) * strength[k];
      if (size > 1e-9) {
        double along = along(k, weighted) / scales.deviation();
        double factor = along * (1 / Math.sqrt(1 + size) - 1) / strength[k];
        for (int i = 0; i < weighted.length; i++) {
          out[offset + i] += factor * shapes[k][i];
        }
      }
    }
  }

  private static double ratio(Scales scales) {
    double relative = scales.amplitude() / scales.deviation();
    return relative * relative;
  }
}
