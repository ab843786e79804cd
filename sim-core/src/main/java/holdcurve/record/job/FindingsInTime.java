package holdcurve.record.job;

import holdcurve.record.finding.Finding;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Which findings speak of the circuit at which time: by the hold test they name, else by their
 * date. One without either, or of the very day of a repair, is taken to be from before.
 */
public final class FindingsInTime {
  private final Job job;
  private final Timeline timeline;

  public FindingsInTime(Job job, Timeline timeline) {
    this.job = job;
    this.timeline = timeline;
  }

  /** Findings of the session that is checked. */
  public List<Finding> checked() {
    return job.findings().stream().filter(this::isChecked).toList();
  }

  /** Findings of the session before it. */
  public List<Finding> before() {
    int last = timeline.earlier().size() - 1;
    return job.findings().stream()
        .filter(finding -> !isChecked(finding))
        .filter(f -> isOf(timeline.earlier().get(last), f) || isOfRepairDay(f))
        .toList();
  }

  /** What a reader should know of how findings were sorted. */
  public List<String> notes() {
    List<String> notes = new ArrayList<>();
    List<Finding> alone = job.findings().stream().filter(f -> f.test().isEmpty()).toList();
    if (alone.stream().anyMatch(finding -> finding.date().isEmpty())) {
      notes.add("What was seen and counted without a date was taken to be from before.");
    }
    if (alone.stream().anyMatch(this::isOfRepairDay)) {
      notes.add(
          "What was seen and counted on the day of the repair was taken to be from before it,"
              + " unless it names a hold test.");
    }
    return notes;
  }

  private boolean isChecked(Finding finding) {
    if (finding.test().isPresent() || finding.date().isPresent()) {
      return isOf(timeline.checked(), finding)
          && (finding.test().isPresent() || isAfterRepair(finding.date().get()));
    }
    return timeline.earlier().isEmpty();
  }

  private boolean isOfRepairDay(Finding finding) {
    return finding.test().isEmpty()
        && finding.date().isPresent()
        && finding.date().equals(timeline.repair().map(Repair::date));
  }

  private boolean isAfterRepair(LocalDate date) {
    return timeline.repair().map(repair -> date.isAfter(repair.date())).orElse(true);
  }

  /** By the test it names; else from the session's day to the next session's. */
  private boolean isOf(Session session, Finding finding) {
    if (finding.test().isPresent()) {
      return session.tests().stream().anyMatch(test -> isDuring(finding, test));
    }
    if (finding.date().isEmpty()) {
      return true;
    }
    LocalDate date = finding.date().get();
    boolean begun = session.day().map(day -> !date.isBefore(day)).orElse(true);
    return begun && laterDays(session).stream().allMatch(date::isBefore);
  }

  private List<LocalDate> laterDays(Session session) {
    return Timeline.sessions(job).stream()
        .flatMap(other -> other.day().stream())
        .filter(day -> session.day().map(day::isAfter).orElse(false))
        .toList();
  }

  private static boolean isDuring(Finding finding, HoldTest test) {
    return finding.test().equals(Optional.of(test.id()));
  }
}
