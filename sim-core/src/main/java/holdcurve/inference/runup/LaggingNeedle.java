package holdcurve.inference.runup;

import holdcurve.inference.runup.QuasiSteady.Point;
import java.util.List;

/**
 * A needle that follows a pressure with a lag. Between two points of its course a pressure goes
 * exponentially, and so does the needle: no steps in time.
 */
final class LaggingNeedle {
  private static final double SLOWEST = 1e-7;

  private final double lag;
  private final double[] times;
  private final double[] shown;
  private double time;
  private double place;
  private int next;

  /**
   * @param lag time constant [s]
   * @param times when it is read, ascending [s]
   * @param place where it stands at first [Pa gauge]
   */
  LaggingNeedle(double lag, double[] times, double time, double place) {
    this.lag = lag;
    this.times = times;
    this.time = time;
    this.place = place;
    shown = new double[times.length];
    while (next < times.length && times[next] < time) {
      shown[next++] = place;
    }
  }

  double[] shown() {
    return shown;
  }

  /** Follows a course until a time, and returns the pressure that is reached then [Pa gauge]. */
  double follow(List<Point> course, double until) {
    Point at = course.get(0);
    for (int i = 1; i < course.size() && time < until; i++) {
      Point end = course.get(i);
      double length = end.pressure() - at.pressure();
      double growth = (end.rate() - at.rate()) / length;
      if (Math.abs(growth) < SLOWEST) {
        growth = -SLOWEST;
      }
      double reached = duration(at, end, growth);
      double stay = Math.min(until - time, reached);
      double slope = (end.gauge() - at.gauge()) / length;
      double swing = at.rate() / growth;
      move(stay, at.gauge() - slope * swing, slope * swing, growth);
      if (stay < reached) {
        return at.pressure() + swing * Math.expm1(growth * stay);
      }
      at = end;
    }
    if (time < until) {
      move(until - time, at.gauge(), 0, -1);
    }
    return at.pressure();
  }

  private static double duration(Point from, Point to, double growth) {
    double ratio = to.rate() / from.rate();
    return ratio <= 0 ? Double.POSITIVE_INFINITY : Math.log(ratio) / growth;
  }

  /** For some time the pressure at the gauge is rest + swing·exp(growth·t). */
  private void move(double duration, double rest, double swing, double growth) {
    double by = 1 + growth * lag;
    double share = swing / (Math.abs(by) < 1e-6 ? 1e-6 : by);
    double start = place - rest - share;
    while (next < times.length && times[next] <= time + duration) {
      shown[next] = at(times[next] - time, rest, share, growth, start);
      next++;
    }
    place = at(duration, rest, share, growth, start);
    time += duration;
  }

  private double at(double t, double rest, double share, double growth, double start) {
    double moving = share == 0 ? 0 : share * Math.exp(growth * t);
    return rest + moving + start * Math.exp(-t / lag);
  }
}
