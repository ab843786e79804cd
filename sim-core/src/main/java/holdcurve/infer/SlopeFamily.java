package holdcurve.infer;

/**
 * {@link SlopeSums} of slopes that change in proportion to some steps, G = G₀ + Σ_k a_k G_k: their
 * squares are quadratic in the steps, so the sums over rows are made once.
 */
final class SlopeFamily {
  private final SlopeSums[] parts;

  /** Sums over rows of G_pᵀG_q + G_qᵀG_p, or of G_pᵀG_p, lower triangles. */
  private final SlopeSums.Squares[][] squares;

  /**
   * @param base slopes without a step, rows as for {@link SlopeSums}
   * @param changes by one step along each axis
   */
  SlopeFamily(JobModel data, double[][] base, double[][][] changes) {
    parts = new SlopeSums[changes.length + 1];
    parts[0] = new SlopeSums(data, base);
    for (int k = 0; k < changes.length; k++) {
      parts[k + 1] = new SlopeSums(data, changes[k]);
    }
    squares = new SlopeSums.Squares[parts.length][];
    for (int p = 0; p < parts.length; p++) {
      squares[p] = new SlopeSums.Squares[p + 1];
      for (int q = 0; q <= p; q++) {
        squares[p][q] = p == q ? parts[p].squares() : parts[p].crossed(parts[q]);
      }
    }
  }

  SlopeSums at(double[] steps) {
    double[] factors = new double[parts.length];
    factors[0] = 1;
    System.arraycopy(steps, 0, factors, 1, steps.length);
    SlopeSums.Squares sum = squares[0][0].scaled(1);
    for (int p = 1; p < parts.length; p++) {
      for (int q = 0; q <= p; q++) {
        sum.add(factors[p] * factors[q], squares[p][q]);
      }
    }
    return SlopeSums.sum(factors, parts, sum);
  }
}
