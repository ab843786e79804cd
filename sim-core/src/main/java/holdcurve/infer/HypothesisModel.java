package holdcurve.infer;

import holdcurve.check.Cancellation;
import holdcurve.circuit.Circuit;
import holdcurve.hold.HoldSimulator;
import holdcurve.hold.HoldSlopes;
import holdcurve.infer.Latents.Shared;
import holdcurve.side.SideEvidence;
import holdcurve.side.Truth;
import java.util.Arrays;
import java.util.List;

/**
 * The likelihood of one hypothesis about a job: from latent coordinates to a circuit in some
 * condition, to curves, to departures of all readings from them. One a thread.
 */
final class HypothesisModel {
  /**
   * Step of what is differenced without a simulation, and so without its noise [-]. A step of 1e-4
   * moves the set pressure by a hundredth of the width in which a regulator shuts, and the slope by
   * half a percent.
   */
  private static final double SLOPE_STEP = 1e-6;

  /**
   * Where the amplitude of the model error levels off: a model that is off by more explains any
   * curve as well as a leak does [standard deviations].
   */
  private static final double MOST_MODEL_ERROR = 2;

  private final JobModel data;
  private final UnknownPriors priors;
  private final Realisation realisation;
  private final Latents latents;
  private final HoldSimulator simulator;
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
    this.members =
        hypothesis.members().stream().map(m -> new Truth.Member(m.fault(), m.site())).toList();
    this.sides = new SideRows(this, data.sides(), data.series().size());
  }

  Realisation realisation() {
    return realisation;
  }

  /** An unknown that only some side evidence has [-]. */
  double unknown(double[] u, SideEvidence of, int k) {
    return u[latents.firstOfSides() + data.firstUnknown(of) + k];
  }

  List<Truth.Member> members() {
    return members;
  }

  /** Number of latent coordinates. */
  int dimension() {
    return latents.dimension();
  }

  /** One row a reading, then those of what else was found out. */
  int rows() {
    return data.residualCount() + data.sideCount();
  }

  /**
   * Departures at {@code u}: reading minus curve and gauge error [Pa], then the residuals of side
   * evidence [-].
   *
   * @return null where the model fails
   */
  double[] departures(double[] u) {
    double[][] curves = new double[data.series().size()][];
    try {
      Circuit sound = realisation.sound(u);
      for (int test = 0; test < curves.length; test++) {
        curves[test] = readings(sound, u, test, data.series().get(test).time());
      }
    } catch (RuntimeException e) {
      Cancellation.passOn(e);
      return null;
    }
    return departures(u, curves);
  }

  private double[] readings(Circuit sound, double[] u, int test, double[] times) {
    return simulator.readings(
        realisation.condition(sound, u, test), realisation.setup(u, test), times);
  }

  /** The residuals of side evidence alone; not-a-number where they can't be had [-]. */
  double[] sideRows(double[] u) {
    double[] rows = new double[data.sideCount()];
    sides.fill(u, rows, 0);
    return rows;
  }

  private double[] departures(double[] u, double[][] curves) {
    double[] departures = new double[rows()];
    double offset = gaugeOffset(u);
    int place = 0;
    for (int test = 0; test < curves.length; test++) {
      double[] read = data.series().get(test).pressure();
      for (int i = 0; i < read.length; i++) {
        departures[place++] = read[i] - curves[test][i] - offset;
      }
    }
    sides.fill(u, departures, place);
    for (double departure : departures) {
      if (!Double.isFinite(departure)) {
        return null;
      }
    }
    return departures;
  }

  /**
   * Departures at a place and how they change about it.
   *
   * @param departures as for {@link #departures(double[])}
   * @param slopes their derivatives, one row each, one column a coordinate
   */
  record Linear(double[] departures, double[][] slopes) {}

  /**
   * Departures at {@code u} and their derivatives.
   *
   * @param by coordinates other than the scales
   * @return null where the model fails
   */
  Linear linear(double[] u, int[] by) {
    double[][] curves = new double[data.series().size()][];
    double[][] slopes = new double[rows()][by.length];
    CurveSlopes curveSlopes = new CurveSlopes(realisation, simulator, u, by, SLOPE_STEP);
    int place = 0;
    try {
      for (int test = 0; test < curves.length; test++) {
        HoldSlopes hold = curveSlopes.of(test, data.series().get(test).time());
        curves[test] = hold.shown();
        fillRows(hold, curveSlopes, test, by.length, slopes, place);
        place += curves[test].length;
      }
    } catch (RuntimeException e) {
      Cancellation.passOn(e);
      return null;
    }
    double[] departures = departures(u, curves);
    if (departures == null) {
      return null;
    }
    for (int k = 0; k < by.length; k++) {
      sides.fillColumn(u, departures, by[k], slopes, k, place);
    }
    return new Linear(departures, slopes);
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

  /**
   * What the gauge would show without offset, rounding or model error [Pa]; not-a-number throughout
   * where the model fails.
   */
  double[] curve(double[] u, int test, double[] times) {
    try {
      return readings(realisation.sound(u), u, test, times);
    } catch (RuntimeException e) {
      Cancellation.passOn(e);
      double[] failed = new double[times.length];
      Arrays.fill(failed, Double.NaN);
      return failed;
    }
  }

  /**
   * Log likelihood of what was found beside the gauge, with the prior of the unknowns that it has
   * of its own [nat].
   *
   * @param rows departures there, or those whitened: side evidence is the same in both
   */
  double found(double[] u, double[] rows) {
    double sum = latents.logPriorOfSides(u);
    for (int i = data.residualCount(); i < rows.length; i++) {
      sum -= 0.5 * rows[i] * rows[i];
    }
    return sum;
  }

  /** How far readings stand from the curve. */
  Scales scales(double[] u) {
    return new Scales(readingDeviation(u), modelError(u));
  }

  /** Error common to all readings of the gauge [Pa]. */
  double gaugeOffset(double[] u) {
    return latents.shared(u, Shared.GAUGE_OFFSET) * data.job().gauge().classUncertainty();
  }

  /** Standard deviation of one reading about the true needle [Pa]. */
  double readingDeviation(double[] u) {
    double scale = latents.shared(u, Shared.READING_SCALE);
    return priors.readingDeviation(
        data.job().gauge(), Realisation.factor(priors.eyeFactor(), scale));
  }

  /** Amplitude of the model's own error [Pa]. */
  double modelError(double[] u) {
    double z = latents.shared(u, Shared.MODEL_ERROR);
    double levelling = MOST_MODEL_ERROR - Math.log1p(Math.exp(2 * (MOST_MODEL_ERROR - z))) / 2;
    return priors.modelError() * Realisation.factor(priors.modelErrorFactor(), levelling);
  }
}
