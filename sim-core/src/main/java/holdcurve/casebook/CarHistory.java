package holdcurve.casebook;

import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.job.RankableTests;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The holds of one car over the years, without clamps, so that they can be laid over each other.
 */
public final class CarHistory {
  private CarHistory() {}

  /**
   * Oldest first; those without a date come first.
   *
   * @param jobs of one car
   */
  public static List<HoldTest> holds(List<Job> jobs) {
    List<HoldTest> holds = new ArrayList<>();
    for (Job job : jobs) {
      RankableTests.of(job).tests().stream()
          .filter(test -> test.clamped().isEmpty())
          .forEach(holds::add);
    }
    holds.sort(Comparator.comparing(HoldTest::date));
    return holds;
  }
}
