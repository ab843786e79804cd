package holdcurve.record.job;

import holdcurve.record.log.GaugeLog;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The tests of a job, finished or not, that a ranking can use. */
public final class RankableTests {
  /** Readings after the pump stop that a ranking needs in a test. */
  public static final int FEWEST_READINGS = 3;

  private RankableTests() {}

  /**
   * Only the tests that a ranking can use. A repair after one of the others then comes after the
   * last of these before it.
   */
  public static Job of(Job job) {
    List<HoldTest> kept = job.tests().stream().filter(RankableTests::isRankable).toList();
    if (kept.size() == job.tests().size()) {
      return job;
    }
    List<Repair> repairs = new ArrayList<>();
    for (Repair repair : job.upkeep().repairs()) {
      if (repair.afterTest().isEmpty()) {
        repairs.add(repair);
      } else {
        last(job, repair.afterTest()).ifPresent(id -> repairs.add(after(repair, id)));
      }
    }
    return job.withTests(kept).withUpkeep(job.upkeep().withRepairs(repairs));
  }

  private static Repair after(Repair repair, String test) {
    return new Repair(repair.date(), repair.part(), repair.fault(), test, repair.note());
  }

  private static Optional<String> last(Job job, String upTo) {
    Optional<String> last = Optional.empty();
    for (HoldTest test : job.tests()) {
      last = isRankable(test) ? Optional.of(test.id()) : last;
      if (test.id().equals(upTo)) {
        return last;
      }
    }
    return last;
  }

  /** The last test that a ranking can use; empty for none. */
  public static Optional<HoldTest> last(Job job) {
    return job.tests().stream().filter(RankableTests::isRankable).reduce((first, second) -> second);
  }

  /** The job's last repair, if no hold that can be judged followed it yet. */
  public static Optional<Repair> unproved(Job job) {
    if (job.upkeep().repairs().isEmpty()) {
      return Optional.empty();
    }
    Job rankable = of(job);
    return rankable.tests().isEmpty() ? Optional.empty() : Timeline.unproved(rankable);
  }

  private static boolean isRankable(HoldTest test) {
    return held(test.log()) >= FEWEST_READINGS;
  }

  private static int held(GaugeLog log) {
    return log.readings().size() - log.beforeStop();
  }
}
