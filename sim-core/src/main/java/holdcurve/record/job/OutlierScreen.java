package holdcurve.record.job;

import holdcurve.record.log.Reading;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Finds single readings that stand above or below both their neighbours and away from the line
 * through them: no circuit does that, so it is a slip of the eye or pen. A reading between its
 * neighbours is never one, however quick the fall. Slips are kept, at little weight, and so are
 * readings with the needle at its stop.
 */
public final class OutlierScreen {
  /** Departure that a reading error doesn't explain, in units of the usual departure [-]. */
  private static final double LIMIT = 6;

  private OutlierScreen() {}

  /**
   * @param low weight of a reading that stands away, lies at the end of the scale or was marked as
   *     doubtful [-]
   * @return weight of each reading [-], 1 for a sound one
   */
  public static double[] trust(List<Reading> hold, GaugeSpec gauge, double low) {
    double[] trust = new double[hold.size()];
    double[] away = departures(hold);
    double usual = Math.max(median(away), gauge.resolution());
    for (int i = 0; i < trust.length; i++) {
      boolean outlying = away[i] > LIMIT * usual && isPeak(hold, i);
      boolean atStop = hold.get(i).pressure() >= gauge.range();
      trust[i] = outlying || atStop || hold.get(i).doubtful() ? low : 1;
    }
    return trust;
  }

  /** The readings that are no slip, weren't marked as doubtful, and didn't meet the stop. */
  public static List<Reading> trusted(List<Reading> hold, GaugeSpec gauge) {
    double[] trust = trust(hold, gauge, 0);
    return IntStream.range(0, trust.length).filter(i -> trust[i] > 0).mapToObj(hold::get).toList();
  }

  /** Whether an inner reading lies above or below both its neighbours. */
  private static boolean isPeak(List<Reading> hold, int i) {
    double before = hold.get(i).pressure() - hold.get(i - 1).pressure();
    double after = hold.get(i).pressure() - hold.get(i + 1).pressure();
    return before * after > 0;
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
