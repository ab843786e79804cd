package holdcurve.ode;

import java.util.Arrays;

/**
 * Carries the derivatives s_k = ∂y/∂θ_k over a step that the solution itself has just taken: the
 * same method, applied to the variational equations s' = J(t) s + g(t) with J = ∂f/∂y and g = ∂f/∂θ
 * along the solution, and the same factored matrix. A parameter then costs its solves and no call
 * of f.
 *
 * <p>Inside a step J and g are taken as parabolas: error control has chosen the step so that the
 * solution bends little in it. No error of s is estimated.
 *
 * <p>Vectors of all parameters lie {@link SideBySide}. Not thread-safe.
 */
final class TangentStep {
  private final int n;
  private final int m;
  private final int stride;
  private final StageSums sums;
  private final double[] times;
  private final double[] slopes;
  private final double[][] denseWeights;
  private final double[][] dense;
  private final double[][] stages;
  private final double[] point;
  private final double[] bend;
  private final double[] middle;
  private final double[][] jacobian;
  private final Parabola matrix;
  private final Parabola drive;
  private final boolean[] met;
  private final int[] row;
  private final int[] column;
  private int entries;
  private ParametricEquations equations;

  TangentStep(RosenbrockTableau tableau, int n, int m) {
    this.n = n;
    this.m = m;
    stride = SideBySide.stride(m);
    sums = new StageSums(tableau);
    times = tableau.times();
    slopes = tableau.slopes();
    denseWeights = tableau.dense();
    dense = new double[denseWeights.length][m];
    stages = new double[tableau.stageCount()][n * stride];
    point = new double[n * stride];
    bend = new double[n * stride];
    middle = new double[n];
    jacobian = new double[n][n];
    matrix = new Parabola(n * n);
    drive = new Parabola(n * stride);
    met = new boolean[n * n];
    row = new int[n * n];
    column = new int[n * n];
  }

  /** Distance between the entries of one parameter. */
  int stride() {
    return stride;
  }

  /** Starts a run. */
  void begin(ParametricEquations equations, double t, double[] y) {
    this.equations = equations;
    Arrays.fill(met, false);
    entries = 0;
    take(t, y, matrix.end(), drive.end());
  }

  /**
   * @param run that has just accepted the step, with its dense output filled
   * @param start s at the start of the step
   * @param end filled with s at its end
   */
  void advance(RosenbrockRun run, double[] start, double[] end) {
    linearize(run);
    matrix.differentiate(entries);
    drive.differentiate(n * stride);
    rate(start, bend);
    double known = Double.NaN;
    System.arraycopy(start, 0, point, 0, point.length);
    for (int i = 0; i < stages.length; i++) {
      if (i > 0) {
        sums.point(i, start, stages, point);
      }
      if (times[i] != known) {
        known = times[i];
        matrix.evaluate(known, entries);
        drive.evaluate(known, n * stride);
      }
      rate(point, stages[i]);
      sums.addCarry(i, 1 / run.stepSize(), stages);
      if (slopes[i] != 0) {
        WeightedSum.addOne(stages[i], slopes[i], bend);
      }
      run.solve(stages[i], stride);
    }
    sums.end(start, stages, point, end);
  }

  private void linearize(RosenbrockRun run) {
    matrix.shift();
    drive.shift();
    DenseOutput.state(0.5, run.start(), run.end(), run.dense(), middle);
    double half = run.startTime() + run.stepSize() / 2;
    take(half, middle, matrix.middle(), drive.middle());
    take(run.time(), run.end(), matrix.end(), drive.end());
  }

  /** Takes J and g at one place; an entry of J that was zero so far gets a place of its own. */
  private void take(double t, double[] y, double[] values, double[] derivatives) {
    equations.computeJacobian(t, y, jacobian);
    for (int i = 0; i < n; i++) {
      double[] line = jacobian[i];
      for (int j = 0; j < n; j++) {
        if (line[j] != 0 && !met[i * n + j]) {
          addEntry(i, j);
        }
      }
    }
    for (int e = 0; e < entries; e++) {
      values[e] = jacobian[row[e]][column[e]];
    }
    equations.computeParameterDerivatives(t, y, derivatives, stride);
  }

  private void addEntry(int i, int j) {
    met[i * n + j] = true;
    row[entries] = i;
    column[entries] = j;
    matrix.start()[entries] = 0;
    matrix.middle()[entries] = 0;
    matrix.end()[entries] = 0;
    entries++;
  }

  /** Fills {@code result} with J s + g, as last evaluated. */
  private void rate(double[] s, double[] result) {
    System.arraycopy(drive.at(), 0, result, 0, result.length);
    double[] values = matrix.at();
    for (int e = 0; e < entries; e++) {
      SideBySide.add(result, row[e], values[e], s, column[e], stride);
    }
  }

  /**
   * Prepares {@link #interpolate} for one component in the step just carried over.
   *
   * @param component row of the state
   */
  void observe(int component) {
    int at = component * stride;
    for (int l = 0; l < denseWeights.length; l++) {
      Arrays.fill(dense[l], 0);
      for (int i = 0; i < stages.length; i++) {
        double weight = denseWeights[l][i];
        for (int k = 0; k < m; k++) {
          dense[l][k] += weight * stages[i][at + k];
        }
      }
    }
  }

  /**
   * Derivatives of the observed component inside the step just carried over.
   *
   * @param theta place in the step [-]
   * @param component the one that is observed
   * @param result filled with one value a parameter
   */
  void interpolate(double theta, int component, double[] start, double[] end, double[] result) {
    double rest = 1 - theta;
    int at = component * stride;
    for (int k = 0; k < m; k++) {
      double bent = 0;
      for (int l = dense.length - 1; l >= 0; l--) {
        bent = dense[l][k] + theta * bent;
      }
      result[k] = rest * start[at + k] + theta * (end[at + k] + rest * bent);
    }
  }
}
