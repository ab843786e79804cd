package holdcurve.infer;

import java.util.ArrayList;
import java.util.List;

/**
 * Faults that drain the same fuel the same way differ, to a gauge, by nothing but the law of their
 * leak, and nobody knows the law of a leak in the field. So the readings may be explained by the
 * law of any of them: the evidence that readings give a fault is a mean over the laws of its
 * equivalents and, for a small part, its own. What was found beside the gauge stays its own.
 */
final class UnknownLaws {
  /** How far a fault is trusted to keep the law that its plugin gives it: assumed [-]. */
  private static final double OWN = 0.15;

  private final JobModel data;
  private final Twins twins;

  UnknownLaws(JobModel data, Alikeness alike) {
    this.data = data;
    this.twins = new Twins(alike);
  }

  /**
   * The same hypotheses in order, their evidences averaged over laws. One whose model fails where
   * it fits best can't be divided into readings and findings, and keeps its own.
   */
  List<Judged> averaged(List<Judged> judged) {
    double[] found = judged.stream().mapToDouble(this::found).toArray();
    List<Judged> averaged = new ArrayList<>();
    for (int i = 0; i < found.length; i++) {
      Judged one = judged.get(i);
      averaged.add(
          Double.isFinite(found[i])
              ? one.withLogEvidence(ofReadings(judged, found, i) + found[i])
              : one);
    }
    return averaged;
  }

  /** Log evidence of the readings alone, averaged over the laws of the equivalents [nat]. */
  private double ofReadings(List<Judged> judged, double[] found, int i) {
    double own = judged.get(i).logEvidence() - found[i];
    double weights = 0;
    double sum = 0;
    for (int j = 0; j < found.length; j++) {
      Hypothesis other = judged.get(j).hypothesis();
      boolean equivalent = j == i || twins.areLike(judged.get(i).hypothesis(), other);
      if (equivalent && Double.isFinite(found[j])) {
        weights += other.priorWeight();
        sum += other.priorWeight() * Math.exp(judged.get(j).logEvidence() - found[j] - own);
      }
    }
    return own + (sum > 0 ? Math.log(OWN + (1 - OWN) * sum / weights) : 0);
  }

  private double found(Judged judged) {
    return data.sideCount() == 0 ? 0 : Profile.found(data, judged);
  }
}
