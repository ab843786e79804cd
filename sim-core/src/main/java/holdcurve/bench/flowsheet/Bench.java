package holdcurve.bench.flowsheet;

import holdcurve.common.input.Require;

/**
 * A flow bench as it stood when the injectors were on it.
 *
 * @param point pressure, fluid and temperature of the bench
 * @param repeatability standard uncertainty of one flow against another on this bench [-]
 * @param accuracy standard uncertainty common to all its flows: gauge, clock, density [-]
 */
public record Bench(FlowPoint point, double repeatability, double accuracy) {
  public Bench {
    Require.within(repeatability, 1e-4, 0.2, "repeatability of the bench", "-");
    Require.within(accuracy, 0, 0.5, "accuracy of the bench", "-");
  }
}
