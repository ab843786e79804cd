package holdcurve.infer;

import holdcurve.job.HoldTest;
import holdcurve.log.Reading;
import holdcurve.model.Operation;

/** How a test was run, as the model needs it. */
final class TestOperations {
  private TestOperations() {}

  /** With the fuel at the temperature noted, or first measured, or that of a room. */
  static Operation of(HoldTest test) {
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
