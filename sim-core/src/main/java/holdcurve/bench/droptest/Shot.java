package holdcurve.bench.droptest;

import holdcurve.common.input.Require;

/**
 * How an injector is fired.
 *
 * @param pulses in a row [-]
 * @param width of each [s]
 * @param pause from the reading before to the reading after [s]
 */
public record Shot(int pulses, double width, double pause) {
  public Shot {
    Require.within(pulses, 1, 100_000, "number of pulses", "-");
    Require.positive(width, "pulse width", "s");
    Require.positive(pause, "time between the two readings", "s");
  }

  /** Time for which the injector is energised altogether [s]. */
  public double openTime() {
    return pulses * width;
  }
}
