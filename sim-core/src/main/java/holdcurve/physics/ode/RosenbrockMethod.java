package holdcurve.physics.ode;

/**
 * The linearly implicit methods on offer. All three are stiffly accurate, damp infinitely stiff
 * parts in one step, and carry dense output.
 *
 * <table>
 * <caption>Cost of one step: one Jacobian, one factorization of W, and</caption>
 * <tr><th>method</th><th>order</th><th>calls of f, solves with W</th><th>use</th></tr>
 * <tr><td>RODAS4</td><td>4(3)</td><td>6</td><td>usual accuracy</td></tr>
 * <tr><td>RODAS4P2</td><td>4(3)</td><td>6</td><td>parts that are nearly algebraic</td></tr>
 * <tr><td>RODAS5P</td><td>5(4)</td><td>8</td><td>tight tolerances</td></tr>
 * </table>
 */
public enum RosenbrockMethod {
  RODAS4(Rodas4.TABLE),
  RODAS4P2(Rodas4P2.TABLE),
  RODAS5P(Rodas5P.TABLE);

  private final RosenbrockTableau tableau;

  RosenbrockMethod(RosenbrockTableau tableau) {
    this.tableau = tableau;
  }

  public RosenbrockTableau tableau() {
    return tableau;
  }
}
