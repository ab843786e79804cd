package holdcurve.casebook;

import holdcurve.advice.check.CheckVerdict;
import holdcurve.common.text.Titles;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.job.Repair;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * One job, as far as a list shows it.
 *
 * @param file where it stands
 * @param car what the owner calls it
 * @param date of the last hold as written; may be empty
 * @param facts what the job itself says of how far it is
 * @param repairs how many repairs are noted
 * @param repair the last of them
 * @param answer what was last worked out; empty where it never was, or the files changed since
 */
public record CaseEntry(
    Path file,
    String car,
    String date,
    JobFacts facts,
    int repairs,
    Optional<Repair> repair,
    Optional<KnownAnswer> answer) {
  /** A job nothing was worked out about yet. */
  public static CaseEntry of(Path file, Job job) {
    List<Repair> repairs = job.upkeep().repairs();
    List<HoldTest> tests = job.tests();
    return new CaseEntry(
        file,
        Titles.shown(job.title()),
        tests.isEmpty() ? "" : tests.get(tests.size() - 1).date(),
        JobFacts.of(job),
        repairs.size(),
        repairs.isEmpty() ? Optional.empty() : Optional.of(repairs.get(repairs.size() - 1)),
        Optional.empty());
  }

  /** The same with what was worked out about it. */
  public CaseEntry with(KnownAnswer known) {
    return new CaseEntry(file, car, date, facts, repairs, repair, Optional.of(known));
  }

  /** How far it is. */
  public JobState state() {
    return JobPath.state(facts, answer);
  }

  /** Whether the hold after the last repair proved it. */
  public Proof proof() {
    if (!facts.repaired()) {
      return Proof.NOTHING_REPAIRED;
    }
    if (facts.unproved() || !facts.held()) {
      return Proof.NOT_HELD;
    }
    return answer.flatMap(KnownAnswer::check).map(CaseEntry::proof).orElse(Proof.NOT_CHECKED);
  }

  private static Proof proof(CheckVerdict.Kind check) {
    return switch (check) {
      case HOLDS -> Proof.PROVED;
      case FAULTY -> Proof.STILL_FAULTY;
      case CANNOT_SAY -> Proof.NOT_SETTLED;
    };
  }
}
