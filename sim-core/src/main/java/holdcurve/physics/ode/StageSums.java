package holdcurve.physics.ode;

import java.util.Arrays;

/**
 * The weighted sums over stages of one method.
 *
 * <p>Where a row of the table is the row above with a one appended (the last stages of stiffly
 * accurate methods), the sum above is carried on: cheaper, and free of cancellation.
 */
final class StageSums {
  private final int last;
  private final WeightedSum[] coupling;
  private final WeightedSum[] carry;
  private final WeightedSum[] dense;
  private final WeightedSum error;
  private final boolean[] continues;

  StageSums(RosenbrockTableau tableau) {
    last = tableau.stageCount() - 1;
    double[][] rows = Arrays.copyOf(tableau.coupling(), last + 2);
    rows[last + 1] = tableau.weights();
    coupling = sums(rows);
    carry = sums(tableau.carry());
    dense = sums(tableau.dense());
    error = new WeightedSum(tableau.error());
    continues = new boolean[rows.length];
    for (int i = 2; i < rows.length; i++) {
      continues[i] =
          rows[i][i - 1] == 1 && Arrays.equals(rows[i - 1], Arrays.copyOf(rows[i], i - 1));
    }
  }

  private static WeightedSum[] sums(double[][] rows) {
    return Arrays.stream(rows).map(WeightedSum::new).toArray(WeightedSum[]::new);
  }

  /** Where stage i is evaluated; {@code point} still holds the point of the stage before. */
  void point(int i, double[] y, double[][] stages, double[] point) {
    if (continues[i]) {
      WeightedSum.addOne(point, 1, stages[i - 1]);
    } else {
      System.arraycopy(y, 0, point, 0, y.length);
      coupling[i].addTo(point, 1, stages);
    }
  }

  /** State at the end; {@code point} still holds the point of the last stage. */
  void end(double[] y, double[][] stages, double[] point, double[] end) {
    point(last + 1, y, stages, point);
    System.arraycopy(point, 0, end, 0, y.length);
  }

  /** Adds Σ (k_ij/h) U_j to stage i. */
  void addCarry(int i, double inverseStep, double[][] stages) {
    carry[i].addTo(stages[i], inverseStep, stages);
  }

  void error(double[][] stages, double[] result) {
    Arrays.fill(result, 0);
    error.addTo(result, 1, stages);
  }

  void dense(double[][] stages, double[][] result) {
    for (int l = 0; l < dense.length; l++) {
      Arrays.fill(result[l], 0);
      dense[l].addTo(result[l], 1, stages);
    }
  }
}
