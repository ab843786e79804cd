package holdcurve.ui.window.job;

import holdcurve.advice.check.RepairCheck;
import holdcurve.casebook.JobFacts;
import holdcurve.casebook.JobPath;
import holdcurve.casebook.KnownAnswer;
import holdcurve.inference.answer.Ranking;
import java.util.Optional;
import java.util.Set;

/** How far the open job is. An answer that is out of date is none. */
public final class OpenJobPath {
  private OpenJobPath() {}

  /** The steps that are done; none without an open job. */
  public static Set<JobPath.Step> done(OpenJobModel jobs) {
    return jobs.jobProperty().get() == null
        ? Set.of()
        : JobPath.done(JobFacts.of(jobs.jobProperty().get()), answer(jobs));
  }

  /** How far it is, in a few words. */
  public static String state(OpenJobModel jobs) {
    return JobPath.state(JobFacts.of(jobs.jobProperty().get()), answer(jobs)).words();
  }

  /** What is known of it and not out of date; a check counts for more than a ranking. */
  public static Optional<KnownAnswer> answer(OpenJobModel jobs) {
    RepairCheck check = jobs.check().valueProperty().get();
    Ranking ranking = jobs.ranking().resultProperty().get();
    Optional<KnownAnswer> checked =
        check == null || jobs.check().outdatedProperty().get()
            ? Optional.empty()
            : Optional.of(KnownAnswer.of(check));
    Optional<KnownAnswer> ranked =
        ranking == null || jobs.ranking().outdatedProperty().get()
            ? Optional.empty()
            : Optional.of(KnownAnswer.of(ranking));
    return ranked
        .map(
            one ->
                new KnownAnswer(
                    one.kind(),
                    one.alone(),
                    one.suspect(),
                    one.chance(),
                    checked.flatMap(KnownAnswer::check)))
        .or(() -> checked);
  }
}
