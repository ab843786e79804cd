package holdcurve.model;

import java.util.List;

/**
 * What all linear elements of a network add, A y + b, in one sparse matrix: seats that weep, hose
 * walls, temperature and gauge are most of a circuit's elements, and asking each at every stage of
 * every step would be most of the work.
 */
final class LinearRates {
  private final double[][] matrix;
  private final double[] constant;
  private final int[] row;
  private final int[] column;
  private final double[] value;

  private LinearRates(double[][] matrix, double[] constant) {
    this.matrix = matrix;
    this.constant = constant;
    int entries = count(matrix);
    row = new int[entries];
    column = new int[entries];
    value = new double[entries];
    int e = 0;
    for (int i = 0; i < matrix.length; i++) {
      for (int j = 0; j < matrix.length; j++) {
        if (matrix[i][j] != 0) {
          row[e] = i;
          column[e] = j;
          value[e++] = matrix[i][j];
        }
      }
    }
  }

  /**
   * @param elements all of a network; the others are passed over
   * @param n dimension of its state
   */
  static LinearRates of(List<Element> elements, int n) {
    double[] origin = new double[n];
    double[] constant = new double[n];
    double[][] matrix = new double[n][n];
    for (Element element : elements) {
      if (element.isLinear()) {
        element.addRates(0, origin, constant);
        element.addJacobian(0, origin, matrix);
      }
    }
    return new LinearRates(matrix, constant);
  }

  private static int count(double[][] matrix) {
    int entries = 0;
    for (double[] line : matrix) {
      for (double entry : line) {
        entries += entry != 0 ? 1 : 0;
      }
    }
    return entries;
  }

  /** The rates by which these exceed others of the same dimension. */
  LinearRates minus(LinearRates other) {
    int n = constant.length;
    double[][] difference = new double[n][n];
    double[] rest = new double[n];
    for (int i = 0; i < n; i++) {
      rest[i] = constant[i] - other.constant[i];
      for (int j = 0; j < n; j++) {
        difference[i][j] = matrix[i][j] - other.matrix[i][j];
      }
    }
    return new LinearRates(difference, rest);
  }

  /** Overwrites {@code rates} with A y + b. */
  void fill(double[] y, double[] rates) {
    System.arraycopy(constant, 0, rates, 0, constant.length);
    for (int e = 0; e < value.length; e++) {
      rates[row[e]] += value[e] * y[column[e]];
    }
  }

  /** Overwrites {@code jacobian} with A. */
  void fillJacobian(double[][] jacobian) {
    for (int i = 0; i < matrix.length; i++) {
      System.arraycopy(matrix[i], 0, jacobian[i], 0, matrix.length);
    }
  }
}
