package holdcurve.ui.window;

import holdcurve.casebook.SameCar;
import holdcurve.common.work.Progress;
import holdcurve.file.CaseShelf;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.posterior.Posterior;
import holdcurve.inference.ranking.Ranker;
import holdcurve.inference.ranking.RankingService;
import holdcurve.record.job.Job;
import java.nio.file.Path;
import java.util.List;

/** Ranks from what earlier jobs of the same car taught, if the case book knows any. */
record CarRanker(RankingService usual, Path fileOrNull) implements Ranker {
  RankingService service(Job job, Progress progress) {
    List<Job> earlier = fileOrNull == null ? List.of() : CaseShelf.usual().earlier(fileOrNull);
    return SameCar.ranking(usual, earlier, job, progress);
  }

  @Override
  public Ranking rank(Job job, long seed, Progress progress) {
    return service(job, progress).rank(job, seed, progress);
  }

  @Override
  public Posterior believe(Job job, long seed, int draws, Progress progress) {
    return service(job, progress).believe(job, seed, draws, progress);
  }
}
