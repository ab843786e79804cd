package holdcurve.inference.fit;

import java.util.Arrays;
import java.util.List;

/**
 * Rows of equal length, one behind the other in one array. Their length is filled up to a multiple
 * of four with zeros, and sums take four columns or four addends at a time by hand: rows of a dozen
 * are too short for loops that a compiler unrolls, and it may not change the order of a sum.
 */
public final class FlatRows {
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

  /** As many rows as here, and as long, all zero. */
  FlatRows blank() {
    return new FlatRows(count, columns, new double[values.length]);
  }

  /**
   * Makes these rows Σ_p factor_p rows_p. In place, since fresh memory for so many numbers costs
   * more than the sums.
   *
   * @param of as many rows each, and as long
   */
  void become(double[] factors, FlatRows[] of) {
    double[][] addends = new double[of.length][];
    for (int p = 0; p < of.length; p++) {
      addends[p] = of[p].values;
    }
    Arrays.fill(values, 0);
    addAll(values, factors, addends);
  }

  /**
   * Adds Σ_p factor_p addend_p.
   *
   * @param addends at least as long as {@code to}
   */
  public static void addAll(double[] to, double[] factors, double[][] addends) {
    int p = 0;
    for (; p + LANES <= factors.length; p += LANES) {
      addFour(to, factors, addends, p);
    }
    for (; p < factors.length; p++) {
      double factor = factors[p];
      double[] addend = addends[p];
      for (int i = 0; i < to.length; i++) {
        to[i] += factor * addend[i];
      }
    }
  }

  private static void addFour(double[] to, double[] factors, double[][] addends, int p) {
    double fa = factors[p];
    double fb = factors[p + 1];
    double fc = factors[p + 2];
    double fd = factors[p + 3];
    double[] a = addends[p];
    double[] b = addends[p + 1];
    double[] c = addends[p + 2];
    double[] d = addends[p + 3];
    for (int i = 0; i < to.length; i++) {
      to[i] += (fa * a[i] + fb * b[i]) + (fc * c[i] + fd * d[i]);
    }
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

  /** Adds row i · by to the i-th of {@code to}, for all rows. */
  void addProducts(double[] by, double[] to) {
    double[] padded = Arrays.copyOf(by, stride);
    for (int i = 0; i < count; i++) {
      double first = 0;
      double second = 0;
      double third = 0;
      double fourth = 0;
      int at = i * stride;
      for (int c = 0; c < stride; c += LANES) {
        first += values[at + c] * padded[c];
        second += values[at + c + 1] * padded[c + 1];
        third += values[at + c + 2] * padded[c + 2];
        fourth += values[at + c + 3] * padded[c + 3];
      }
      to[i] += (first + second) + (third + fourth);
    }
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

  /** Adds row_i otherᵢᵀ + otherᵢ row_iᵀ, likewise. */
  void addCross(int i, FlatRows other, double[] lower) {
    int at = i * stride;
    int place = 0;
    for (int j = 0; j < columns; j++) {
      double here = values[at + j];
      double there = other.values[at + j];
      for (int k = 0; k <= j && (here != 0 || there != 0); k++) {
        lower[place + k] += here * other.values[at + k] + there * values[at + k];
      }
      place += j + 1;
    }
  }
}
