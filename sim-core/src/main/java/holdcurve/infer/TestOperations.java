package holdcurve.infer;

import holdcurve.job.HoldTest;
import holdcurve.log.Reading;
import holdcurve.model.Operation;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;

/** How a test was run, as the model needs it. */
final class TestOperations {
  /**
   * Readings of a thermometer are averaged over this long, so that its steps don't become heat [s].
   */
  private static final double SMOOTHING = 60;

  private TestOperations() {}

  static Operation of(HoldTest test) {
    List<Reading> measured = test.log().hold().stream().filter(Reading::hasTemperature).toList();
    double start =
        test.fuelTemperature()
            .orElse(
                measured.isEmpty()
                    ? Operation.ROOM_TEMPERATURE
                    : measured.get(0).fuelTemperature());
    Operation operation = Operation.holding().withFuelTemperature(start);
    List<double[]> knots = knots(measured);
    if (knots.size() < 3) {
      return operation;
    }
    double[] time = knots.stream().mapToDouble(k -> k[0]).toArray();
    double[] temperature = knots.stream().mapToDouble(k -> k[1]).toArray();
    return operation.withMeasuredTemperature(
        new SplineInterpolator().interpolate(time, temperature));
  }

  private static List<double[]> knots(List<Reading> measured) {
    List<double[]> knots = new ArrayList<>();
    int first = 0;
    while (first < measured.size()) {
      double end = measured.get(first).time() + SMOOTHING;
      int last = first;
      double time = 0;
      double temperature = 0;
      for (; last < measured.size() && measured.get(last).time() < end; last++) {
        time += measured.get(last).time();
        temperature += measured.get(last).fuelTemperature();
      }
      knots.add(new double[] {time / (last - first), temperature / (last - first)});
      first = last;
    }
    return knots;
  }
}
