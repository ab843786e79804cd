package holdcurve.ode;

import java.util.Arrays;

/**
 * Carries the derivatives s_k = ∂y/∂θ_k over a step that the solution itself has just taken: the
 * same method, applied to the variational equations s' = J(t) s + g(t) with J = ∂f/∂y and g = ∂f/∂θ
 * along the solution, and the same factored matrix. A parameter then costs six solves and no call
 * of f.
 *
 * <p>Inside a step J and g are taken as the parabolas through their values at its start, middle and
 * end: error control has chosen the step so that the solution bends little in it. No error of s is
 * estimated.
 *
 * <p>Vectors for all parameters lie side by side: entry i of parameter k at {@code [i * m + k]}.
 */
final class TangentStep {
  private final int n;
  private final int m;
  private final StageSums sums;
  private final double[] times;
  private final double[] slopes;
  private final double[][] denseWeights;
  private final double[][] stages;
  private final double[] point;
  private final double[] bend;
  private final double[] middle;
  private final double[][] jacobian;
  private final Parabola matrix;
  private final Parabola drive;
  private final int[] entries;
  private int entryCount;

  /** Coefficients by the place θ in the step: c₀ + θ c₁ + θ² c₂. */
  private static final class Parabola {
    private final double[] start;
    private final double[] middle;
    private final double[] end;
    private final double[] at;

    Parabola(int length) {
      start = new double[length];
      middle = new double[length];
      end = new double[length];
      at = new double[length];
    }

    /** Fills {@link #at} with the values at θ. */
    void evaluate(double theta) {
      double atStart = (1 - theta) * (1 - 2 * theta);
      double atMiddle = 4 * theta * (1 - theta);
      double atEnd = theta * (2 * theta - 1);
      combine(atStart, atMiddle, atEnd);
    }

    /** Fills {@link #at} with the derivatives by θ at the start. */
    void differentiate() {
      combine(-3, 4, -1);
    }

    private void combine(double a, double b, double c) {
      for (int e = 0; e < at.length; e++) {
        at[e] = a * start[e] + b * middle[e] + c * end[e];
      }
    }
  }

  TangentStep(RosenbrockTableau tableau, int n, int m) {
    this.n = n;
    this.m = m;
    sums = new StageSums(tableau);
    times = tableau.times();
    slopes = tableau.slopes();
    denseWeights = tableau.dense();
    stages = new double[tableau.stageCount()][n * m];
    point = new double[n * m];
    bend = new double[n * m];
    middle = new double[n];
    jacobian = new double[n][n];
    matrix = new Parabola(n * n);
    drive = new Parabola(n * m);
    entries = new int[n * n];
  }

  /**
   * @param run that has just accepted a step, with its dense output filled
   * @param start s at the start of the step
   * @param end filled with s at its end
   */
  void advance(RosenbrockRun run, ParametricEquations equations, double[] start, double[] end) {
    double h = run.stepSize();
    linearize(run, equations);
    matrix.differentiate();
    drive.differentiate();
    rate(start, bend);
    double known = Double.NaN;
    System.arraycopy(start, 0, point, 0, point.length);
    for (int i = 0; i < stages.length; i++) {
      if (i > 0) {
        sums.point(i, start, stages, point);
      }
      if (times[i] != known) {
        known = times[i];
        matrix.evaluate(known);
        drive.evaluate(known);
      }
      rate(point, stages[i]);
      sums.addCarry(i, 1 / h, stages);
      if (slopes[i] != 0) {
        WeightedSum.addOne(stages[i], slopes[i], bend);
      }
      run.solve(stages[i], m);
    }
    sums.end(start, stages, point, end);
  }

  private void linearize(RosenbrockRun run, ParametricEquations equations) {
    double from = run.startTime();
    DenseOutput.state(0.5, run.start(), run.end(), run.dense(), middle);
    take(equations, from, run.start(), matrix.start, drive.start);
    take(equations, from + run.stepSize() / 2, middle, matrix.middle, drive.middle);
    take(equations, from + run.stepSize(), run.end(), matrix.end, drive.end);
    entryCount = 0;
    for (int e = 0; e < n * n; e++) {
      if (matrix.start[e] != 0 || matrix.middle[e] != 0 || matrix.end[e] != 0) {
        entries[entryCount++] = e;
      }
    }
  }

  private void take(
      ParametricEquations equations, double t, double[] y, double[] matrix, double[] drive) {
    equations.computeJacobian(t, y, jacobian);
    for (int i = 0; i < n; i++) {
      System.arraycopy(jacobian[i], 0, matrix, i * n, n);
    }
    equations.computeParameterDerivatives(t, y, drive);
  }

  /** Fills {@code result} with J s + g, as last evaluated. */
  private void rate(double[] s, double[] result) {
    System.arraycopy(drive.at, 0, result, 0, result.length);
    for (int e = 0; e < entryCount; e++) {
      int row = entries[e] / n * m;
      int column = entries[e] % n * m;
      double value = matrix.at[entries[e]];
      for (int k = 0; k < m; k++) {
        result[row + k] += value * s[column + k];
      }
    }
  }

  /**
   * Derivatives of one component inside the step just carried over.
   *
   * @param theta place in the step [-]
   * @param component row of the state
   * @param result filled with m values
   */
  void interpolate(double theta, int component, double[] start, double[] end, double[] result) {
    double rest = 1 - theta;
    int at = component * m;
    Arrays.fill(result, 0);
    for (int l = denseWeights.length - 1; l >= 0; l--) {
      for (int k = 0; k < m; k++) {
        result[k] *= theta;
      }
      for (int i = 0; i < stages.length; i++) {
        double weight = denseWeights[l][i];
        for (int k = 0; k < m; k++) {
          result[k] += weight * stages[i][at + k];
        }
      }
    }
    for (int k = 0; k < m; k++) {
      result[k] = rest * start[at + k] + theta * (end[at + k] + rest * result[k]);
    }
  }
}
