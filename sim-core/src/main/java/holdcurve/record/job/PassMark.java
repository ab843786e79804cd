package holdcurve.record.job;

import holdcurve.record.limit.PassLimit;
import holdcurve.record.log.Reading;
import java.util.List;

/**
 * One hold set beside the pass limit.
 *
 * @param test id of the hold test
 * @param reading at the time of the limit, between two readings in proportion [Pa gauge];
 *     not-a-number where the hold ended before
 * @param outcome what that means
 */
public record PassMark(String test, double reading, Outcome outcome) {
  /** Where the reading lies. */
  public enum Outcome {
    /** At the limit or above. */
    PASSES,
    /** Below it, but by less than the gauge may be off. */
    WITHIN_GAUGE_ERROR,
    /** Below it. */
    FAILS,
    /** The hold ended before. */
    TOO_SHORT
  }

  /** The holds of a job without clamps. */
  public static List<PassMark> of(Job job) {
    return job.tests().stream()
        .filter(test -> test.clamped().isEmpty() && !test.log().hold().isEmpty())
        .map(test -> of(test, job.upkeep().pass(), job.gauge()))
        .toList();
  }

  /** One hold beside a limit. */
  public static PassMark of(HoldTest test, PassLimit limit, GaugeSpec gauge) {
    double reading = at(OutlierScreen.trusted(test.log().hold(), gauge), limit.time());
    return new PassMark(test.id(), reading, outcome(reading, limit, gauge));
  }

  private static Outcome outcome(double reading, PassLimit limit, GaugeSpec gauge) {
    double slack = gauge.accuracyClass() * gauge.range() + gauge.resolution() / 2;
    if (Double.isNaN(reading)) {
      return Outcome.TOO_SHORT;
    }
    if (reading >= limit.pressure() - gauge.resolution() / 1000) {
      return Outcome.PASSES;
    }
    return reading >= limit.pressure() - slack ? Outcome.WITHIN_GAUGE_ERROR : Outcome.FAILS;
  }

  /**
   * Reading at a time, between two readings in proportion [Pa gauge]; not-a-number outside them.
   *
   * @param hold readings, zero at the pump stop
   * @param time since the pump stop [s]
   */
  public static double at(List<Reading> hold, double time) {
    for (int i = 0; i < hold.size(); i++) {
      Reading next = hold.get(i);
      if (next.time() == time) {
        return next.pressure();
      }
      if (next.time() > time && i > 0) {
        Reading last = hold.get(i - 1);
        double share = (time - last.time()) / (next.time() - last.time());
        return last.pressure() + share * (next.pressure() - last.pressure());
      }
    }
    return Double.NaN;
  }
}
