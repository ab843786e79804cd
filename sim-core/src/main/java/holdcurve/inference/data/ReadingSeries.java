package holdcurve.inference.data;

import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.OutlierScreen;
import holdcurve.record.log.Reading;
import java.util.ArrayList;
import java.util.List;

/**
 * The readings of one hold as the likelihood uses them: at most {@value #MOST} points, long logs
 * averaged in stretches of time that grow with time as the curve flattens.
 *
 * @param time since the pump stopped [s], ascending
 * @param pressure as read [Pa gauge]
 * @param weight how many independent readings each point is worth [-]
 */
public record ReadingSeries(double[] time, double[] pressure, double[] weight) {
  /** Points kept of a log. */
  static final int MOST = 60;

  /**
   * Neighbouring readings share their rounding and the eye that took them: an average is worth no
   * more than this many.
   */
  private static final double MOST_WEIGHT = 4;

  /** A doubtful or outlying reading is worth this much of a sound one. */
  private static final double DOUBTFUL_WEIGHT = 0.01;

  public static ReadingSeries of(List<Reading> hold, GaugeSpec gauge) {
    double[] trust = OutlierScreen.trust(hold, gauge, DOUBTFUL_WEIGHT);
    return hold.size() <= MOST ? plain(hold, trust) : averaged(hold, trust);
  }

  private static ReadingSeries plain(List<Reading> hold, double[] trust) {
    return new ReadingSeries(
        hold.stream().mapToDouble(Reading::time).toArray(),
        hold.stream().mapToDouble(Reading::pressure).toArray(),
        trust);
  }

  private static ReadingSeries averaged(List<Reading> hold, double[] trust) {
    double end = hold.get(hold.size() - 1).time();
    List<double[]> points = new ArrayList<>();
    int first = 0;
    for (int bin = 1; bin <= MOST; bin++) {
      double limit = binEnd(bin, end);
      int last = first;
      while (last < hold.size() && (hold.get(last).time() <= limit || bin == MOST)) {
        last++;
      }
      if (last > first) {
        points.add(average(hold.subList(first, last), trust, first));
        first = last;
      }
    }
    return new ReadingSeries(column(points, 0), column(points, 1), column(points, 2));
  }

  /**
   * Bins even in √t: the first second of ten minutes gets a bin of its own, the last bin is 20 s
   * long.
   */
  private static double binEnd(int bin, double end) {
    double share = (double) bin / MOST;
    return end * share * share;
  }

  private static double[] average(List<Reading> readings, double[] trust, int offset) {
    double sum = 0;
    double time = 0;
    double pressure = 0;
    for (int i = 0; i < readings.size(); i++) {
      double w = trust[offset + i];
      sum += w;
      time += w * readings.get(i).time();
      pressure += w * readings.get(i).pressure();
    }
    return new double[] {time / sum, pressure / sum, Math.min(sum, MOST_WEIGHT)};
  }

  private static double[] column(List<double[]> points, int index) {
    return points.stream().mapToDouble(point -> point[index]).toArray();
  }
}
