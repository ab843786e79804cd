package holdcurve.infer;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.CholeskyDecomposition;
import org.apache.commons.math3.linear.DecompositionSolver;

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
  private DecompositionSolver solver;

  /**
   * @param place at most a few steps from the origin [-]
   * @param row what is there
   */
  void add(double[] place, double[] row) {
    places.add(place.clone());
    rows.add(row.clone());
    solver = null;
  }

  /** Adds the row expected at a place to {@code to}. */
  void addTo(double[] to, double[] place) {
    double[] weight = weights(place);
    for (int k = 0; k < weight.length; k++) {
      double[] row = rows.get(k);
      for (int i = 0; i < to.length; i++) {
        to[i] += weight[k] * row[i];
      }
    }
  }

  private double[] weights(double[] place) {
    double[] likeness = new double[places.size()];
    for (int k = 0; k < likeness.length; k++) {
      likeness[k] = likeness(places.get(k), place);
    }
    return solver().solve(new ArrayRealVector(likeness, false)).toArray();
  }

  private DecompositionSolver solver() {
    if (solver == null) {
      Array2DRowRealMatrix matrix = new Array2DRowRealMatrix(places.size(), places.size());
      for (int i = 0; i < places.size(); i++) {
        for (int j = 0; j < places.size(); j++) {
          matrix.setEntry(i, j, likeness(places.get(i), places.get(j)) + (i == j ? NOISE : 0));
        }
      }
      solver = new CholeskyDecomposition(matrix).getSolver();
    }
    return solver;
  }

  private static double likeness(double[] a, double[] b) {
    double square = 0;
    for (int i = 0; i < a.length; i++) {
      square += (a[i] - b[i]) * (a[i] - b[i]);
    }
    return Math.exp(-square / (2 * REACH * REACH));
  }
}
