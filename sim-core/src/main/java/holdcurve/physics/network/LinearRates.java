package holdcurve.physics.network;

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

  private LinearRates(double[][] matrix, double[] constant) {
    this.matrix = matrix;
    this.constant = constant;
    int n = constant.length;
    int count = 0;
    for (double[] row : matrix) {
      for (double entry : row) {
        count += entry != 0 ? 1 : 0;
      }
    }
    end = new int[n];
    column = new int[count];
    value = new double[count];
    int next = 0;
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        double entry = matrix[i][j];
        if (entry != 0) {
          column[next] = j;
          value[next++] = entry;
        }
      }
      end[i] = next;
    }
  }

  /**
   * @param elements all of a network; the others are passed over
   * @param n dimension of its state
   */
  static LinearRates of(List<Element> elements, int n) {
    return difference(elements, List.of(), n);
  }

  /** What the first elements add more than the second. */
  static LinearRates difference(List<Element> added, List<Element> removed, int n) {
    double[] constant = new double[n];
    double[][] matrix = new double[n][n];
    if (add(removed, matrix, constant)) {
      negate(constant);
      for (double[] row : matrix) {
        negate(row);
      }
    }
    add(added, matrix, constant);
    return new LinearRates(matrix, constant);
  }

  /** The rates by which these exceed others of the same dimension. */
  LinearRates minus(LinearRates other) {
    int n = constant.length;
    double[][] rest = new double[n][n];
    double[] restConstant = new double[n];
    for (int i = 0; i < n; i++) {
      restConstant[i] = constant[i] - other.constant[i];
      for (int j = 0; j < n; j++) {
        rest[i][j] = matrix[i][j] - other.matrix[i][j];
      }
    }
    return new LinearRates(rest, restConstant);
  }

  private static boolean add(List<Element> elements, double[][] matrix, double[] constant) {
    double[] origin = new double[constant.length];
    boolean any = false;
    for (Element element : elements) {
      if (element.isLinear()) {
        element.addRates(0, origin, constant);
        element.addJacobian(0, origin, matrix);
        any = true;
      }
    }
    return any;
  }

  private static void negate(double[] values) {
    for (int i = 0; i < values.length; i++) {
      values[i] = -values[i];
    }
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
