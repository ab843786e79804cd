package holdcurve.advice.plan;

import holdcurve.inference.answer.Verdict;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.record.job.Job;
import java.util.List;

/**
 * The test that holds can't replace: readings from before the pump stops. What they would tell
 * can't be predicted from holds, which know nothing of a running pump, so it is a note without
 * bits.
 */
final class BuildUpLog {
  /** Fewer say nothing of a rise. */
  private static final int LEAST = 3;

  private static final String NOTE =
      "You took no readings with the pump running. So a weak pump, a clogged filter, a blocked"
          + " return and trapped air stay hidden. To check them too, film gauge and stopwatch from"
          + " just before the pump is switched on. Let it run for 10 s, stop it and hold as usual."
          + " The pump stop is time zero; times before it get a minus. Even so a weak pump or a"
          + " clogged filter may not show: measure what the pump delivers.";

  private BuildUpLog() {}

  /**
   * The advice to log the build-up where it could matter: no test has it, and either no leak stands
   * out or a fault that a hold can't show is among the hypotheses.
   *
   * @param open hypotheses that are still open
   */
  static List<String> notes(Job job, Verdict verdict, List<Hypothesis> open) {
    boolean logged = job.tests().stream().anyMatch(test -> test.log().beforeStop() >= LEAST);
    boolean running =
        open.stream()
            .flatMap(hypothesis -> hypothesis.members().stream())
            .anyMatch(member -> !member.fault().showsInHold());
    boolean matters = running || verdict.kind() != Verdict.Kind.LEAK;
    return !logged && matters ? List.of(NOTE) : List.of();
  }
}
