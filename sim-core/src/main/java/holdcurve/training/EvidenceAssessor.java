package holdcurve.training;

import holdcurve.common.work.Progress;

/** Says what a learner's own readings and findings support, and nothing of the truth. */
public interface EvidenceAssessor {
  /**
   * @param steps how many of the session's steps count
   * @throws java.util.concurrent.CancellationException if {@code progress} says so
   */
  Evidence after(TrainingSession session, int steps, Progress progress);
}
