package holdcurve.advice.live;

import holdcurve.record.log.Reading;
import java.util.List;

/**
 * What the readings so far allow to say, by one rule: two moments in a row ({@link
 * AveragedReadings}) outside the band of a sound circuit by more than the gauge can explain.
 *
 * @param kind what sort of answer it is
 * @param leastLeak the least leak at 2 bar that would have shown by the last reading [m³/s]
 */
public record LiveAssessment(Kind kind, double leastLeak) {
  /** What can be said. */
  public enum Kind {
    /** The needle stands where a sound circuit has it, and a leak that matters would have shown. */
    SOUND,
    /** It falls further than any sound circuit lets it. */
    LEAKING,
    /** Likewise, but nearly all at once: a regulator that shuts low, rather than a leak. */
    FELL_AT_ONCE,
    /** It stands higher than a sound circuit has it: fuel that warms up, or a pump that runs. */
    HIGH,
    /** Neither. */
    EARLY
  }

  /**
   * A leak worth looking for, at 2 bar: common practice, 0.2 mL/min or some six drops a minute,
   * which takes about half a bar in five minutes. Less than about 0.17 mL/min can't be told from
   * the weep and the stretch of a sound circuit, however long one unclamped hold is watched [m³/s].
   */
  public static final double NOTABLE_LEAK = 0.2e-6 / 60;

  /** The first minute, against three of them: assumed [s]. */
  private static final double AT_ONCE = 60;

  private static final double LATER = 180;

  /** Twice what a steady leak takes in the first of three minutes [-]. */
  private static final double MOST_OF_IT = 0.67;

  /**
   * @param readings on the clock of the hold, ascending; doubtful ones don't count
   */
  public static LiveAssessment of(Expectation expectation, List<Reading> readings) {
    List<Reading> sure = AveragedReadings.of(readings);
    if (sure.size() < 2) {
      return new LiveAssessment(Kind.EARLY, Double.POSITIVE_INFINITY);
    }
    double least = expectation.leastLeakAt(sure.get(sure.size() - 1).time());
    return new LiveAssessment(kind(expectation, sure, least), least);
  }

  private static Kind kind(Expectation expected, List<Reading> readings, double least) {
    for (int i = 1; i < readings.size(); i++) {
      Reading one = readings.get(i - 1);
      Reading next = readings.get(i);
      if (isBelow(expected, one) && isBelow(expected, next)) {
        return fellAtOnce(expected, readings) ? Kind.FELL_AT_ONCE : Kind.LEAKING;
      }
      if (isAbove(expected, one) && isAbove(expected, next)) {
        return Kind.HIGH;
      }
    }
    Reading last = readings.get(readings.size() - 1);
    boolean inside = !isBelow(expected, last) && !isAbove(expected, last);
    return inside && least <= NOTABLE_LEAK ? Kind.SOUND : Kind.EARLY;
  }

  /** A leak that takes what is missing in some minutes has taken a third of it in the first. */
  private static boolean fellAtOnce(Expectation expected, List<Reading> readings) {
    Reading last = readings.get(readings.size() - 1);
    return last.time() >= LATER
        && readings.stream()
            .filter(r -> r.time() > 0 && r.time() <= AT_ONCE)
            .reduce((before, next) -> next)
            .filter(r -> missing(expected, r) >= MOST_OF_IT * missing(expected, last))
            .isPresent();
  }

  private static double missing(Expectation expected, Reading reading) {
    return expected.middleAt(reading.time()) - reading.pressure();
  }

  private static boolean isBelow(Expectation expected, Reading reading) {
    return expected.below(reading.time(), reading.pressure()) > 0;
  }

  private static boolean isAbove(Expectation expected, Reading reading) {
    return expected.above(reading.time(), reading.pressure()) > 0;
  }
}
