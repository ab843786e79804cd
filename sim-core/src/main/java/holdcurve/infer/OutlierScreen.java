package holdcurve.infer;

import holdcurve.job.GaugeSpec;
import holdcurve.log.Reading;
import java.util.Arrays;
import java.util.List;

/**
 * Finds single readings that stand away from the line through their neighbours, whatever the fault:
 * a slip of the eye or pen. They are kept, at little weight, and so are those with the needle at
 * its stop.
 */
final class OutlierScreen {
  /** Departure that a reading error doesn't explain, in units of the usual departure [-]. */
  private static final double LIMIT = 6;

  private OutlierScreen() {}

  /**
   * @param low weight of a reading that stands away, lies at the end of the scale or was marked as
   *     doubtful [-]
   * @return weight of each reading [-], 1 for a sound one
   */
  static double[] trust(List<Reading> hold, GaugeSpec gauge, double low) {
    double[] trust = new double[hold.size()];
    double[] away = departures(hold);
    double usual = Math.max(median(away), gauge.resolution());
    for (int i = 0; i < trust.length; i++) {
      boolean outlying = away[i] > LIMIT * usual;
      boolean atStop = hold.get(i).pressure() >= gauge.range();
      trust[i] = outlying || atStop || hold.get(i).doubtful() ? low : 1;
    }
    return trust;
  }

  /**
   * Departure of each inner reading from the line through the two beside it, and of those from
   * theirs, whichever is less.
   */
  private static double[] departures(List<Reading> hold) {
    double[] away = new double[hold.size()];
    for (int i = 1; i + 1 < hold.size(); i++) {
      away[i] = departure(hold, i, i - 1, i + 1);
      if (i >= 2) {
        away[i] = Math.min(away[i], departure(hold, i, i - 2, i + 1));
      }
      if (i + 2 < hold.size()) {
        away[i] = Math.min(away[i], departure(hold, i, i - 1, i + 2));
      }
    }
    return away;
  }

  private static double departure(List<Reading> hold, int i, int before, int after) {
    Reading a = hold.get(before);
    Reading b = hold.get(after);
    double span = b.time() - a.time();
    double share = span > 0 ? (hold.get(i).time() - a.time()) / span : 0.5;
    return Math.abs(hold.get(i).pressure() - a.pressure() - share * (b.pressure() - a.pressure()));
  }

  private static double median(double[] values) {
    double[] sorted = values.clone();
    Arrays.sort(sorted);
    return sorted.length == 0 ? 0 : sorted[sorted.length / 2];
  }
}
