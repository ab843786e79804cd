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

  /** Where the entries of each row end. */
  private final int[] end;

  private final int[] column;
  private final double[] value;

  /** Entries of {@code matrix}, less those of {@code other} if that isn't null. */
  private LinearRates(double[][] matrix, double[][] other, double[] constant) {
    this.matrix = matrix;
    this.constant = constant;
    int n = constant.length;
    int count = 0;
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        count += entry(matrix, other, i, j) != 0 ? 1 : 0;
      }
    }
    end = new int[n];
    column = new int[count];
    value = new double[count];
    int next = 0;
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        double entry = entry(matrix, other, i, j);
        if (entry != 0) {
          column[next] = j;
          value[next++] = entry;
        }
      }
      end[i] = next;
    }
  }

  private static double entry(double[][] matrix, double[][] other, int i, int j) {
    return other == null ? matrix[i][j] : matrix[i][j] - other[i][j];
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
    return new LinearRates(matrix, null, constant);
  }

  /** The rates by which these exceed others of the same dimension; good for {@link #fill} only. */
  LinearRates minus(LinearRates other) {
    double[] rest = new double[constant.length];
    for (int i = 0; i < rest.length; i++) {
      rest[i] = constant[i] - other.constant[i];
    }
    return new LinearRates(matrix, other.matrix, rest);
  }

  /** Overwrites {@code rates} with A y + b. */
  void fill(double[] y, double[] rates) {
    int e = 0;
    for (int i = 0; i < end.length; i++) {
      double sum = constant[i];
      for (; e < end[i]; e++) {
        sum += value[e] * y[column[e]];
      }
      rates[i] = sum;
    }
  }

  /** Overwrites {@code jacobian} with A. */
  void fillJacobian(double[][] jacobian) {
    for (int i = 0; i < matrix.length; i++) {
      System.arraycopy(matrix[i], 0, jacobian[i], 0, matrix.length);
    }
  }
}
