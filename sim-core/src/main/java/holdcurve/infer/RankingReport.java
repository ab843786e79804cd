package holdcurve.infer;

import holdcurve.evidence.ModelProbabilities;
import holdcurve.job.Job;
import java.util.List;

final class RankingReport {
  private final Job job;
  private final JobModel data;
  private final List<RankingService.Judged> judged;
  private final long seed;
  private final List<String> notes;

  RankingReport(
      Job job, JobModel data, List<RankingService.Judged> judged, long seed, List<String> notes) {
    this.job = job;
    this.data = data;
    this.judged = judged;
    this.seed = seed;
    this.notes = notes;
  }

  Ranking ranking() {
    ModelProbabilities p = RankingService.probabilities(judged);
    for (int i = 0; i < judged.size(); i++) {
      var j = judged.get(i);
      var e = j.evidence();
      System.out.printf(
          "%-60s p=%.4f ± %.4f logZ=%.2f ± %.2f laplace=%.2f maxL=%.2f ess=%.0f k=%.2f %s rel=%s calls=%d modes=%d dim=%d%n",
          j.hypothesis().id(),
          p.probabilities()[i],
          p.standardErrors()[i],
          e.logEvidence(),
          e.standardError(),
          e.laplaceLogEvidence(),
          e.maximumLogLikelihood(),
          e.effectiveSampleSize(),
          e.paretoShape(),
          e.method(),
          e.reliable(),
          e.likelihoodCalls(),
          e.modes(),
          j.model().dimension());
    }
    return null;
  }
}
