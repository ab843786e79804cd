package holdcurve.advice.live;

import holdcurve.record.log.Reading;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A hold as a person would have written it down: of the many readings that a logger takes within a
 * moment, the middle one. Neighbours in a logger's log share their noise or come so quickly after
 * one another that two of them outside a band say no more than one.
 */
public final class AveragedReadings {
  /** How long a moment is at first and at most: assumed [s]. */
  private static final double SHORTEST = 1;

  private static final double LONGEST = 10;

  /** How long it is beside the time since the pump stop: assumed [-]. */
  private static final double SHARE = 0.2;

  private AveragedReadings() {}

  /**
   * @param hold readings on the clock of the hold, ascending; doubtful ones and those before the
   *     pump stop are left out
   * @return one reading a moment, ascending
   */
  public static List<Reading> of(List<Reading> hold) {
    List<Reading> sure = hold.stream().filter(AveragedReadings::counts).toList();
    List<Reading> steady = new ArrayList<>();
    int from = 0;
    while (from < sure.size()) {
      int to = endOfMoment(sure, from);
      steady.add(middle(sure.subList(from, to)));
      from = to;
    }
    return steady;
  }

  /** The first of them, without looking at the rest; empty while there is none. */
  public static Optional<Reading> first(List<Reading> hold) {
    List<Reading> moment = new ArrayList<>();
    for (Reading reading : hold) {
      if (!counts(reading)) {
        continue;
      }
      if (!moment.isEmpty() && reading.time() >= end(moment.get(0).time())) {
        break;
      }
      moment.add(reading);
    }
    return moment.isEmpty() ? Optional.empty() : Optional.of(middle(moment));
  }

  private static boolean counts(Reading reading) {
    return reading.time() >= 0 && !reading.doubtful();
  }

  private static double end(double begin) {
    return begin + Math.min(LONGEST, Math.max(SHORTEST, SHARE * begin));
  }

  private static int endOfMoment(List<Reading> sure, int from) {
    double end = end(sure.get(from).time());
    int to = from + 1;
    while (to < sure.size() && sure.get(to).time() < end) {
      to++;
    }
    return to;
  }

  private static Reading middle(List<Reading> moment) {
    List<Reading> byPressure =
        moment.stream().sorted(Comparator.comparingDouble(Reading::pressure)).toList();
    double time = moment.stream().mapToDouble(Reading::time).average().orElseThrow();
    return Reading.of(time, byPressure.get(byPressure.size() / 2).pressure());
  }
}
