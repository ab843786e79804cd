package holdcurve.calibration;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.JobReader;
import holdcurve.file.RankingWriter;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.prior.FaultPriors;
import holdcurve.inference.ranking.RankingService;
import holdcurve.record.job.Job;
import java.nio.file.Path;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** How many hypotheses are worked on at once changes nothing in the answer, to the last digit. */
class RankingThreadsTest {
  private static final Set<String> SOME =
      Set.of("check-valve-seat", "feed-side-joint", "injector-tip", "regulator-low-reseat");

  private final Job job =
      JobReader.read(
          Path.of(System.getProperty("holdcurve.root", ".."), "scenarios", "check-valve.job.json"));

  private String ranked(int threads) {
    FaultCatalogue faults = FaultCatalogue.load().only(fault -> SOME.contains(fault.id()));
    assertEquals(SOME.size(), faults.faults().size());
    Ranking ranking =
        new RankingService(faults, FaultPriors.shipped(), threads).rank(job, 5, Progress.NONE);
    return RankingWriter.json(ranking);
  }

  @Test
  void oneThreadAndFiveGiveTheSameFile() {
    assertEquals(ranked(1), ranked(5));
  }
}
