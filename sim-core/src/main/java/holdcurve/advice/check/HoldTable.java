package holdcurve.advice.check;

import holdcurve.inference.answer.HoldCurve;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.PassMark;
import holdcurve.record.job.Session;
import holdcurve.record.job.Timeline;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * A checked hold beside what it should show, and beside the hold that was done like it before.
 *
 * @param test the checked hold
 * @param described what it should show by the circuit's description
 * @param remembered what it should show by the circuit's own history; empty without one
 * @param last the latest earlier hold with the same clamps and no known fault: before the session
 *     that led to the repair if there is one, else the one before; empty if there is none
 */
public record HoldTable(
    HoldTest test, HoldCurve described, Optional<HoldCurve> remembered, Optional<HoldTest> last) {
  private static final double MINUTE = 60;

  /** Rows of a table at most. */
  private static final int MOST_ROWS = 12;

  /** The table of the i-th checked test. */
  public static HoldTable of(RepairCheck check, int i) {
    HoldTest test = check.timeline().checked().tests().get(i);
    return new HoldTable(
        test,
        check.described().get(i),
        check.remembered().isEmpty() ? Optional.empty() : Optional.of(check.remembered().get(i)),
        likeBefore(check.timeline(), test));
  }

  /** The session just before a repair shows the fault; an older one shows how it used to hold. */
  private static Optional<HoldTest> likeBefore(Timeline timeline, HoldTest test) {
    List<Session> sessions = new ArrayList<>(timeline.earlier());
    if (timeline.repair().isPresent() && sessions.size() > 1) {
      sessions.remove(sessions.size() - 1);
    }
    Collections.reverse(sessions);
    return sessions.stream()
        .flatMap(session -> session.tests().stream())
        .filter(other -> other.clamped().equals(test.clamped()))
        .findFirst();
  }

  /** Whole minutes from the pump stop to the end of the hold, not too many [s]. */
  public List<Double> times() {
    double end = test.log().holdSpan();
    double step = MINUTE * Math.max(1, Math.ceil(end / MINUTE / MOST_ROWS));
    List<Double> times = new ArrayList<>();
    for (double time = 0; time <= end + 1e-6; time += step) {
      times.add(time);
    }
    if (times.size() == 1) {
      times.add(end);
    }
    return times;
  }

  /** Reading of the checked hold [Pa gauge]; not-a-number outside its readings. */
  public double read(double time) {
    return read(test, time);
  }

  /** Reading of a hold [Pa gauge]; not-a-number outside its readings. */
  public static double read(HoldTest test, double time) {
    return PassMark.at(test.log().hold(), time);
  }
}
