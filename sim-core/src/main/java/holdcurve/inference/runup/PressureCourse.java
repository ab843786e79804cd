package holdcurve.inference.runup;

import holdcurve.inference.runup.QuasiSteady.Point;
import java.util.ArrayList;
import java.util.List;

/**
 * The pressure from some start towards where it comes to rest: points between which its rate is
 * nearly proportional to it, close together where a valve opens or shuts.
 */
final class PressureCourse {
  /** First length of a piece [Pa]. */
  private static final double PIECE = 5e4;

  /** Length below which a piece isn't divided further [Pa]. */
  private static final double LEAST = 1000;

  /** Residual of the rate in the middle from the mean of the ends that is let pass [-]. */
  private static final double BENT = 0.02;

  /** First step of a search for the place of rest [Pa]. */
  private static final double FIRST_STEP = 1e4;

  /** A pressure that changes no faster stands still [Pa/s]. */
  private static final double STILL = 1;

  /** No running circuit comes here [Pa gauge]. */
  private static final double HIGHEST = 15e5;

  /** Pressure to which the place of rest is found [Pa]. */
  private static final double ACCURACY = 2;

  private final QuasiSteady circuit;
  private final double sign;
  private final List<Point> points = new ArrayList<>();
  private boolean rests;

  private PressureCourse(QuasiSteady circuit, Point start) {
    this.circuit = circuit;
    sign = Math.signum(start.rate());
    points.add(start);
  }

  /** Points on the way, the first at {@code pressure}, the last at rest. */
  static List<Point> from(QuasiSteady circuit, double pressure) {
    Point start = circuit.at(pressure);
    PressureCourse course = new PressureCourse(circuit, start);
    Point at = start;
    while (course.sign != 0 && !course.rests) {
      double next = Math.max(0, at.pressure() + course.sign * PIECE);
      if (next == at.pressure() || next > HIGHEST) {
        break;
      }
      Point end = circuit.at(next);
      course.add(at, end);
      at = end;
    }
    return course.points;
  }

  /**
   * Where a circuit that fills from below comes to rest.
   *
   * @param near where that is likely [Pa gauge]
   */
  static Point rest(QuasiSteady circuit, double near) {
    double step = FIRST_STEP;
    Point at = circuit.at(near);
    boolean filling = at.rate() > STILL;
    Point other = at;
    while (other.rate() > STILL == filling) {
      if (!filling && other.pressure() == 0 || other.pressure() > HIGHEST) {
        return other;
      }
      at = other;
      other = circuit.at(Math.max(0, at.pressure() + (filling ? step : -step)));
      step *= 2;
    }
    Point low = filling ? at : other;
    return new PressureCourse(circuit, low).rest(low, filling ? other : at);
  }

  /** Adds what lies between two points, the second included, or up to where it comes to rest. */
  private void add(Point a, Point b) {
    if (rests) {
      return;
    }
    if (Math.abs(b.pressure() - a.pressure()) < LEAST) {
      end(a, b);
      return;
    }
    Point middle = circuit.at((a.pressure() + b.pressure()) / 2);
    double mean = (a.rate() + b.rate()) / 2;
    double off = Math.abs(middle.rate() - mean);
    if (off < BENT * (Math.abs(a.rate()) + Math.abs(b.rate()))) {
      end(a, middle);
      end(middle, b);
    } else {
      add(a, middle);
      add(middle, b);
    }
  }

  private void end(Point a, Point b) {
    if (rests) {
      return;
    }
    rests = b.rate() * sign <= 0;
    points.add(rests ? rest(a, b) : b);
  }

  /** Between two points on either side of it, by false position. */
  private Point rest(Point from, Point to) {
    Point a = from;
    Point b = to;
    double weight = 1;
    for (int i = 0; i < 40; i++) {
      double share = a.rate() / (a.rate() - weight * b.rate());
      Point next = circuit.at(a.pressure() + share * (b.pressure() - a.pressure()));
      boolean near =
          Math.abs(next.pressure() - a.pressure()) < ACCURACY
              || Math.abs(next.pressure() - b.pressure()) < ACCURACY;
      if (next.rate() * sign > 0) {
        a = next;
        weight /= 2;
      } else {
        b = next;
        weight = 1;
      }
      if (near) {
        return new Point(next.pressure(), 0, next.gauge());
      }
    }
    return new Point(b.pressure(), 0, b.gauge());
  }
}
