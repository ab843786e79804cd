package holdcurve.physics.ode;

/**
 * Runs one set of equations after another from t0 to t1 and fills a table of output rows, as fast
 * as it can: no events, no step handlers, nothing allocated while stepping, buffers kept between
 * runs. Steps are the same as those of {@link RosenbrockIntegrator} with the same tolerances.
 *
 * <p>Not thread-safe: one driver a thread.
 */
public final class LeanRosenbrockDriver {
  private final RosenbrockRun run;
  private final int n;

  public LeanRosenbrockDriver(RosenbrockTableau tableau, Tolerances tolerances) {
    this(tableau, tolerances, StepLimits.WIDE);
  }

  /**
   * @param tolerances also says how many components the equations have
   */
  public LeanRosenbrockDriver(RosenbrockTableau tableau, Tolerances tolerances, StepLimits limits) {
    run = new RosenbrockRun(tableau, tolerances, limits);
    n = tolerances.dimension();
  }

  /**
   * Integrates and fills the rows whose times lie in the interval, both ends included; other rows
   * stay as they are, so that a run in pieces can share one table.
   *
   * @param equations right side of the piece
   * @param t0 start [s]
   * @param y state at t0 on entry, at t1 on return
   * @param t1 end, other than t0; before it to run backwards [s]
   * @param times output times in the order in which they are passed [s]
   * @param rows one row of n entries a time; filled by dense output
   * @throws StiffIntegrationException if the run can't go on; {@code y} then holds the start
   */
  public StiffRun integrate(
      StiffEquations equations, double t0, double[] y, double t1, double[] times, double[][] rows) {
    return integrate(equations, t0, y, t1, 0, times, rows);
  }

  /**
   * Like {@link #integrate(StiffEquations, double, double[], double, double[], double[][])}.
   *
   * @param firstStep length of the first attempt, unsigned [s]; 0 to have it estimated
   */
  public StiffRun integrate(
      StiffEquations equations,
      double t0,
      double[] y,
      double t1,
      double firstStep,
      double[] times,
      double[][] rows) {
    check(t0, t1, y);
    double sign = Math.signum(t1 - t0);
    int next = 0;
    while (next < times.length && (times[next] - t0) * sign < 0) {
      next++;
    }
    for (; next < times.length && times[next] == t0; next++) {
      System.arraycopy(y, 0, rows[next], 0, n);
    }
    run.begin(equations, t0, y, t1, firstStep);
    while (!run.arrived()) {
      run.step();
      next = fillRows(next, sign, times, rows);
    }
    System.arraycopy(run.end(), 0, y, 0, n);
    return run.statistics();
  }

  private int fillRows(int first, double sign, double[] times, double[][] rows) {
    double time = run.time();
    int next = first;
    while (next < times.length && (times[next] - time) * sign <= 0) {
      if (times[next] == time) {
        System.arraycopy(run.end(), 0, rows[next], 0, n);
      } else {
        interpolate(times[next], rows[next], next == first);
      }
      next++;
    }
    return next;
  }

  private void interpolate(double time, double[] row, boolean firstOfStep) {
    if (firstOfStep) {
      run.fillDense();
    }
    double theta = (time - run.startTime()) / run.stepSize();
    DenseOutput.state(theta, run.start(), run.end(), run.dense(), row);
  }

  private void check(double t0, double t1, double[] y) {
    if (y.length != n) {
      throw new IllegalArgumentException(
          "a state of %d components given to a driver for %d".formatted(y.length, n));
    }
    if (!(Math.abs(t1 - t0) > 0 && Double.isFinite(t0) && Double.isFinite(t1))) {
      throw new IllegalArgumentException(
          "no interval to integrate over: %s s to %s s".formatted(t0, t1));
    }
  }
}
