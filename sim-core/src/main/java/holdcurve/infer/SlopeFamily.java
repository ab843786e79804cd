package holdcurve.infer;

/**
 * {@link SlopeSums} of slopes that change in proportion to some steps, G = G₀ + Σ_k a_k G_k: their
 * squares are quadratic in the steps, so the sums over rows are made once.
 */
final class SlopeFamily {
  private final SlopeSums[] parts;

  /** For each pair p ≥ q of parts, the sums over rows of G_pᵀG_q + G_qᵀG_p, or of G_pᵀG_p. */
  private final double[][] ofReadings;

  private final double[][] ofSides;
  private final boolean sides;

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
    sides = parts[0].squares().ofSides().length > 0;
    int pairs = parts.length * (parts.length + 1) / 2;
    ofReadings = new double[pairs][];
    ofSides = new double[pairs][];
    int pair = 0;
    for (int p = 0; p < parts.length; p++) {
      for (int q = 0; q <= p; q++) {
        SlopeSums.Squares both = p == q ? parts[p].squares() : parts[p].crossed(parts[q]);
        ofReadings[pair] = both.ofReadings();
        ofSides[pair++] = both.ofSides();
      }
    }
  }

  SlopeSums at(double[] steps) {
    double[] factors = new double[parts.length];
    factors[0] = 1;
    System.arraycopy(steps, 0, factors, 1, steps.length);
    double[] products = new double[ofReadings.length];
    int pair = 0;
    for (int p = 0; p < parts.length; p++) {
      for (int q = 0; q <= p; q++) {
        products[pair++] = factors[p] * factors[q];
      }
    }
    SlopeSums.Squares sum = SlopeSums.Squares.none(parts[0].count(), sides);
    FlatRows.addAll(sum.ofReadings(), products, ofReadings);
    FlatRows.addAll(sum.ofSides(), products, ofSides);
    return SlopeSums.sum(factors, parts, sum);
  }
}
