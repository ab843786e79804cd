package holdcurve.physics.ode;

import holdcurve.physics.ode.StiffIntegrationException.Reason;

/**
 * Carries the derivatives s_k = ∂y/∂θ_k over a step that the solution itself has just taken, by the
 * variational equations s' = J(t) s + g(t) with J = ∂f/∂y and g = ∂f/∂θ along the solution's dense
 * output. They are linear, so a diagonally implicit method solves each stage at once: three stages,
 * each one factorization and one solve a parameter, and no product with J.
 *
 * <p>The method is that of Alexander (SIAM J. Numer. Anal. 14 (1977) 1006), three stages, order 3,
 * L-stable, its last stage the end of the step: γ is the root 0.4358… of x³ − 3x² + 3x/2 − 1/6. No
 * error of s is estimated: error control has chosen the step so that the solution bends little in
 * it.
 *
 * <p>Vectors of all parameters lie {@link SideBySide}. Not thread-safe.
 */
final class TangentStep {
  private static final double GAMMA = 0.435866521508459;
  private static final double SECOND = (1 + GAMMA) / 2;
  private static final double FROM_FIRST = (1 - GAMMA) / 2 / GAMMA;
  private static final double LAST_FROM_FIRST = -(6 * GAMMA * GAMMA - 16 * GAMMA + 1) / 4 / GAMMA;
  private static final double LAST_FROM_SECOND = (6 * GAMMA * GAMMA - 20 * GAMMA + 5) / 4 / GAMMA;

  private final int n;
  private final int m;
  private final int stride;
  private final int observed;
  private final double[] state;
  private final double[][] jacobian;
  private final StepMatrix matrix;
  private final double[] first;
  private final double[] second;
  private final double[] known;
  private double[] slopeAtStart;
  private double[] slopeAtEnd;
  private ParametricEquations equations;

  /**
   * @param observed component whose derivatives are asked for inside steps
   */
  TangentStep(int n, int m, int observed) {
    this.n = n;
    this.m = m;
    this.observed = observed;
    stride = SideBySide.stride(m);
    state = new double[n];
    jacobian = new double[n][n];
    matrix = new StepMatrix(n);
    first = new double[n * stride];
    second = new double[n * stride];
    known = new double[n * stride];
    slopeAtStart = new double[stride];
    slopeAtEnd = new double[stride];
  }

  /** Distance between the entries of one parameter. */
  int stride() {
    return stride;
  }

  /**
   * Starts a run.
   *
   * @param s derivatives at the start
   */
  void begin(ParametricEquations equations, double t, double[] y, double[] s) {
    this.equations = equations;
    matrix.forget();
    equations.computeVariation(t, y, jacobian, first, stride);
    System.arraycopy(first, observed * stride, slopeAtEnd, 0, stride);
    for (int j = 0; j < n; j++) {
      double factor = jacobian[observed][j];
      for (int k = 0; k < m && factor != 0; k++) {
        slopeAtEnd[k] += factor * s[j * stride + k];
      }
    }
  }

  /**
   * @param run that has just accepted the step, with its dense output filled
   * @param start s at the start of the step
   * @param end filled with s at its end
   */
  void advance(RosenbrockRun run, double[] start, double[] end) {
    double h = run.stepSize();
    double[] old = slopeAtStart;
    slopeAtStart = slopeAtEnd;
    slopeAtEnd = old;
    DenseOutput.state(GAMMA, run.start(), run.end(), run.dense(), state);
    solve(run, run.startTime() + GAMMA * h, state, start, first);
    for (int i = 0; i < known.length; i++) {
      known[i] = start[i] + FROM_FIRST * (first[i] - start[i]);
    }
    DenseOutput.state(SECOND, run.start(), run.end(), run.dense(), state);
    solve(run, run.startTime() + SECOND * h, state, known, second);
    for (int i = 0; i < known.length; i++) {
      known[i] =
          start[i]
              + LAST_FROM_FIRST * (first[i] - start[i])
              + LAST_FROM_SECOND * (second[i] - known[i]);
    }
    solve(run, run.time(), run.end(), known, end);
    int at = observed * stride;
    for (int k = 0; k < m; k++) {
      slopeAtEnd[k] = (end[at + k] - known[at + k]) / (h * GAMMA);
    }
  }

  /** Solves S = known + hγ (J S + g) for one stage. */
  private void solve(RosenbrockRun run, double t, double[] y, double[] before, double[] stage) {
    equations.computeVariation(t, y, jacobian, stage, stride);
    matrix.note(jacobian);
    double shift = 1 / (run.stepSize() * GAMMA);
    if (!matrix.factor(shift, jacobian, run.scale())) {
      throw new StiffIntegrationException(
          Reason.SINGULAR, t, run.stepSize(), Math.max(0, matrix.singularColumn()));
    }
    clearRest(stage);
    for (int i = 0; i < stage.length; i++) {
      stage[i] += shift * before[i];
    }
    matrix.solve(stage, stride);
  }

  /** Entries between the last parameter and the stride would grow from step to step. */
  private void clearRest(double[] vectors) {
    for (int i = 0; i < n; i++) {
      for (int k = m; k < stride; k++) {
        vectors[i * stride + k] = 0;
      }
    }
  }

  /**
   * Derivatives of the observed component inside the step just carried over: the cubic through
   * values and slopes at its ends.
   *
   * @param theta place in the step [-]
   * @param h length of the step [s]
   * @param result filled with one value a parameter
   */
  void interpolate(double theta, double h, double[] start, double[] end, double[] result) {
    double rest = 1 - theta;
    double byEnd = theta * theta * (3 - 2 * theta);
    double byStartSlope = h * theta * rest * rest;
    double byEndSlope = -h * theta * theta * rest;
    int at = observed * stride;
    for (int k = 0; k < m; k++) {
      result[k] =
          start[at + k]
              + byEnd * (end[at + k] - start[at + k])
              + byStartSlope * slopeAtStart[k]
              + byEndSlope * slopeAtEnd[k];
    }
  }
}
