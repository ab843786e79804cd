package holdcurve.physics.ode;

/**
 * Integrates equations and the derivatives of their solution by parameters, s_k = ∂y/∂θ_k, side by
 * side (forward sensitivities). Steps are those of {@link LeanRosenbrockDriver} with the same
 * tolerances; for ten parameters a run costs about as much as three without them, where differences
 * would cost ten.
 *
 * <p>Not thread-safe: one driver a thread.
 */
public final class TangentDriver {
  private final RosenbrockRun run;
  private final TangentStep tangents;
  private final int observed;
  private final int n;
  private final int m;
  private double[] from;
  private double[] to;

  /**
   * @param tolerances of the state; they also say how many components it has
   * @param parameterCount m
   * @param observed component that is looked at
   */
  public TangentDriver(
      RosenbrockTableau tableau, Tolerances tolerances, int parameterCount, int observed) {
    this.observed = observed;
    n = tolerances.dimension();
    m = parameterCount;
    run = new RosenbrockRun(tableau, tolerances, StepLimits.WIDE);
    tangents = new TangentStep(n, m, observed);
    from = new double[n * tangents.stride()];
    to = new double[n * tangents.stride()];
  }

  /**
   * Integrates and fills what is observed at the output times in the interval, both ends included.
   *
   * @param t0 start [s]
   * @param y state at t0 on entry, at t1 on return
   * @param s derivatives ∂y_i/∂θ_k at {@code [i * m + k]}, likewise
   * @param t1 end, after t0 [s]
   * @param times output times, ascending [s]
   * @param values filled with the component observed, one entry a time
   * @param derivatives filled with its derivatives, one row of m a time
   * @throws StiffIntegrationException if the run can't go on
   */
  public StiffRun integrate(
      ParametricEquations equations,
      double t0,
      double[] y,
      double[] s,
      double t1,
      double[] times,
      double[] values,
      double[][] derivatives) {
    check(equations, t0, t1, y, s);
    int next = 0;
    while (next < times.length && times[next] < t0) {
      next++;
    }
    for (; next < times.length && times[next] == t0; next++) {
      values[next] = y[observed];
      System.arraycopy(s, observed * m, derivatives[next], 0, m);
    }
    for (int i = 0; i < n; i++) {
      System.arraycopy(s, i * m, to, i * tangents.stride(), m);
    }
    tangents.begin(equations, t0, y, to);
    run.begin(equations, t0, y, t1, 0);
    while (!run.arrived()) {
      run.step();
      run.fillDense();
      double[] old = from;
      from = to;
      to = old;
      tangents.advance(run, from, to);
      for (; next < times.length && times[next] <= run.time(); next++) {
        double theta =
            times[next] == run.time() ? 1 : (times[next] - run.startTime()) / run.stepSize();
        values[next] = DenseOutput.component(theta, run.start(), run.end(), run.dense(), observed);
        tangents.interpolate(theta, run.stepSize(), from, to, derivatives[next]);
      }
    }
    System.arraycopy(run.end(), 0, y, 0, n);
    for (int i = 0; i < n; i++) {
      System.arraycopy(to, i * tangents.stride(), s, i * m, m);
    }
    return run.statistics();
  }

  private void check(ParametricEquations equations, double t0, double t1, double[] y, double[] s) {
    if (y.length != n || equations.getParameterCount() != m || s.length != n * m) {
      throw new IllegalArgumentException(
          "%d components, %d parameters and %d derivatives given to a driver for %d and %d"
              .formatted(y.length, equations.getParameterCount(), s.length, n, m));
    }
    if (!(t1 > t0 && Double.isFinite(t0) && Double.isFinite(t1))) {
      throw new IllegalArgumentException(
          "no interval to integrate over: %s s to %s s".formatted(t0, t1));
    }
  }
}
