package holdcurve.record.job;

import holdcurve.common.message.Message;
import java.util.List;
import java.util.Optional;

/** A hold after a repair beside the one before it. */
public final class BeforeRepair {
  /** Readings closer than this are the same, in steps of the gauge [-]. */
  private static final double SAME = 2;

  private BeforeRepair() {}

  /** What the repair did to the hold; empty where there is nothing to compare. */
  public static Optional<Message> words(Job job) {
    if (job.upkeep().repairs().isEmpty()
        || job.tests().stream().noneMatch(t -> t.log().holdSpan() > 0)) {
      return Optional.empty();
    }
    Timeline timeline = Timeline.of(job);
    if (timeline.earlier().isEmpty() || timeline.repair().isEmpty()) {
      return Optional.empty();
    }
    Session last = timeline.earlier().get(timeline.earlier().size() - 1);
    Optional<PassMark> before = mark(job, last.tests());
    Optional<PassMark> after = mark(job, timeline.checked().tests());
    return before.flatMap(b -> after.map(a -> words(job, b.reading(), a.reading())));
  }

  private static Optional<PassMark> mark(Job job, List<HoldTest> tests) {
    return PassMark.of(job.withTests(tests)).stream()
        .filter(mark -> mark.outcome() != PassMark.Outcome.TOO_SHORT)
        .findFirst();
  }

  private static Message words(Job job, double before, double after) {
    boolean same = Math.abs(after - before) <= SAME * job.gauge().resolution() * 1.001;
    return Message.of(
        same
            ? "The repair changed nothing: %s after %.0f min before it, %s now."
            : "Before the repair: %s after %.0f min; now %s.",
        Message.pressure(before),
        job.upkeep().pass().time() / 60,
        Message.pressure(after));
  }
}
