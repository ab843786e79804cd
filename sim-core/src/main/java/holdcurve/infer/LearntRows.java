package holdcurve.infer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Rows of numbers known at some places and wanted at others near by: the mean of a Gaussian process
 * that is zero far from all (Rasmussen and Williams, "Gaussian Processes for Machine Learning",
 * 2006, equation 2.25).
 */
final class LearntRows {
  /** Distance over which rows are alike, in steps between places [-]. */
  private static final double REACH = 2;

  /** Variance of what is known over that of the process; keeps near places from fighting [-]. */
  private static final double NOISE = 1e-4;

  private final List<double[]> places = new ArrayList<>();
  private final List<double[]> rows = new ArrayList<>();

  /** What each place contributes to a row in proportion to likeness; null before it is asked. */
  private double[][] shares;

  /**
   * @param place at most a few steps from the origin [-]
   * @param row what is there
   */
  void add(double[] place, double[] row) {
    places.add(place.clone());
    rows.add(row.clone());
    shares = null;
  }

  /** Adds the row expected at a place to {@code to}. */
  void addTo(double[] to, double[] place) {
    if (shares == null) {
      shares = shares();
    }
    double[] likeness = new double[shares.length];
    Arrays.setAll(likeness, k -> likeness(places.get(k), place));
    FlatRows.addAll(to, likeness, shares);
  }

  private double[][] shares() {
    int n = places.size();
    Array2DRowRealMatrix matrix = new Array2DRowRealMatrix(n, n);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        matrix.setEntry(i, j, likeness(places.get(i), places.get(j)) + (i == j ? NOISE : 0));
      }
    }
    RealMatrix known = new Array2DRowRealMatrix(rows.toArray(double[][]::new), false);
    return new CholeskyDecomposition(matrix).getSolver().solve(known).getData();
  }

  private static double likeness(double[] a, double[] b) {
    double square = 0;
    for (int i = 0; i < a.length; i++) {
      square += (a[i] - b[i]) * (a[i] - b[i]);
    }
    return Math.exp(-square / (2 * REACH * REACH));
  }
}
