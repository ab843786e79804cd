package holdcurve.bench.flowsheet;

import holdcurve.common.input.Require;

/**
 * Drops that fell from a shut injector under pressure.
 *
 * @param drops how many [-]
 * @param time in which they fell [s]
 */
public record BenchDrops(int drops, double time) {
  /** Petrol and test fluid, about 30 drops to the millilitre: common practice, no source [m³]. */
  public static final double DROP = 1e-6 / 30;

  public BenchDrops {
    Require.notNegative(drops, "number of drops", "-");
    Require.positive(time, "time of counting", "s");
  }

  /** [1/min] */
  public double perMinute() {
    return drops * 60 / time;
  }

  /** [m³/s] */
  public double flow() {
    return drops * DROP / time;
  }
}
