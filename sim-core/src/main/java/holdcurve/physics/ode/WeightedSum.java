package holdcurve.physics.ode;

import java.util.stream.IntStream;

/**
 * A sum of vectors with fixed weights, zero weights left out. Up to four vectors are added in one
 * pass: with the ten or so entries of our vectors the passes themselves cost most of the time.
 */
final class WeightedSum {
  private final int[] terms;
  private final double[] weights;

  WeightedSum(double[] weights) {
    terms = IntStream.range(0, weights.length).filter(j -> weights[j] != 0).toArray();
    this.weights = IntStream.of(terms).mapToDouble(j -> weights[j]).toArray();
  }

  /** Adds factor · Σ weight_j · vectors_j to the result. */
  void addTo(double[] result, double factor, double[][] vectors) {
    int j = 0;
    for (; j + 4 <= terms.length; j += 4) {
      addFour(result, factor, vectors, j);
    }
    if (j + 2 <= terms.length) {
      addTwo(result, factor, vectors, j);
      j += 2;
    }
    if (j < terms.length) {
      addOne(result, factor * weights[j], vectors[terms[j]]);
    }
  }

  private void addFour(double[] result, double factor, double[][] vectors, int j) {
    double wa = factor * weights[j];
    double wb = factor * weights[j + 1];
    double wc = factor * weights[j + 2];
    double wd = factor * weights[j + 3];
    double[] a = vectors[terms[j]];
    double[] b = vectors[terms[j + 1]];
    double[] c = vectors[terms[j + 2]];
    double[] d = vectors[terms[j + 3]];
    for (int k = 0; k < result.length; k++) {
      result[k] += (wa * a[k] + wb * b[k]) + (wc * c[k] + wd * d[k]);
    }
  }

  private void addTwo(double[] result, double factor, double[][] vectors, int j) {
    double wa = factor * weights[j];
    double wb = factor * weights[j + 1];
    double[] a = vectors[terms[j]];
    double[] b = vectors[terms[j + 1]];
    for (int k = 0; k < result.length; k++) {
      result[k] += wa * a[k] + wb * b[k];
    }
  }

  static void addOne(double[] result, double weight, double[] vector) {
    for (int k = 0; k < result.length; k++) {
      result[k] += weight * vector[k];
    }
  }
}
