package holdcurve.ode;

import java.util.Arrays;

/**
 * The weighted sums over stages of one method, without the zero coefficients.
 *
 * <p>Where a row of the table is the row above with a one appended (the last stages of stiffly
 * accurate methods), the sum above is carried on: cheaper, and free of cancellation.
 */
final class StageSums {
  private final int n;
  private final int last;
  private final double[][] coupling;
  private final double[][] carry;
  private final double[] weights;
  private final double[] error;
  private final double[][] dense;
  private final boolean[] continues;

  StageSums(RosenbrockTableau tableau, int dimension) {
    n = dimension;
    last = tableau.stageCount() - 1;
    coupling = tableau.coupling();
    carry = tableau.carry();
    weights = tableau.weights();
    error = tableau.error();
    dense = tableau.dense();
    continues = new boolean[last + 2];
    for (int i = 1; i <= last; i++) {
      continues[i] = continues(coupling[i - 1], coupling[i]);
    }
    continues[last + 1] = continues(coupling[last], weights);
  }

  private static boolean continues(double[] above, double[] row) {
    for (int j = 0; j < above.length; j++) {
      if (row[j] != above[j]) {
        return false;
      }
    }
    return row[above.length] == 1 && above.length > 0;
  }

  /** Where stage i is evaluated; {@code point} still holds the point of the stage before. */
  void point(int i, double[] y, double[][] stages, double[] point) {
    sum(continues[i], coupling[i], y, stages, point);
  }

  /** State at the end; {@code point} still holds the point of the last stage. */
  void end(double[] y, double[][] stages, double[] point, double[] end) {
    if (continues[last + 1]) {
      System.arraycopy(point, 0, end, 0, n);
    }
    sum(continues[last + 1], weights, y, stages, end);
  }

  private void sum(
      boolean carriesOn, double[] row, double[] y, double[][] stages, double[] result) {
    if (carriesOn) {
      add(1, stages[row.length - 1], result);
      return;
    }
    System.arraycopy(y, 0, result, 0, n);
    addAll(row, 1, stages, result);
  }

  /** Adds Σ (k_ij/h) U_j to stage i. */
  void addCarry(int i, double inverseStep, double[][] stages) {
    addAll(carry[i], inverseStep, stages, stages[i]);
  }

  void error(double[][] stages, double[] result) {
    Arrays.fill(result, 0);
    addAll(error, 1, stages, result);
  }

  void dense(double[][] stages, double[][] result) {
    for (int l = 0; l < dense.length; l++) {
      Arrays.fill(result[l], 0);
      addAll(dense[l], 1, stages, result[l]);
    }
  }

  private void addAll(double[] row, double factor, double[][] stages, double[] result) {
    for (int j = 0; j < row.length; j++) {
      if (row[j] != 0) {
        add(factor * row[j], stages[j], result);
      }
    }
  }

  private void add(double factor, double[] stage, double[] result) {
    for (int k = 0; k < n; k++) {
      result[k] += factor * stage[k];
    }
  }
}
