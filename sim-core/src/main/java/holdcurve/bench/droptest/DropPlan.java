package holdcurve.bench.droptest;

import holdcurve.common.input.Require;

/**
 * How a drop test is to be simulated.
 *
 * @param shot how each injector is fired
 * @param repeats of each injector [-]
 * @param primed pressure after priming [Pa gauge]
 * @param primingScatter its standard deviation from one priming to the next [Pa]
 * @param resolution step of the gauge [Pa]
 * @param idleTime of one idle fall at the end [s]
 */
public record DropPlan(
    Shot shot,
    int repeats,
    double primed,
    double primingScatter,
    double resolution,
    double idleTime) {
  public DropPlan {
    Require.within(repeats, 1, 1000, "repeats", "-");
    Require.positive(primed, "pressure after priming", "Pa");
    Require.notNegative(primingScatter, "scatter of the priming", "Pa");
    Require.positive(resolution, "step of the gauge", "Pa");
    Require.positive(idleTime, "time of the idle fall", "s");
  }
}
