package holdcurve.inference.fit;

import holdcurve.common.work.Progress;
import holdcurve.common.work.Workers;
import holdcurve.inference.likelihood.HypothesisModel;
import holdcurve.inference.likelihood.JobModel;
import holdcurve.inference.likelihood.Latents;
import java.util.ArrayList;
import java.util.List;

/**
 * Looks for the places where a hypothesis fits best. Levenberg–Marquardt on the coordinates of the
 * curve, as in Madsen, Nielsen and Tingleff, "Methods for non-linear least squares problems"
 * (Technical University of Denmark, 2004), with the scales set anew after each step to where they
 * are likeliest.
 */
public final class FitSearch {
  /** Steps; for the holds of one logger, searches that came to their end took 14 to 39. */
  private static final int ITERATIONS = 40;

  private static final int ATTEMPTS = 10;

  /** Predicted rise of the log posterior at which a search ends [nat]. */
  private static final double TOLERANCE = 0.02;

  /**
   * Predicted rise below which the scales are fitted: earlier, a model error large enough to
   * explain everything would end the search [nat].
   */
  private static final double NEAR = 2;

  /** A search that aims this near to a known fit ends, in squared standard deviations [-]. */
  private static final double SAME = 0.25;

  /** Roughest start [standard deviations], and steps up to it. */
  private static final double ROUGHEST = 8;

  private static final double ROUGHER = 0.5;

  private final JobModel data;
  private final HypothesisModel model;
  private final Latents latents;
  private final Progress progress;
  private final double least;
  private final List<Fit> known = new ArrayList<>();

  /**
   * @param least a search that sees that it will end with less evidence stops there [nat]
   */
  public FitSearch(JobModel data, HypothesisModel model, double least, Progress progress) {
    this.data = data;
    this.model = model;
    this.least = least;
    this.progress = progress;
    latents = model.latentMap().latents();
  }

  /**
   * @param before fits known before
   * @param starts places to start from, over all coordinates [-]
   * @return those found beside the known ones; none where the model fails from all starts
   */
  public List<Fit> from(List<Fit> before, List<double[]> starts) {
    known.addAll(before);
    for (double[] start : starts) {
      Fit fit = search(start.clone());
      if (fit != null) {
        known.add(fit);
      }
    }
    return List.copyOf(known.subList(before.size(), known.size()));
  }

  /** Null where the model fails, or where the fit is known. */
  private Fit search(double[] start) {
    State state = new State(rough(start));
    double damping = 0.3;
    for (int iteration = 0; state.isPossible() && iteration < ITERATIONS; iteration++) {
      Workers.stopIfCancelled(progress);
      if (state.predictedRise() < NEAR) {
        ScaleMode scales = state.fitScales();
        if (isKnown(moved(state.x, state.newton))) {
          return null;
        }
        if (state.predictedRise() < NEAR && state.fit(scales).logEvidence() < least) {
          break;
        }
      }
      if (state.predictedRise() < TOLERANCE) {
        break;
      }
      double[] next = null;
      for (int attempt = 0; attempt < ATTEMPTS && next == null; attempt++) {
        next = state.uphill(damping);
        damping = next == null ? Math.max(1, 4 * damping) : damping / 10;
      }
      if (next == null) {
        break;
      }
      state = new State(next);
    }
    return state.isPossible() ? state.fit(state.fitScales()) : null;
  }

  /**
   * The start with readings taken to be about as rough as its curves are far off: with the
   * precision of a logger, a search that begins far off is stuck in the first narrow valley.
   */
  private double[] rough(double[] start) {
    double[] residuals = model.residuals(start);
    if (residuals == null) {
      return start;
    }
    double sum = 0;
    for (int i = 0; i < data.residualCount(); i++) {
      sum += residuals[i] * residuals[i];
    }
    double off = Math.sqrt(sum / data.residualCount());
    double[] rough = start.clone();
    int scale = latents.scales()[0];
    while (rough[scale] < ROUGHEST && model.readingDeviation(rough) < off) {
      rough[scale] += ROUGHER;
    }
    return rough;
  }

  private boolean isKnown(double[] aim) {
    return known.stream()
        .anyMatch(fit -> fit.squaredDistance(latents.pickCurve(fit.u()), aim) < SAME);
  }

  private static double[] moved(double[] x, double[] step) {
    double[] moved = x.clone();
    for (int j = 0; j < x.length; j++) {
      moved[j] += step[j];
    }
    return moved;
  }

  /** Curves linear about one place, with the scales there. */
  private final class State {
    private final double[] u;
    private final double[] x;
    private final HypothesisModel.Linear linear;
    private NormalEquations sums;
    private NormalEquations.Projected projected;
    private LinearGaussianProblem scaled;
    private double[] newton;

    State(double[] place) {
      u = place;
      x = latents.pickCurve(u);
      linear = model.linear(u, latents.curve());
      if (linear != null) {
        sums = new NormalEquations(data, linear.sensitivities());
        projected = sums.projected(linear.residuals());
        scale();
      }
    }

    private void scale() {
      scaled = sums.scaled(model.scales(u));
      newton = scaled.step(x, projected, 0);
    }

    boolean isPossible() {
      return linear != null;
    }

    ScaleMode fitScales() {
      ScaleMode scales = ScaleMode.find(new ScaleMode.Around(model, sums, u, projected));
      Latents.put(u, latents.scales(), scales.place());
      scale();
      return scales;
    }

    double predictedRise() {
      return scaled.predictedRise(newton);
    }

    /** A better place, or null if the step with this damping leads to none. */
    double[] uphill(double damping) {
      double[] next = u.clone();
      double[] to = moved(x, scaled.step(x, projected, damping));
      Latents.put(next, latents.curve(), to);
      double[] there = model.residuals(next);
      boolean better =
          there != null
              && scaled.objective(to, sums.projected(there)) < scaled.objective(x, projected);
      return better ? next : null;
    }

    /** As seen from here: what is integrated out has its middle a step away. */
    Fit fit(ScaleMode scales) {
      double[] s = scales.place();
      double log = scaled.about(x, projected).believed(NEAR).logMarginal();
      double prior = -0.5 * (s[0] * s[0] + s[1] * s[1]);
      return new Fit(u, linear, scaled.precision(), scaled.factor(), scales, log + prior);
    }
  }
}
