package holdcurve.repair;

import holdcurve.job.HoldTest;
import holdcurve.job.Job;
import holdcurve.job.Repair;
import holdcurve.saying.Saying;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The part of a job that speaks of the circuit as it is now: a test from before a repair would be
 * held against the wrong circuit.
 */
public final class CurrentTests {
  private CurrentTests() {}

  /**
   * The job with the tests after its last repair alone, and a note of what was left out. The same
   * job where nothing was repaired, or where no hold followed the repair. What was seen and counted
   * goes with the hold test it names, else by its date; without either it is left out.
   *
   * @throws holdcurve.check.InputException if tests and repairs can't be put in order
   */
  public static Job of(Job job) {
    if (job.upkeep().repairs().isEmpty()) {
      return job;
    }
    Timeline timeline = Timeline.of(job);
    Optional<Repair> repair = timeline.repair();
    List<HoldTest> current = new ArrayList<>();
    for (Session session : Timeline.sessions(job)) {
      HoldTest first = session.tests().get(0);
      if (Timeline.repairBefore(job, first).equals(repair)) {
        current.addAll(session.tests());
      }
    }
    if (repair.isEmpty() || current.size() == job.tests().size()) {
      return job;
    }
    List<Saying> understood = new ArrayList<>(job.understood());
    understood.add(
        Saying.plain(
            "Only what was read after the repair of "
                + repair.get().date()
                + " is used; 'check' sets it beside the tests before."));
    return new Job(
        job.title(),
        job.circuit(),
        job.gauge(),
        current,
        new FindingsInTime(job, timeline).since(current),
        job.priors(),
        understood,
        job.upkeep());
  }
}
