package holdcurve.inference.fit;

import holdcurve.common.work.Progress;
import holdcurve.common.work.Workers;
import holdcurve.inference.likelihood.HypothesisModel;
import holdcurve.inference.likelihood.JobModel;
import holdcurve.inference.likelihood.Latents;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

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

  /**
   * When sensitivities are simulated anew rather than updated.
   *
   * @param attempts failed ones with updated sensitivities, before they are
   * @param leastGain share of the predicted rise of a step below which they are [-]
   */
  private record Renewal(int attempts, double leastGain) {
    static final Renewal HOLDS = new Renewal(3, 0.1);

    /** What is read while the pump runs bends more, and a search led astray ends elsewhere. */
    static final Renewal RUN_UP = new Renewal(2, 0.25);
  }

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
  private final Renewal renewal;
  private final List<Fit> known = new ArrayList<>();

  /**
   * @param least a search that sees that it will end with less evidence stops there [nat]
   */
  public FitSearch(JobModel data, HypothesisModel model, double least, Progress progress) {
    this.data = data;
    this.model = model;
    this.least = least;
    this.progress = progress;
    renewal = data.runUp().isPresent() ? Renewal.RUN_UP : Renewal.HOLDS;
    latents = model.latentMap().latents();
  }

  /**
   * @param before fits known before
   * @param starts places to start from
   * @return those found beside the known ones; none where the model fails from all starts
   */
  public List<Fit> from(List<Fit> before, List<Start> starts) {
    known.addAll(before);
    for (Start start : starts) {
      Fit fit = search(start);
      if (fit != null) {
        known.add(fit);
      }
    }
    return List.copyOf(known.subList(before.size(), known.size()));
  }

  /** Null where the model fails, or where the fit is known. */
  private Fit search(Start start) {
    State state = first(start);
    double damping = 0.3;
    for (int iteration = 0; state != null && iteration < ITERATIONS; iteration++) {
      Workers.stopIfCancelled(progress);
      if (state.predictedRise() < NEAR) {
        state.fitScales();
        if (isKnown(moved(state.x, state.newton))) {
          return null;
        }
        boolean hopeless = state.predictedRise() < NEAR && state.fit().logEvidence() < least;
        if (hopeless || state.predictedRise() < TOLERANCE && state.isExact) {
          break;
        }
        if (state.predictedRise() < TOLERANCE) {
          state = linear(state.u);
          continue;
        }
      }
      State next = null;
      int attempts = state.isExact ? ATTEMPTS : renewal.attempts();
      for (int attempt = 0; attempt < attempts && next == null; attempt++) {
        next = state.uphill(damping);
        damping = next == null ? Math.max(1, 4 * damping) : damping / 10;
      }
      if (next == null && state.isExact) {
        break;
      }
      state = next == null ? linear(state.u) : next;
    }
    if (state != null) {
      state.fitScales();
    }
    return state == null ? null : state.fit();
  }

  /** Null where the model fails. */
  private State linear(double[] u) {
    return model
        .linear(u, latents.curve())
        .map(linear -> new State(u, linear.residuals(), linear.sensitivities(), true))
        .orElse(null);
  }

  /**
   * At a start, with readings taken to be about as rough as its curves are far off: with the
   * precision of a logger, a search that begins far off is stuck in the first narrow valley. Null
   * where the model fails.
   */
  private State first(Start start) {
    int[] curve = latents.curve();
    double[][] known = new double[curve.length][];
    for (int k = 0; k < curve.length; k++) {
      known[k] = start.sensitivities()[curve[k]];
    }
    boolean isExact = Arrays.stream(known).allMatch(Objects::isNull);
    return model
        .linear(start.u(), curve, known)
        .map(
            linear ->
                new State(
                    rough(start.u(), linear.residuals()),
                    linear.residuals(),
                    linear.sensitivities(),
                    isExact))
        .orElse(null);
  }

  private double[] rough(double[] start, double[] residuals) {
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

  /**
   * Curves linear about one place, with the scales there.
   *
   * <p>Sensitivities are simulated at the start and at the end of a search. After a step between
   * they are updated by Broyden's rule (Broyden, Mathematics of Computation 19 (1965) 577), so that
   * along the step they agree with the residuals seen: a simulation with all sensitivities costs
   * ten without.
   */
  private final class State {
    private final double[] u;
    private final double[] x;
    private final double[] residuals;
    private final double[][] sensitivities;
    private final boolean isExact;
    private final NormalEquations sums;
    private final NormalEquations.Projected projected;
    private ScaleMode scales;
    private LinearGaussianProblem scaled;
    private double[] newton;

    State(double[] place, double[] residuals, double[][] sensitivities, boolean isExact) {
      u = place;
      x = latents.pickCurve(u);
      this.residuals = residuals;
      this.sensitivities = sensitivities;
      this.isExact = isExact;
      sums = new NormalEquations(data, sensitivities);
      projected = sums.projected(residuals);
      scale();
    }

    private void scale() {
      scaled = sums.scaled(model.scales(u));
      newton = scaled.step(x, projected, 0);
    }

    void fitScales() {
      scales = ScaleMode.find(new ScaleMode.Around(model, sums, u, projected));
      Latents.put(u, latents.scales(), scales.place());
      scale();
    }

    double predictedRise() {
      return scaled.predictedRise(newton);
    }

    /** A better place, or null if the step with this damping leads to none. */
    State uphill(double damping) {
      double[] next = u.clone();
      double[] step = scaled.step(x, projected, damping);
      double[] to = moved(x, step);
      Latents.put(next, latents.curve(), to);
      Optional<double[]> found = model.residuals(next);
      if (found.isEmpty()) {
        return null;
      }
      double[] there = found.get();
      double rise = scaled.objective(x, projected) - scaled.objective(to, sums.projected(there));
      if (!(rise > 0)) {
        return null;
      }
      boolean asPredicted = rise > renewal.leastGain() * scaled.rise(x, projected, step);
      return asPredicted ? new State(next, there, updated(step, there), false) : linear(next);
    }

    /** J + (Δr − J Δx) Δxᵀ / ΔxᵀΔx. */
    private double[][] updated(double[] step, double[] there) {
      double square = 0;
      for (double z : step) {
        square += z * z;
      }
      double[][] updated = new double[sensitivities.length][];
      for (int i = 0; i < updated.length; i++) {
        double[] row = sensitivities[i].clone();
        double missed = there[i] - residuals[i];
        for (int j = 0; j < row.length; j++) {
          missed -= row[j] * step[j];
        }
        double factor = missed / square;
        for (int j = 0; j < row.length; j++) {
          row[j] += factor * step[j];
        }
        updated[i] = row;
      }
      return updated;
    }

    /** As seen from here: what is integrated out has its middle a step away. */
    Fit fit() {
      double[] s = scales.place();
      double log = scaled.about(x, projected).believed(NEAR).logMarginal();
      double prior = -0.5 * (s[0] * s[0] + s[1] * s[1]);
      return new Fit(u, scaled.precision(), scaled.factor(), scales, sensitivities, log + prior);
    }
  }
}
