package holdcurve.infer;

import holdcurve.evidence.ResidualLikelihood;
import holdcurve.hold.HoldSimulator;
import holdcurve.hold.HoldSlopes;
import holdcurve.infer.Latents.Shared;
import holdcurve.side.Truth;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The likelihood of one hypothesis about a job: from latent coordinates to a circuit in some
 * condition, to curves, to whitened residuals of all tests. One a thread.
 */
final class HypothesisModel implements ResidualLikelihood {
  /** Keeps the square root of the log determinant away from zero [nat]. */
  private static final double DETERMINANT_MARGIN = 20;

  /**
   * Step of what is differenced without a simulation, and so without its noise [-]. A step of 1e-4
   * moves the set pressure by a hundredth of the width in which a regulator shuts, and the slope by
   * half a percent.
   */
  private static final double SLOPE_STEP = 1e-6;

  private final JobModel data;
  private final UnknownPriors priors;
  private final Realisation realisation;
  private final Latents latents;
  private final HoldSimulator simulator;
  private final double lowestLogDeterminant;
  private final List<Truth.Member> members;
  private final SideRows sides;

  HypothesisModel(JobModel data, Hypothesis hypothesis, UnknownPriors priors) {
    this(data, hypothesis, priors, new HoldSimulator());
  }

  HypothesisModel(
      JobModel data, Hypothesis hypothesis, UnknownPriors priors, HoldSimulator simulator) {
    this.simulator = simulator;
    this.data = data;
    this.priors = priors;
    this.realisation = new Realisation(data, hypothesis, priors);
    this.latents = realisation.latents();
    this.lowestLogDeterminant = lowestLogDeterminant();
    this.members =
        hypothesis.members().stream().map(m -> new Truth.Member(m.fault(), m.site())).toList();
    this.sides = new SideRows(this, data.sides(), data.series().size());
  }

  Realisation realisation() {
    return realisation;
  }

  List<Truth.Member> members() {
    return members;
  }

  @Override
  public int dimension() {
    return latents.dimension();
  }

  /**
   * One a reading, those of what else was found out, and one for the log determinant of the reading
   * error, which the inferred scales change.
   */
  @Override
  public int residualCount() {
    return data.residualCount() + data.sideCount() + 1;
  }

  @Override
  public double differenceStep() {
    return 0.02;
  }

  @Override
  public double residuals(double[] u, double[] out) {
    return whiten(u, curves(u), out);
  }

  @Override
  public boolean jacobian(double[] u, double[][] out) {
    for (double[] row : out) {
      Arrays.fill(row, 0);
    }
    return slopes(u, IntStream.range(0, u.length).toArray(), out);
  }

  /**
   * Whitened residuals of all readings, and of what else was found out.
   *
   * @param residuals reading minus curve, whitened; then side evidence [-]
   * @param logDeterminant of the covariance they were whitened by [nat]
   */
  record Whitened(double[] residuals, double logDeterminant) {}

  /** Residuals at {@code u}; null where the model fails. */
  Whitened whitened(double[] u) {
    double[] at = new double[residualCount()];
    residuals(u, at);
    return split(at);
  }

  private Whitened split(double[] at) {
    if (Arrays.stream(at).anyMatch(r -> !Double.isFinite(r))) {
      return null;
    }
    double root = at[at.length - 1];
    return new Whitened(Arrays.copyOf(at, at.length - 1), root * root + lowestLogDeterminant);
  }

  /**
   * Residuals at a place and how they change about it.
   *
   * @param at residuals, whitened
   * @param slopes derivatives of the residuals before whitening, one row a residual, one column a
   *     coordinate [Pa], of side evidence [-]
   */
  record Linear(Whitened at, double[][] slopes) {}

  /**
   * Residuals at {@code u} and their derivatives by coordinates that change the curve.
   *
   * @return null where the model fails
   */
  Linear linear(double[] u, int[] by) {
    double[] at = new double[residualCount()];
    double[][] slopes = new double[at.length - 1][by.length];
    Whitened residuals = curvesWithSlopes(u, by, at, slopes) == null ? null : split(at);
    return residuals == null ? null : new Linear(residuals, slopes);
  }

  /** Whitens slopes of {@link #linear}, in place, with the scales at {@code u}. */
  void whitenSlopes(double[] u, double[][] slopes) {
    double deviation = readingDeviation(u);
    double amplitude = modelError(u);
    int place = 0;
    for (int test = 0; test < data.series().size(); test++) {
      data.errors().get(test).whitenRows(slopes, deviation, amplitude, place);
      place += data.series().get(test).time().length;
    }
  }

