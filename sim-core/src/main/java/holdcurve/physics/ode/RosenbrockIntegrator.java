package holdcurve.physics.ode;

import org.apache.commons.math3.ode.ExpandableStatefulODE;
import org.apache.commons.math3.ode.nonstiff.AdaptiveStepsizeIntegrator;

/**
 * A linearly implicit integrator for stiff equations inside Commons Math's framework: events, step
 * handlers, dense output, tolerances and the limit on evaluations work as with its own integrators,
 * forwards and backwards in time.
 *
 * <p>The equations must be {@link StiffEquations}. Secondary equations are refused, since no
 * Jacobian is known for them. Every absolute tolerance must be positive. After an event that resets
 * the state or the derivatives the step length is estimated anew, because a jump excites fast parts
 * that the step before had already left behind.
 *
 * <p>Throws {@link StiffIntegrationException} where the run can't go on.
 */
public final class RosenbrockIntegrator extends AdaptiveStepsizeIntegrator {
  private final RosenbrockTableau tableau;
  private double firstStep;
  private int mostSteps = Integer.MAX_VALUE;
  private StiffRun statistics = new StiffRun(0, 0, 0, 0);

  /**
   * @param minStep shortest step, the last excepted [s]; 0 leaves only rounding as a bound
   * @param maxStep longest step [s]
   * @param absolute absolute tolerance, positive [unit of the state]
   * @param relative relative tolerance [-]
   */
  public RosenbrockIntegrator(
      RosenbrockTableau tableau, double minStep, double maxStep, double absolute, double relative) {
    super(tableau.name(), minStep, maxStep, absolute, relative);
    this.tableau = tableau;
  }

  /**
   * Like {@link #RosenbrockIntegrator(RosenbrockTableau, double, double, double, double)}, with one
   * entry a component in both tolerances.
   */
  public RosenbrockIntegrator(
      RosenbrockTableau tableau,
      double minStep,
      double maxStep,
      double[] absolute,
      double[] relative) {
    super(tableau.name(), minStep, maxStep, absolute, relative);
    this.tableau = tableau;
  }

  /** {@inheritDoc} A length outside the limits means "estimate it". */
  @Override
  public void setInitialStepSize(double length) {
    super.setInitialStepSize(length);
    firstStep = length >= getMinStep() && length <= getMaxStep() ? length : 0;
  }

  /**
   * @param count most steps of one run, accepted and rejected together [-]
   */
  public void setMostSteps(int count) {
    mostSteps = count;
  }

  @Override
  public void integrate(ExpandableStatefulODE equations, double t) {
    sanityChecks(equations, t);
    StiffEquations stiff = stiff(equations);
    setEquations(equations);
    double[] y = equations.getCompleteState();
    stepStart = equations.getTime();
    RosenbrockRun run = new RosenbrockRun(tableau, tolerances(y.length), limits());
    run.begin(new Counted(stiff), stepStart, y, t, firstStep);
    initIntegration(stepStart, y, t);
    follow(run, interpolator(equations, y, t), y, t);
    statistics = run.statistics();
    equations.setTime(stepStart);
    equations.setCompleteState(y);
    resetInternalState();
  }

  private void follow(
      RosenbrockRun run, RosenbrockStepInterpolator interpolator, double[] y, double t) {
    double[] slope = new double[y.length];
    isLastStep = false;
    while (!isLastStep) {
      interpolator.shift();
      run.step();
      stepSize = run.stepSize();
      interpolator.load(run);
      System.arraycopy(run.end(), 0, y, 0, y.length);
      stepStart = acceptStep(interpolator, y, slope, t);
      if (resetOccurred) {
        run.restart(stepStart, y);
        interpolator.storeTime(stepStart);
        resetOccurred = false;
      }
    }
  }

  private RosenbrockStepInterpolator interpolator(
      ExpandableStatefulODE equations, double[] y, double t) {
    RosenbrockStepInterpolator interpolator =
        new RosenbrockStepInterpolator(
            tableau.denseCount(), y, t > equations.getTime(), equations.getPrimaryMapper());
    interpolator.storeTime(equations.getTime());
    return interpolator;
  }

  private static StiffEquations stiff(ExpandableStatefulODE equations) {
    if (equations.getSecondaryMappers().length > 0) {
      throw new IllegalArgumentException(
          "a Rosenbrock integrator takes no secondary equations: their Jacobian is not known");
    }
    if (equations.getPrimary() instanceof StiffEquations stiff) {
      return stiff;
    }
    throw new IllegalArgumentException(
        "a Rosenbrock integrator needs StiffEquations, which bring their Jacobian, not %s"
            .formatted(equations.getPrimary().getClass().getName()));
  }

  private Tolerances tolerances(int dimension) {
    return vecAbsoluteTolerance == null
        ? Tolerances.uniform(dimension, scalAbsoluteTolerance, scalRelativeTolerance)
        : Tolerances.of(vecAbsoluteTolerance, vecRelativeTolerance);
  }

  private StepLimits limits() {
    return new StepLimits(getMinStep(), getMaxStep(), mostSteps);
  }

  /** What the last run cost. Calls of f made by the framework for events are not in it. */
  public StiffRun statistics() {
    return statistics;
  }

  /** Sends each call of f through the integrator, which counts it against its limit. */
  private final class Counted implements StiffEquations {
    private final StiffEquations inner;

    Counted(StiffEquations inner) {
      this.inner = inner;
    }

    @Override
    public int getDimension() {
      return inner.getDimension();
    }

    @Override
    public void computeDerivatives(double t, double[] y, double[] slope) {
      RosenbrockIntegrator.this.computeDerivatives(t, y, slope);
    }

    @Override
    public void computeJacobian(double t, double[] y, double[][] dfdy) {
      inner.computeJacobian(t, y, dfdy);
    }

    @Override
    public void computeTimeDerivative(double t, double[] y, double[] dfdt) {
      inner.computeTimeDerivative(t, y, dfdt);
    }

    @Override
    public boolean isAutonomous() {
      return inner.isAutonomous();
    }

    @Override
    public boolean jumpsOver(double[] from, double[] to) {
      return inner.jumpsOver(from, to);
    }
  }
}
