package holdcurve.inference.fit;

import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.likelihood.HypothesisModel;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * A hypothesis where it fits the readings.
 *
 * @param fits distinct ones, that with most evidence first; at least one
 */
public record Fitted(Hypothesis hypothesis, HypothesisModel model, List<Fit> fits) {
  public Fitted {
    fits = fits.stream().sorted(Comparator.comparingDouble(Fit::logEvidence).reversed()).toList();
  }

  public Fit best() {
    return fits.get(0);
  }

  /** Log of prior weight times approximate evidence [nat]. */
  public double logPosterior() {
    return best().logEvidence() + Math.log(hypothesis.priorWeight());
  }

  public Fitted with(List<Fit> more) {
    List<Fit> all = new ArrayList<>(fits);
    all.addAll(more);
    return new Fitted(hypothesis, model, all);
  }
}
