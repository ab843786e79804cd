package holdcurve.physics.ode;

import holdcurve.common.input.Cancellation;
import holdcurve.physics.ode.StiffIntegrationException.Reason;

/**
 * One accepted step after another, with error control: the part that the lean driver and the
 * Commons Math integrator share. Makes its buffers once; stepping allocates nothing.
 */
final class RosenbrockRun {
  private static final double LAST_STEP_STRETCH = 1.0001;

  /** Error norm given to a step that jumped over something: the next try is half as long. */
  private static final double JUMPED = 10;

  private final RosenbrockStepper stepper;
  private final ErrorNorm norm;
  private final StepLimits limits;
  private final StepSizeController controller;
  private final double[] scale;
  private final double[] error;
  private final double[][] dense;
  private double[] start;
  private double[] end;
  private double startTime;
  private double time;
  private double target;
  private double step;
  private double proposed;
  private int accepted;
  private int rejected;
  private int attempted;
  private int factorizations;

  RosenbrockRun(RosenbrockTableau tableau, Tolerances tolerances, StepLimits limits) {
    int n = tolerances.dimension();
    stepper = new RosenbrockStepper(tableau, n);
    norm = new ErrorNorm(tolerances);
    this.limits = limits;
    controller = new StepSizeController(tableau.orders().embedded());
    scale = new double[n];
    error = new double[n];
    dense = new double[tableau.denseCount()][n];
    start = new double[n];
    end = new double[n];
  }

  /**
   * @param t0 start [s]
   * @param y0 state there
   * @param t1 end, before or after the start [s]
   * @param firstStep length of the first attempt, unsigned [s]; 0 to have it estimated
   */
  void begin(StiffEquations equations, double t0, double[] y0, double t1, double firstStep) {
    stepper.setEquations(equations);
    target = t1;
    accepted = 0;
    rejected = 0;
    attempted = 0;
    factorizations = 0;
    restart(t0, y0);
    proposed = firstStep;
  }

  /** Goes on from another state, forgetting what the steps before taught. */
  void restart(double t, double[] y) {
    time = t;
    System.arraycopy(y, 0, end, 0, end.length);
    controller.reset();
    proposed = 0;
  }

  /**
   * Advances by one accepted step towards the end of the run; by one of length 0 if it is already
   * there, as after a restart at the very end.
   *
   * @throws java.util.concurrent.CancellationException if the thread is told to stop
   */
  void step() {
    Cancellation.check();
    if (arrived()) {
      System.arraycopy(end, 0, start, 0, end.length);
      startTime = time;
      step = 0;
      return;
    }
    if (proposed != 0 && belowRounding()) {
      throw failure(Reason.STEP_TOO_SMALL, norm.worst(error, start, end));
    }
    prepare();
    double size = attempt();
    while (!(size <= 1)) {
      refuse(size);
      size = attempt();
    }
    accepted++;
    startTime = time;
    time = step == target - time ? target : time + step;
    proposed = controller.afterAcceptance(Math.abs(step), size);
  }

  private void prepare() {
    double[] old = start;
    start = end;
    end = old;
    stepper.linearize(time, start);
    norm.fillScale(start, scale);
    if (proposed == 0) {
      proposed = Math.max(StartingStep.estimate(stepper, start, scale, error), resolution());
    }
  }

  private double resolution() {
    return 4 * Math.ulp(time);
  }

  private boolean belowRounding() {
    return Math.max(proposed, limits.smallest()) < Math.min(resolution(), Math.abs(target - time));
  }

  /** Tries the proposed step and returns its error norm; infinite if W could not be factored. */
  private double attempt() {
    if (accepted + rejected >= limits.count()) {
      throw failure(Reason.TOO_MANY_STEPS, norm.worst(error, start, end));
    }
    step = fitted();
    factorizations++;
    if (!stepper.factor(step, scale)) {
      return Double.POSITIVE_INFINITY;
    }
    attempted++;
    stepper.attempt(time, start, step, end, error);
    double size = norm.ofStep(error, start, end);
    return size <= 1 && stepper.jumpsOver(start, end) ? JUMPED : size;
  }

  private double fitted() {
    double remaining = target - time;
    double size = Math.min(Math.max(proposed, limits.smallest()), limits.largest());
    return size * LAST_STEP_STRETCH >= Math.abs(remaining)
        ? remaining
        : Math.copySign(size, remaining);
  }

  private void refuse(double size) {
    rejected++;
    boolean finite = Double.isFinite(size);
    int component = finite ? -1 : stepper.notFiniteAtStart();
    if (component >= 0) {
      throw failure(Reason.NOT_FINITE, component);
    }
    proposed = controller.afterRejection(Math.abs(step), size);
    if (proposed < Math.max(limits.smallest(), resolution())) {
      throw collapse(size);
    }
  }

  private StiffIntegrationException collapse(double size) {
    if (Double.isFinite(size)) {
      return failure(Reason.STEP_TOO_SMALL, norm.worst(error, start, end));
    }
    if (stepper.singularComponent() >= 0) {
      return failure(Reason.SINGULAR, stepper.singularComponent());
    }
    int component = stepper.notFiniteInStages(time, start, step);
    return failure(Reason.NOT_FINITE, component >= 0 ? component : norm.worst(error, start, end));
  }

  private StiffIntegrationException failure(Reason reason, int component) {
    return new StiffIntegrationException(reason, time, step, component);
  }

  /** Makes {@link #dense} hold the vectors of the step just accepted. */
  void fillDense() {
    stepper.fillDense(dense);
  }

  /** Error allowed in each component at the start of the step; the run's own buffer. */
  double[] scale() {
    return scale;
  }

  double[][] dense() {
    return dense;
  }

  /** State at the start of the step just accepted; the run's own buffer. */
  double[] start() {
    return start;
  }

  /** State reached; the run's own buffer. */
  double[] end() {
    return end;
  }

  /** Start of the step just accepted [s]. */
  double startTime() {
    return startTime;
  }

  /** Time reached [s]. */
  double time() {
    return time;
  }

  /** Length of the step just accepted, with its sign [s]. */
  double stepSize() {
    return step;
  }

  boolean arrived() {
    return time == target;
  }

  StiffRun statistics() {
    int stages = stepper.tableau().stageCount();
    int evaluations = accepted + attempted * (stages - 1);
    return new StiffRun(accepted, rejected, evaluations, factorizations);
  }
}
