package holdcurve.ui.window.holdtests;

import holdcurve.record.finding.Finding;
import holdcurve.record.job.HoldTest;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** Findings of the job, put in and taken out. */
final class JobFindings {
  private final ChosenHold hold;
  private final Supplier<LocalDate> today;

  JobFindings(ChosenHold hold, Supplier<LocalDate> today) {
    this.hold = hold;
    this.today = today;
  }

  /** The day that a finding is offered: that of the hold shown, or today. */
  LocalDate day() {
    return Optional.ofNullable(hold.testProperty().get()).flatMap(HoldTest::day).orElseGet(today);
  }

  /** Adds one; can be taken back. */
  void add(Finding finding) {
    hold.jobs()
        .change(
            "finding",
            job -> {
              List<Finding> more = new ArrayList<>(job.findings());
              more.add(finding);
              return job.withFindings(more);
            });
  }

  /** Takes one out; can be taken back. */
  void remove(Finding finding) {
    hold.jobs()
        .change(
            "removing a finding",
            job ->
                job.withFindings(
                    job.findings().stream().filter(other -> other != finding).toList()));
  }

  /** All of the open job. */
  List<Finding> all() {
    return hold.job() == null ? List.of() : hold.job().findings();
  }
}
