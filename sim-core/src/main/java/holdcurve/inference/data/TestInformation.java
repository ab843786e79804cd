package holdcurve.inference.data;

import holdcurve.record.job.HoldTest;
import holdcurve.record.log.Reading;
import java.util.List;

/**
 * How much a hold can tell of a slow leak, as a share of what a whole one can. A leak takes away
 * pressure in proportion to time, so by Fisher's information of a slope n readings over the time t
 * would say n t² of it; but hose stretch and the closing regulator look like it in the first
 * minutes, so a short hold says still less: n t⁴, assumed. A circuit that has lost half its
 * pressure has shown what there is to see, however quickly.
 */
public final class TestInformation {
  /** A hold of this length with {@link #WHOLE_READINGS} readings counts as whole: assumed [s]. */
  private static final double WHOLE = 300;

  /** More readings tell little more: they share the errors of one gauge and one eye. */
  private static final int WHOLE_READINGS = 10;

  /** Share of the pressure whose loss tells as much as a whole hold: assumed [-]. */
  private static final double WHOLE_FALL = 0.5;

  /** Even a hold of no length keeps this much, so that something can be said of it alone [-]. */
  private static final double LEAST = 1e-3;

  private TestInformation() {}

  /** Between 0.001 and 1 [-]. */
  public static double of(HoldTest test) {
    List<Reading> hold = test.log().hold();
    if (hold.isEmpty()) {
      return LEAST;
    }
    double length = test.log().holdSpan() / WHOLE;
    double number = Math.min(1, (double) hold.size() / WHOLE_READINGS);
    double first = hold.get(0).pressure();
    double last = hold.get(hold.size() - 1).pressure();
    double fall = first > 0 ? Math.max(0, first - last) / first / WHOLE_FALL : 0;
    return Math.max(LEAST, Math.min(1, Math.max(number * Math.pow(length, 4), Math.pow(fall, 4))));
  }
}
