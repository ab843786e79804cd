package holdcurve.inference.fit;

import java.util.Arrays;
import java.util.List;

/**
 * Rows of equal length, one behind the other in one array. Their length is filled up to a multiple
 * of four with zeros, and sums take four columns at a time by hand: rows of a dozen are too short
 * for loops that a compiler unrolls, and it may not change the order of a sum.
 */
final class FlatRows {
  private static final int LANES = 4;

  private final int count;
  private final int columns;
  private final int stride;
  private final double[] values;

  private FlatRows(int count, int columns, double[] values) {
    this.count = count;
    this.columns = columns;
    this.stride = stride(columns);
    this.values = values;
  }

  private static int stride(int columns) {
    return (columns + LANES - 1) / LANES * LANES;
  }

  /** A copy of rows of {@code columns} each. */
  static FlatRows of(List<double[]> rows, int columns) {
    int stride = stride(columns);
    double[] values = new double[rows.size() * stride];
    for (int i = 0; i < rows.size(); i++) {
      System.arraycopy(rows.get(i), 0, values, i * stride, columns);
    }
    return new FlatRows(rows.size(), columns, values);
  }

  int count() {
    return count;
  }

  int columns() {
    return columns;
  }

  double[] row(int i) {
    return Arrays.copyOfRange(values, i * stride, i * stride + columns);
  }

  /**
   * Adds Σ_i factor_i row_i over rows from {@code start} to before {@code end}.
   *
   * @param factors the first belongs to row {@code start}
   */
  void addSum(double[] factors, int start, int end, double[] to) {
    double[] sum = new double[stride];
    for (int c = 0; c < stride; c += LANES) {
      double first = 0;
      double second = 0;
      double third = 0;
      double fourth = 0;
      for (int i = start; i < end; i++) {
        double factor = factors[i - start];
        int at = i * stride + c;
        first += factor * values[at];
        second += factor * values[at + 1];
        third += factor * values[at + 2];
        fourth += factor * values[at + 3];
      }
      sum[c] = first;
      sum[c + 1] = second;
      sum[c + 2] = third;
      sum[c + 3] = fourth;
    }
    for (int c = 0; c < columns; c++) {
      to[c] += sum[c];
    }
  }

  /**
   * Adds factor · row_i row_iᵀ to a matrix whose lower triangle lies row after row; many
   * sensitivities are zero.
   */
  void addSquare(int i, double factor, double[] lower) {
    int at = i * stride;
    int place = 0;
    for (int j = 0; j < columns; j++) {
      double entry = factor * values[at + j];
      for (int k = 0; k <= j && entry != 0; k++) {
        lower[place + k] += entry * values[at + k];
      }
      place += j + 1;
    }
  }
}
