package holdcurve.infer;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A hypothesis where it fits the readings.
 *
 * @param fits distinct ones, that with most evidence first; at least one
 */
record Fitted(Hypothesis hypothesis, HypothesisModel model, List<Fit> fits) {
  Fitted {
    fits = fits.stream().sorted(Comparator.comparingDouble(Fit::logEvidence).reversed()).toList();
  }

  Fit best() {
    return fits.get(0);
  }

  /** Log of prior weight times approximate evidence [nat]. */
  double logPosterior() {
    return best().logEvidence() + Math.log(hypothesis.priorWeight());
  }

  Fitted with(List<Fit> more) {
    List<Fit> all = new ArrayList<>(fits);
    all.addAll(more);
    return new Fitted(hypothesis, model, all);
  }
}
