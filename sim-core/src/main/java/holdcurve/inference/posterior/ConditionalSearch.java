package holdcurve.inference.posterior;

import holdcurve.inference.fit.Conditional;
import holdcurve.inference.fit.LinearGaussianProblem;
import holdcurve.inference.likelihood.HypothesisModel;
import holdcurve.inference.likelihood.Latents;

/**
 * Where the conditional coordinates lie once the sampled ones are fixed: Gauss–Newton steps with
 * sensitivities that are known beforehand, each step looked at with the true curves. What straight
 * curves promise counts only as far as a look has borne it out: sensitivities from elsewhere can
 * promise a fit that no curve has, by tens of nats.
 */
final class ConditionalSearch {
  /** A promise this small needn't be looked at [nat]. */
  private static final double SMALL = 0.25;

  /** What is believed of a promise that looks didn't bear out [nat]. */
  private static final double BELIEVED = 0.5;

  /** Looks at the curves; one is the rule, since the start is predicted well. */
  private static final int LOOKS = 6;

  private static final double SHORTER = 0.3;

  private final HypothesisModel model;
  private final LinearGaussianProblem sensitivities;
  private final int[] conditional;
  private double[] u;
  private Conditional rest;

  /**
   * @param sensitivities of the curves by the conditional coordinates
   * @param conditional places of those among all
   */
  ConditionalSearch(HypothesisModel model, LinearGaussianProblem sensitivities, int[] conditional) {
    this.model = model;
    this.sensitivities = sensitivities;
    this.conditional = conditional;
  }

  /**
   * @param start all coordinates, the conditional ones where they are predicted
   * @return null where the model fails
   */
  MarginalLikelihood.Point from(double[] start) {
    if (!isBetter(start)) {
      return null;
    }
    double part = 1;
    for (int look = 1; look < LOOKS && rest.rise() > SMALL; look++) {
      part = isBetter(ahead(part)) ? 1 : part * SHORTER;
    }
    Conditional believed = rest.believed(BELIEVED);
    return new MarginalLikelihood.Point(at(believed.mean()), believed);
  }

  private double[] ahead(double part) {
    double[] here = Latents.pick(u, conditional);
    for (int k = 0; k < here.length; k++) {
      here[k] += part * (rest.mean()[k] - here[k]);
    }
    return at(here);
  }

  private double[] at(double[] values) {
    double[] there = u.clone();
    Latents.put(there, conditional, values);
    return there;
  }

  /** Looks there, and stays if it is better. */
  private boolean isBetter(double[] there) {
    double[] seen = model.residuals(there);
    if (seen == null) {
      return false;
    }
    Conditional about = sensitivities.about(Latents.pick(there, conditional), seen);
    if (rest != null && about.logThere() <= rest.logThere()) {
      return false;
    }
    u = there;
    rest = about;
    return true;
  }
}
