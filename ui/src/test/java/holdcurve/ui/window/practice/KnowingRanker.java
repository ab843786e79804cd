package holdcurve.ui.window.practice;

import holdcurve.common.work.Progress;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.answer.Verdict;
import holdcurve.inference.ranking.Ranker;
import holdcurve.record.job.Job;
import java.util.List;
import java.util.Optional;

/** An invented ranking that grows surer of one suspect with every test and finding. */
final class KnowingRanker implements Ranker {
  private final String suspect;
  private final String other;

  KnowingRanker(String suspect, String other) {
    this.suspect = suspect;
    this.other = other;
  }

  @Override
  public Ranking rank(Job job, long seed, Progress progress) {
    int known = job.tests().size() + job.findings().size();
    double sure = 1 - 0.6 / (1 + known * known);
    return new Ranking(
        job.title(),
        seed,
        new Verdict(Verdict.Kind.LEAK, "It leaks."),
        List.of(suspect(suspect, sure), suspect(other, 1 - sure)),
        List.of(),
        2e5,
        List.of());
  }

  private static Suspect suspect(String id, double probability) {
    return new Suspect(id, "Suspect " + id, "", probability, Optional.empty(), "", "", List.of());
  }
}
