package holdcurve.record.job;

import holdcurve.common.message.Message;
import java.util.ArrayList;
import java.util.List;

/**
 * The part of a job that speaks of the circuit as it is now: a test from before a repair, or of
 * last year, would be held against the wrong circuit.
 */
public final class CurrentTests {
  private CurrentTests() {}

  /**
   * The job with the tests of its last session alone, and a note of what was left out. The same job
   * where all are of one session, or none has readings. What was seen and counted goes with the
   * hold test it names, else by its date; after a repair, what has neither is left out.
   *
   * @throws holdcurve.common.input.InputException if tests and repairs can't be put in order
   */
  public static Job of(Job job) {
    if (job.tests().stream().noneMatch(test -> test.log().holdSpan() > 0)) {
      return job;
    }
    Timeline timeline = Timeline.of(job);
    if (timeline.earlier().isEmpty()) {
      return job;
    }
    List<Message> understood = new ArrayList<>(job.understood());
    understood.add(Message.plain(leftOut(timeline)));
    return new Job(
        job.title(),
        job.circuit(),
        job.gauge(),
        timeline.checked().tests(),
        new FindingsInTime(job, timeline).checked(),
        job.priors(),
        understood,
        job.upkeep());
  }

  private static String leftOut(Timeline timeline) {
    return timeline
        .repair()
        .map(
            repair ->
                "Only the holds after the repair of "
                    + repair.date()
                    + " are used. 'check' sets them beside the holds before.")
        .orElse(
            "Only the latest holds are used: the circuit may have changed since the earlier ones."
                + " 'check' sets them side by side.");
  }
}
