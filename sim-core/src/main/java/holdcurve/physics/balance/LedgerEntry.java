package holdcurve.physics.balance;

/** One line of a ledger: what flows into the gauge's fuel for one reason. */
interface LedgerEntry {
  /** Flow into the gauge's node [m³/s]. */
  double flow(double t, double[] y);

  /**
   * Adds the derivatives of {@link #flow} by the state.
   *
   * @param slopes one a row of the state [m³/s per unit of the row]
   */
  void addSlopes(double t, double[] y, double[] slopes);

  /** Derivative of {@link #flow} by time at a fixed state [m³/s²]. */
  double timeSlope(double t, double[] y);
}