  /**
   * Fills the Jacobian; returns false where the model fails. Coordinates that change the curve have
   * their slopes from the simulator; those that change how residuals are whitened are differenced,
   * which costs no simulation.
   */
  private boolean slopes(double[] u, int[] by, double[][] out) {
    double[] at = new double[residualCount()];
    double[][] curves = curvesWithSlopes(u, by, at, out);
    if (curves == null) {
      return false;
    }
    whitenSlopes(u, out);
    double[] v = u.clone();
    double[] moved = new double[at.length];
    for (int k = 0; k < by.length; k++) {
      int j = by[k];
      if (latents.changesScale(j)) {
        v[j] = u[j] + SLOPE_STEP;
        whiten(v, curves, moved);
        for (int i = 0; i < at.length; i++) {
          out[i][k] = (moved[i] - at[i]) / SLOPE_STEP;
        }
        v[j] = u[j];
      }
    }
    return true;
  }

  /**
   * Fills whitened residuals and unwhitened slopes by coordinates that change the curve; returns
   * the curves, or null where the model fails.
   */
  private double[][] curvesWithSlopes(double[] u, int[] by, double[] at, double[][] out) {
    double[][] curves = new double[data.series().size()][];
    CurveSlopes slopes = new CurveSlopes(realisation, simulator, u, by, SLOPE_STEP);
    int place = 0;
    try {
      for (int test = 0; test < curves.length; test++) {
        HoldSlopes hold = slopes.of(test, data.series().get(test).time());
        curves[test] = hold.shown();
        fillRows(hold, slopes, test, by.length, out, place);
        place += curves[test].length;
      }
    } catch (RuntimeException e) {
      return null;
    }
    whiten(u, curves, at);
    for (int k = 0; k < by.length; k++) {
      if (!latents.changesScale(by[k])) {
        sides.fillColumn(u, at, by[k], out, k, place);
      }
    }
    return curves;
  }

  private void fillRows(
      HoldSlopes hold, CurveSlopes slopes, int test, int columns, double[][] out, int place) {
    for (int k = 0; k < columns; k++) {
      double offset = slopes.isOffset(k) ? data.job().gauge().classUncertainty() : 0;
      int column = slopes.column(k, test);
      for (int i = 0; i < hold.shown().length; i++) {
        out[place + i][k] = -offset - (column < 0 ? 0 : hold.slopes()[i][column]);
      }
    }
  }

  private double[][] curves(double[] u) {
    double[][] curves = new double[data.series().size()][];
    for (int test = 0; test < curves.length; test++) {
      curves[test] = curve(u, test, data.series().get(test).time());
    }
    return curves;
  }

  /**
   * What the gauge would show without offset, rounding or model error [Pa]; not-a-number throughout
   * where the model fails.
   */
  double[] curve(double[] u, int test, double[] times) {
    try {
      return simulator.readings(realisation.condition(u, test), realisation.setup(u, test), times);
    } catch (RuntimeException e) {
      double[] failed = new double[times.length];
      Arrays.fill(failed, Double.NaN);
      return failed;
    }
  }

  /** Error common to all readings of the gauge [Pa]. */
  double gaugeOffset(double[] u) {
    return latents.shared(u, Shared.GAUGE_OFFSET) * data.job().gauge().classUncertainty();
  }

  /** Standard deviation of one reading about the true needle [Pa]. */
  double readingDeviation(double[] u) {
    double rounding = data.job().gauge().roundingUncertainty();
    double eye =
        Math.max(priors.eyeShare() * data.job().gauge().resolution(), priors.leastEye())
            * Realisation.factor(priors.eyeFactor(), latents.shared(u, Shared.READING_SCALE));
    return Math.hypot(rounding, eye);
  }

  /** Amplitude of the model's own error [Pa]. */
  double modelError(double[] u) {
    return priors.modelError()
        * Realisation.factor(priors.modelErrorFactor(), latents.shared(u, Shared.MODEL_ERROR));
  }

  private double whiten(double[] u, double[][] curves, double[] out) {
    double offset = gaugeOffset(u);
    double deviation = readingDeviation(u);
    double amplitude = modelError(u);
    double logDeterminant = 0;
    int place = 0;
    for (int test = 0; test < curves.length; test++) {
      double[] residuals = data.series().get(test).pressure().clone();
      for (int i = 0; i < residuals.length; i++) {
        residuals[i] -= curves[test][i] + offset;
      }
      logDeterminant += data.errors().get(test).whiten(residuals, deviation, amplitude, out, place);
      place += residuals.length;
    }
    sides.fill(u, out, place);
    double excess = logDeterminant - lowestLogDeterminant;
    out[place + data.sideCount()] = Math.sqrt(excess);
    return sum(out);
  }

  private double sum(double[] whitened) {
    double sum = lowestLogDeterminant + (whitened.length - 1) * Math.log(2 * Math.PI);
    for (double r : whitened) {
      sum += r * r;
    }
    return -sum / 2;
  }

  private double lowestLogDeterminant() {
    double least = data.job().gauge().roundingUncertainty() * 0.5;
    double[] nothing = new double[data.residualCount()];
    double sum = 0;
    for (int test = 0; test < data.series().size(); test++) {
      int n = data.series().get(test).time().length;
      sum += data.errors().get(test).whiten(new double[n], Math.max(least, 1), 0, nothing, 0);
    }
    return sum - DETERMINANT_MARGIN;
  }
}
