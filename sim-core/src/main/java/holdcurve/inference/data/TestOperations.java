package holdcurve.inference.data;

import holdcurve.physics.network.Operation;
import holdcurve.record.job.HoldTest;
import holdcurve.record.log.Reading;

/** How a test was run, as the model needs it. */
public final class TestOperations {
  private TestOperations() {}

  /** With the fuel at the temperature noted, or first measured, or that of a room. */
  public static Operation of(HoldTest test) {
    double start =
        test.fuelTemperature()
            .orElseGet(
                () ->
                    test.log().hold().stream()
                        .filter(Reading::hasTemperature)
                        .mapToDouble(Reading::fuelTemperature)
                        .findFirst()
                        .orElse(Operation.ROOM_TEMPERATURE));
    return Operation.holding().withFuelTemperature(start);
  }
}
