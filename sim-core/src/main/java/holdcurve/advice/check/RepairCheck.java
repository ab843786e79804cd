package holdcurve.advice.check;

import holdcurve.common.message.Message;
import holdcurve.common.number.Interval;
import holdcurve.inference.answer.HoldCurve;
import holdcurve.inference.answer.Ranking;
import holdcurve.record.job.PassMark;
import holdcurve.record.job.Timeline;
import holdcurve.record.limit.PassLimit;
import java.util.List;
import java.util.Optional;

/**
 * What the latest holds of a job say about a repair.
 *
 * @param job title of the job
 * @param timeline which tests are checked, and what came before
 * @param verdict the answer
 * @param sound probability that nothing is wrong [-]
 * @param loss what is lost at the test pressure if something leaks [m³/s]; empty where no leak
 *     comes into question
 * @param limit least pressure that the holds must still show
 * @param marks the checked holds without clamps beside that limit
 * @param described what the gauge should show by the circuit's description, one curve a checked
 *     test
 * @param remembered what it should show by the circuit's own history, likewise; empty without one
 * @param ranking of the checked tests alone
 * @param before ranking of the last session before them; empty without one
 * @param places parts to look at for what leads, if it does not hold; empty otherwise
 * @param notes what a reader should know, plain sentences
 */
public record RepairCheck(
    String job,
    Timeline timeline,
    CheckVerdict verdict,
    double sound,
    Optional<Interval> loss,
    PassLimit limit,
    List<PassMark> marks,
    List<HoldCurve> described,
    List<HoldCurve> remembered,
    Ranking ranking,
    Optional<Ranking> before,
    List<String> places,
    List<Message> notes) {
  /** Format and version that files with a check carry. */
  public static final String FORMAT = "holdcurve-check/1";

  public RepairCheck {
    marks = List.copyOf(marks);
    described = List.copyOf(described);
    remembered = List.copyOf(remembered);
    places = List.copyOf(places);
    notes = List.copyOf(notes);
  }
}
