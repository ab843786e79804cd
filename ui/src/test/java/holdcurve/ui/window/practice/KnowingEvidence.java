package holdcurve.ui.window.practice;

import holdcurve.common.work.Progress;
import holdcurve.training.Evidence;
import holdcurve.training.EvidenceAssessor;
import holdcurve.training.StatedOdds;
import holdcurve.training.TrainingSession;
import java.util.List;
import java.util.Map;

/** Invented evidence that grows surer of one suspect with every step. */
final class KnowingEvidence implements EvidenceAssessor {
  private final String suspect;
  private final String other;

  KnowingEvidence(String suspect, String other) {
    this.suspect = suspect;
    this.other = other;
  }

  @Override
  public Evidence after(TrainingSession session, int steps, Progress progress) {
    double sure = 1 - 0.6 / (1 + steps * steps);
    List<Evidence.Worth> worth =
        steps == 0
            ? List.of()
            : session.exercise().steps().stream()
                .map(step -> new Evidence.Worth(step, 1.0 / (1 + steps)))
                .toList();
    return new Evidence(
        new StatedOdds(Map.of(suspect, sure, other, 1 - sure)),
        "Check valve leaks back to the tank",
        worth,
        true);
  }
}
