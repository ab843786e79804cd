package holdcurve.record.log;

import holdcurve.common.message.Message;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * A reading whose decimal mark most likely slipped: 19.0 or 0.19 typed for 1.90.
 *
 * @param index of the reading in its log
 * @param reading as it stands there
 * @param shift places by which the mark has to move for what was meant, to the left if negative
 * @param sure whether nothing else explains it; a last reading may be a true sudden fall
 */
public record OddReading(int index, Reading reading, int shift, boolean sure) {
  /** No circuit of this kind runs higher: assumed [Pa]. */
  private static final double ORDINARY = 8e5;

  /** Beside so little pressure a tenth is no slip but a needle near its stop: assumed [Pa]. */
  private static final double TELLING = 0.5e5;

  /** A slip leaves a reading among its neighbours, within this factor: assumed. */
  private static final double ALIKE = 1.5;

  /** A last reading has one neighbour only, so it must fit that well: assumed. */
  private static final double NEARLY = 1.1;

  /** Where the needle rises so much again in a hold, it did not fall before: assumed. */
  private static final double RECOVERS = 3;

  /** Slips come singly, or a few in a row: assumed. */
  private static final int REACH = 5;

  private static final double TENTH = 0.1;
  private static final double HUNDREDTH = 0.01;

  /** Those of a log, in order. Readings marked as doubtful are taken as they are. */
  public static List<OddReading> in(GaugeLog log) {
    List<OddReading> odd = new ArrayList<>();
    for (int i = 0; i < log.readings().size(); i++) {
      Reading reading = log.readings().get(i);
      int shift = reading.doubtful() || reading.pressure() <= 0 ? 0 : shift(log, i);
      if (shift != 0) {
        odd.add(new OddReading(i, reading, shift, shift < 0 || comesBack(log, i)));
      }
    }
    return odd;
  }

  private static int shift(GaugeLog log, int i) {
    List<Reading> all = log.readings();
    double here = all.get(i).pressure();
    if (here > ORDINARY) {
      IntPredicate ordinary = k -> all.get(k).pressure() > 0 && all.get(k).pressure() <= ORDINARY;
      double before = beside(all, i, -1, ordinary);
      double after = beside(all, i, 1, ordinary);
      if (isAlike(here * TENTH, before, ALIKE) || isAlike(here * TENTH, after, ALIKE)) {
        return -1;
      }
      boolean far = isAlike(here * HUNDREDTH, before, ALIKE);
      return far || isAlike(here * HUNDREDTH, after, ALIKE) ? -2 : 0;
    }
    return i < log.beforeStop() ? 0 : shiftInHold(log, i);
  }

  /** With the pump off nothing drives the needle up tenfold and back, or down and up again. */
  private static int shiftInHold(GaugeLog log, int i) {
    List<Reading> all = log.readings();
    double here = all.get(i).pressure();
    double before = i > 0 ? all.get(i - 1).pressure() : Double.NaN;
    double after = i + 1 < all.size() ? all.get(i + 1).pressure() : Double.NaN;
    if (here >= TELLING
        && isAlike(here * TENTH, before, ALIKE)
        && isAlike(here * TENTH, after, ALIKE)) {
      return -1;
    }
    double was = beside(all, i, -1, k -> all.get(k).pressure() >= RECOVERS * here);
    boolean possible = here / TENTH >= TELLING && here / TENTH <= ORDINARY;
    if (!possible || !isAlike(here / TENTH, was, ALIKE)) {
      return 0;
    }
    boolean last = i + 1 == all.size() && isAlike(here / TENTH, before, NEARLY);
    return last || comesBack(log, i) ? 1 : 0;
  }

  private static boolean comesBack(GaugeLog log, int i) {
    List<Reading> all = log.readings();
    double here = all.get(i).pressure();
    double next = beside(all, i, 1, k -> all.get(k).pressure() >= RECOVERS * here);
    return isAlike(here / TENTH, next, ALIKE);
  }

  private static double beside(List<Reading> all, int i, int step, IntPredicate counts) {
    int end = i + step * (REACH + 1);
    for (int k = i + step; k >= 0 && k < all.size() && k != end; k += step) {
      if (counts.test(k)) {
        return all.get(k).pressure();
      }
    }
    return Double.NaN;
  }

  private static boolean isAlike(double a, double b, double factor) {
    return a <= b * factor && b <= a * factor;
  }

  /** What was meant [Pa gauge]. */
  public double meant() {
    return reading.pressure() * Math.pow(10, shift);
  }

  /** The question to the person who typed it. */
  public Message question() {
    return Message.of(
        "%s %s; %s.",
        Message.pressure(reading.pressure()),
        problem(),
        Message.of(REMEDY, Message.pressure(meant())));
  }

  /** What is odd, to be said after the value. */
  String problem() {
    String share = shift > 0 ? "a tenth of" : shift == -1 ? "ten times" : "a hundred times";
    return "is " + share + " the readings beside it";
  }

  /**
   * @param value what was meant, as it would be written
   */
  static String remedy(String value) {
    return REMEDY.formatted(value);
  }

  private static final String REMEDY =
      "correct it if %s was meant, or put '?' behind it if the gauge did show it";
}
