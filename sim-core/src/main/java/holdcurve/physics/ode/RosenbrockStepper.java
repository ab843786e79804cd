package holdcurve.physics.ode;

/**
 * The arithmetic of one step attempt with one method, and nothing else: no step-size control, no
 * events, no bookkeeping. All buffers are made once, so that a run allocates nothing.
 *
 * <p>Order of calls: {@link #linearize} where a step starts, {@link #factor} for the step length,
 * {@link #attempt}; after a rejection only {@link #factor} and {@link #attempt} again; {@link
 * #fillDense} if values inside the step are wanted. Not thread-safe: one stepper a thread.
 */
public final class RosenbrockStepper {
  private final int n;
  private final int last;
  private final double gamma;
  private final RosenbrockTableau tableau;
  private final StageSums sums;
  private final double[] times;
  private final double[] slopes;
  private final double[][] stages;
  private final double[] point;
  private final double[] slopeAtStart;
  private final double[] timeDerivative;
  private final double[][] jacobian;
  private final StepMatrix matrix;
  private StiffEquations equations;
  private boolean autonomous;

  /**
   * @param dimension number of components of the state
   */
  public RosenbrockStepper(RosenbrockTableau tableau, int dimension) {
    this.tableau = tableau;
    n = dimension;
    last = tableau.stageCount() - 1;
    gamma = tableau.gamma();
    sums = new StageSums(tableau);
    times = tableau.times();
    slopes = tableau.slopes();
    stages = new double[last + 1][n];
    point = new double[n];
    slopeAtStart = new double[n];
    timeDerivative = new double[n];
    jacobian = new double[n][n];
    matrix = new StepMatrix(n);
  }

  public RosenbrockTableau tableau() {
    return tableau;
  }

  /** The equations that the following calls are about. */
  public void setEquations(StiffEquations equations) {
    if (equations.getDimension() != n) {
      throw new IllegalArgumentException(
          "equations with %d components given to a stepper for %d"
              .formatted(equations.getDimension(), n));
    }
    this.equations = equations;
    autonomous = equations.isAutonomous();
    matrix.forget();
  }

  /**
   * Takes f, its Jacobian and its time derivative at the start of a step.
   *
   * @param t time [s]
   * @param y state
   */
  public void linearize(double t, double[] y) {
    equations.linearize(t, y, slopeAtStart, jacobian);
    matrix.note(jacobian);
    if (!autonomous) {
      equations.computeTimeDerivative(t, y, timeDerivative);
    }
  }

  /**
   * Factors I/(hγ) − J for a step.
   *
   * @param h step, with its sign [s]
   * @param scale positive error scale of each component, used to compare pivots
   * @return false if the matrix is singular or not finite
   */
  public boolean factor(double h, double[] scale) {
    return matrix.factor(1 / (h * gamma), jacobian, scale);
  }

  /**
   * Computes the stages, the state at the end of the step and its error.
   *
   * @param t start [s]
   * @param y state at the start, left as it is
   * @param h step, with its sign [s]; the one given to {@link #factor}
   * @param end filled with the state at t + h
   * @param error filled with the estimated error of {@code end}
   */
  public void attempt(double t, double[] y, double h, double[] end, double[] error) {
    System.arraycopy(slopeAtStart, 0, stages[0], 0, n);
    finish(0, h);
    for (int i = 1; i <= last; i++) {
      evaluate(i, t, y, h);
      finish(i, h);
    }
    sums.end(y, stages, point, end);
    sums.error(stages, error);
  }

  private void evaluate(int i, double t, double[] y, double h) {
    sums.point(i, y, stages, point);
    equations.computeDerivatives(t + times[i] * h, point, stages[i]);
  }

  private void finish(int i, double h) {
    double[] stage = stages[i];
    sums.addCarry(i, 1 / h, stages);
    if (!autonomous && slopes[i] != 0) {
      double factor = h * slopes[i];
      for (int k = 0; k < n; k++) {
        stage[k] += factor * timeDerivative[k];
      }
    }
    matrix.solve(stage);
  }

  /**
   * Vectors of the dense output of the last attempt; see {@link DenseOutput}.
   *
   * @param dense filled with K_1, K_2 …: {@link RosenbrockTableau#denseCount} rows of n
   */
  public void fillDense(double[][] dense) {
    sums.dense(stages, dense);
  }

  boolean jumpsOver(double[] from, double[] to) {
    return equations.jumpsOver(from, to);
  }

  /** f where {@link #linearize} was last called, n entries; the stepper's own buffer. */
  double[] slopeAtStart() {
    return slopeAtStart;
  }

  /** Fills y'' = J f + ∂f/∂t where {@link #linearize} was last called. */
  void fillCurvature(double[] curvature) {
    for (int i = 0; i < n; i++) {
      double sum = autonomous ? 0 : timeDerivative[i];
      for (int j = 0; j < n; j++) {
        sum += jacobian[i][j] * slopeAtStart[j];
      }
      curvature[i] = sum;
    }
  }

  /** First component whose slope or Jacobian row is not finite at the start, or -1. */
  int notFiniteAtStart() {
    for (int i = 0; i < n; i++) {
      if (!Double.isFinite(slopeAtStart[i]) || notFinite(jacobian[i]) >= 0) {
        return i;
      }
    }
    return -1;
  }

  /**
   * Repeats an attempt that came out not finite, to learn where that began: the solves spread it
   * over all components.
   *
   * @return first component whose slope is not finite in the first such stage, or -1
   */
  int notFiniteInStages(double t, double[] y, double h) {
    System.arraycopy(slopeAtStart, 0, stages[0], 0, n);
    finish(0, h);
    for (int i = 1; i <= last; i++) {
      evaluate(i, t, y, h);
      int component = notFinite(stages[i]);
      if (component >= 0) {
        return component;
      }
      finish(i, h);
    }
    return -1;
  }

  private static int notFinite(double[] values) {
    for (int i = 0; i < values.length; i++) {
      if (!Double.isFinite(values[i])) {
        return i;
      }
    }
    return -1;
  }

  int singularComponent() {
    return matrix.singularColumn();
  }
}
