package holdcurve.inference.runup;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.part.Regulator;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Where the needle stood while the pump ran in one test, against what the regulator is stated to
 * keep.
 *
 * @param test place of the hold test in its job
 * @param time of the last settled reading since the pump stop, not positive [s]
 * @param pressure as read there [Pa gauge]
 * @param set pressure stated for the regulator [Pa gauge]
 * @param tolerance by which gauge and a sound regulator may miss it [Pa]
 */
public record RunningPressure(
    int test, double time, double pressure, double set, double tolerance) {
  /** A sound regulator keeps what is stated for it to within this: assumed [-]. */
  private static final double SOUND_REGULATOR = 0.05;

  /** A sound regulator rises with its flow by no more than this: assumed [Pa]. */
  private static final double MOST_RISE = 0.5e5;

  /** Each test in which a settled reading was taken with the pump running and nothing drawn. */
  public static List<RunningPressure> of(Job job) {
    List<RunningPressure> found = new ArrayList<>();
    for (int i = 0; i < job.tests().size(); i++) {
      of(job.tests().get(i), i, job.circuit(), job.gauge()).ifPresent(found::add);
    }
    return found;
  }

  private static Optional<RunningPressure> of(
      HoldTest test, int place, Circuit circuit, GaugeSpec gauge) {
    List<Double> set =
        circuit.partsOf(Regulator.KIND).stream().map(part -> part.value(Regulator.SET)).toList();
    if (set.isEmpty()) {
      return Optional.empty();
    }
    double stated = set.get(0);
    double tolerance = Math.hypot(SOUND_REGULATOR * stated, gauge.range() * gauge.accuracyClass());
    return RunUp.of(test, place, gauge)
        .flatMap(RunUp::lastSettled)
        .map(
            reading ->
                new RunningPressure(place, reading.time(), reading.pressure(), stated, tolerance));
  }

  /** Whether the pump brought the circuit up to what is set, within the tolerance. */
  public boolean isReached() {
    return pressure >= set - tolerance;
  }

  /** Whether it stood higher than a sound regulator rises with its flow. */
  public boolean isExceeded() {
    return pressure > set + MOST_RISE + tolerance;
  }

  /** How far it stood above what is set; negative below [Pa]. */
  public double excess() {
    return pressure - set;
  }
}
