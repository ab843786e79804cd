package holdcurve.inference.posterior;

import holdcurve.inference.fit.NormalEquations;
import holdcurve.inference.likelihood.JobModel;

/**
 * {@link NormalEquations} of sensitivities that change in proportion to some steps, G = G₀ + Σ_k
 * a_k G_k: their squares are quadratic in the steps, so the sums over rows are made once. One a
 * thread.
 */
final class NormalEquationFamily {
  private final NormalEquations[] parts;

  /** For each pair p ≥ q of parts, the sums over rows of G_pᵀG_q + G_qᵀG_p, or of G_pᵀG_p. */
  private final NormalEquations.Squares[] crossed;

  private final NormalEquations mixed;

  /**
   * @param base sensitivities without a step, rows as for {@link NormalEquations}
   * @param changes by one step along each axis
   */
  NormalEquationFamily(JobModel data, double[][] base, double[][][] changes) {
    parts = new NormalEquations[changes.length + 1];
    parts[0] = new NormalEquations(data, base);
    for (int k = 0; k < changes.length; k++) {
      parts[k + 1] = new NormalEquations(data, changes[k]);
    }
    crossed = new NormalEquations.Squares[parts.length * (parts.length + 1) / 2];
    int pair = 0;
    for (int p = 0; p < parts.length; p++) {
      for (int q = 0; q <= p; q++) {
        crossed[pair++] = p == q ? parts[p].squares() : parts[p].crossed(parts[q]);
      }
    }
    mixed = parts[0].blank();
  }

  /** The sums at these steps, good until the next call. */
  NormalEquations at(double[] steps) {
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
