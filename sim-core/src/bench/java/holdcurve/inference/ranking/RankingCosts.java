package holdcurve.inference.ranking;

import holdcurve.common.work.Progress;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.prior.FaultPriors;

import holdcurve.bench.Clock;
import holdcurve.bench.Picture;
import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.LeakFault;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What a full ranking costs with more tests and with more hypotheses. */
final class RankingCosts {
  private static final int[] TESTS = {1, 2, 4, 8};
  private static final int[] FAULTS = {3, 6, 12};
  private static final int RUNS = 3;

  private RankingCosts() {}

  static void print(Job job, FaultCatalogue catalogue) {
    System.out.println("\nFull ranking, warm, against the number of tests of 60 readings");
    System.out.println("| tests | hypotheses | time [s] | for each hypothesis [ms] |");
    System.out.println("|---|---|---|---|");
    Picture.Series tests = new Picture.Series("tests", "s");
    for (int count : TESTS) {
      tests.add(count, line(count, job.withTests(times(job.tests(), count)), catalogue).time());
    }
    System.out.println("\nThe same for four tests, against the number of hypotheses");
    System.out.println("| faults | hypotheses | time [s] | for each hypothesis [ms] |");
    System.out.println("|---|---|---|---|");
    Picture.Series hypotheses = new Picture.Series("hypotheses", "s");
    for (int count : FAULTS) {
      List<LeakFault> some = catalogue.faults().subList(0, count);
      Cost cost = line(count, job, catalogue.only(some::contains));
      hypotheses.add(cost.hypotheses(), cost.time());
    }
    Cost all = line(catalogue.faults().size(), job, catalogue);
    hypotheses.add(all.hypotheses(), all.time());
    Picture.add("Ranking against tests", tests);
    Picture.add("Ranking against hypotheses", hypotheses);
  }

  /**
   * @param time [s]
   */
  private record Cost(int hypotheses, double time) {}

  private static Cost line(int count, Job job, FaultCatalogue catalogue) {
    RankingService service = new RankingService(catalogue, FaultPriors.shipped(), 2);
    int hypotheses = service.rank(job, 1, Progress.NONE).suspects().size();
    double time = Clock.fastestOf(RUNS, () -> service.rank(job, 1, Progress.NONE));
    System.out.printf(
        Locale.ROOT,
        "| %d | %d | %.2f | %.0f |%n",
        count,
        hypotheses,
        time,
        1e3 * time / hypotheses);
    return new Cost(hypotheses, time);
  }

  /** So many tests, from the start again where there are fewer. */
  private static List<HoldTest> times(List<HoldTest> tests, int count) {
    List<HoldTest> all = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      HoldTest test = tests.get(i % tests.size());
      all.add(HoldTest.of("hold " + i, test.clamped(), test.log()));
    }
    return all;
  }
}
