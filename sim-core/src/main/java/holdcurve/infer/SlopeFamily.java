package holdcurve.infer;

/**
 * {@link SlopeSums} of slopes that change in proportion to some steps, G = G₀ + Σ_k a_k G_k: their
 * squares are quadratic in the steps, so the sums over rows are made once. One a thread.
 */
final class SlopeFamily {
  private final SlopeSums[] parts;

  /** For each pair p ≥ q of parts, the sums over rows of G_pᵀG_q + G_qᵀG_p, or of G_pᵀG_p. */
  private final SlopeSums.Squares[] crossed;

  private final SlopeSums mixed;

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
    crossed = new SlopeSums.Squares[parts.length * (parts.length + 1) / 2];
    int pair = 0;
    for (int p = 0; p < parts.length; p++) {
      for (int q = 0; q <= p; q++) {
        crossed[pair++] = p == q ? parts[p].squares() : parts[p].crossed(parts[q]);
      }
    }
    mixed = parts[0].blank();
  }

  /** The sums at these steps, good until the next call. */
  SlopeSums at(double[] steps) {
    double[] factors = new double[parts.length];
    factors[0] = 1;
    System.arraycopy(steps, 0, factors, 1, steps.length);
    double[] products = new double[crossed.length];
    int pair = 0;
    for (int p = 0; p < parts.length; p++) {
      for (int q = 0; q <= p; q++) {
        products[pair++] = factors[p] * factors[q];
      }
    }
    mixed.become(factors, parts, products, crossed);
    return mixed;
  }
}
