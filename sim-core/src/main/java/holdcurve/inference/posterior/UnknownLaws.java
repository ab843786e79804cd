package holdcurve.inference.posterior;

import holdcurve.inference.fit.EquivalentFaults;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.hypothesis.Identifiability;
import holdcurve.inference.likelihood.JobModel;
import java.util.ArrayList;
import java.util.List;

/**
 * Faults that drain the same fuel the same way differ, to a gauge, by nothing but the law of their
 * leak, and nobody knows the law of a leak in the field. So the readings may be explained by the
 * law of any of them: the evidence that readings give a fault is a mean over the laws of its
 * equivalents and, for a small part, its own. What was found beside the gauge stays its own.
 */
public final class UnknownLaws {
  /** How far a fault is trusted to keep the law that its plugin gives it: assumed [-]. */
  private static final double OWN = 0.15;

  private final JobModel data;
  private final EquivalentFaults equivalents;

  public UnknownLaws(JobModel data, Identifiability alike) {
    this.data = data;
    this.equivalents = new EquivalentFaults(alike);
  }

  /**
   * The same hypotheses in order, their evidences averaged over laws. One whose model fails where
   * it fits best can't be divided into readings and findings, and keeps its own.
   */
  public List<EvaluatedHypothesis> averaged(List<EvaluatedHypothesis> evaluated) {
    double[] found = evaluated.stream().mapToDouble(this::found).toArray();
    List<EvaluatedHypothesis> averaged = new ArrayList<>();
    for (int i = 0; i < found.length; i++) {
      EvaluatedHypothesis one = evaluated.get(i);
      averaged.add(
          Double.isFinite(found[i])
              ? one.withLogEvidence(ofReadings(evaluated, found, i) + found[i])
              : one);
    }
    return averaged;
  }

  /** Log evidence of the readings alone, averaged over the laws of the equivalents [nat]. */
  private double ofReadings(List<EvaluatedHypothesis> evaluated, double[] found, int i) {
    double own = evaluated.get(i).logEvidence() - found[i];
    double weights = 0;
    double sum = 0;
    for (int j = 0; j < found.length; j++) {
      Hypothesis other = evaluated.get(j).hypothesis();
      boolean equivalent = j == i || equivalents.areLike(evaluated.get(i).hypothesis(), other);
      if (equivalent && Double.isFinite(found[j])) {
        weights += other.priorWeight();
        sum += other.priorWeight() * Math.exp(evaluated.get(j).logEvidence() - found[j] - own);
      }
    }
    return own + (sum > 0 ? Math.log(OWN + (1 - OWN) * sum / weights) : 0);
  }

  private double found(EvaluatedHypothesis evaluated) {
    return data.sideCount() == 0 ? 0 : Profile.found(data, evaluated);
  }
}
