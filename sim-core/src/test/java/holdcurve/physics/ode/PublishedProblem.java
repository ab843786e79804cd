package holdcurve.physics.ode;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.Arrays;

/**
 * A test problem with a published end value. Values are from the R package deTestSet 1.1.7.4, which
 * carries the IVP Test Set (Mazzia, Cash &amp; Soetaert, J. Comput. Appl. Math. 236 (2012) 4119,
 * doi 10.1016/j.cam.2012.03.014); they were made there with RADAU5 in extended precision,
 * tolerances 1.1e-18.
 */
abstract class PublishedProblem implements StiffEquations {
  private final String key;
  private final JsonNode data;

  PublishedProblem(String key) {
    this.key = key;
    data = ReferenceSolution.read("ode_test_problems.json").get(key);
  }

  JsonNode data() {
    return data;
  }

  double start() {
    return data.get("t0").asDouble();
  }

  double stop() {
    return data.get("t1").asDouble();
  }

  double[] initial() {
    return ReferenceSolution.doubles(data.get("y0"));
  }

  double[] published() {
    return ReferenceSolution.doubles(data.get("y1"));
  }

  /** Size below which each component counts as small, for tolerances and errors. */
  abstract double[] floor();

  /** Largest error of an end state over |published| + floor. */
  double error(double[] y) {
    double[] reference = published();
    double[] floor = floor();
    double error = 0;
    for (int i = 0; i < y.length; i++) {
      error = Math.max(error, Math.abs(y[i] - reference[i]) / (Math.abs(reference[i]) + floor[i]));
    }
    return error;
  }

  static void fill(double[] row, double... values) {
    System.arraycopy(values, 0, row, 0, values.length);
  }

  double[] filled(double value) {
    double[] filled = new double[getDimension()];
    Arrays.fill(filled, value);
    return filled;
  }

  @Override
  public int getDimension() {
    return data.get("y0").size();
  }

  @Override
  public String toString() {
    return key;
  }
}
