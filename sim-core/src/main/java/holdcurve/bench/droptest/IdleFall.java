package holdcurve.bench.droptest;

import holdcurve.common.input.Require;

/**
 * What the gauge loses while nothing is fired: leaks and hose creep.
 *
 * @param before reading at the start [Pa gauge]
 * @param after reading at the end [Pa gauge]
 * @param time between the two [s]
 */
public record IdleFall(double before, double after, double time) {
  public IdleFall {
    Require.positive(time, "time of the idle fall", "s");
  }
}
