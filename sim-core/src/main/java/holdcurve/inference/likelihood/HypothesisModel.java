package holdcurve.inference.likelihood;

import holdcurve.common.work.ComputationException;
import holdcurve.inference.finding.CircuitState;
import holdcurve.inference.finding.FindingLikelihood;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.likelihood.Latents.Shared;
import holdcurve.inference.noise.Scales;
import holdcurve.inference.prior.UnknownPriors;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.hold.HoldSensitivities;
import holdcurve.physics.hold.HoldSimulator;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The likelihood of one hypothesis about a job: from latent coordinates to a circuit in some
 * condition, to curves, to residuals of all readings from them. One a thread.
 */
public final class HypothesisModel {
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
  private final LatentMap latentMap;
  private final Latents latents;
  private final HoldSimulator simulator;
  private final List<CircuitState.Member> members;
  private final FindingResiduals sides;

  public HypothesisModel(JobModel data, Hypothesis hypothesis, UnknownPriors priors) {
    this(data, hypothesis, priors, new HoldSimulator());
  }

  public HypothesisModel(
      JobModel data, Hypothesis hypothesis, UnknownPriors priors, HoldSimulator simulator) {
    this.simulator = simulator;
    this.data = data;
    this.priors = priors;
    this.latentMap = new LatentMap(data, hypothesis, priors);
    this.latents = latentMap.latents();
    this.members =
        hypothesis.members().stream()
            .map(m -> new CircuitState.Member(m.fault(), m.site()))
            .toList();
    this.sides = new FindingResiduals(this, data.sides(), data.series().size());
  }

  public LatentMap latentMap() {
    return latentMap;
  }

  /** An unknown that only some side evidence has [-]. */
  public double unknown(double[] u, FindingLikelihood of, int k) {
    return u[latents.firstOfSides() + data.firstUnknown(of) + k];
  }

  public List<CircuitState.Member> members() {
    return members;
  }

  /** Number of latent coordinates. */
  public int dimension() {
    return latents.dimension();
  }

  /** One row a reading, then those of what else was found out. */
  int rows() {
    return data.residualCount() + data.sideCount();
  }

  /**
   * Residuals at {@code u}: reading minus curve and gauge error [Pa], then the residuals of side
   * evidence [-].
   *
   * @return empty where the model fails
   */
  public Optional<double[]> residuals(double[] u) {
    double[][] curves = new double[data.series().size()][];
    try {
      Circuit sound = latentMap.sound(u);
      for (int test = 0; test < curves.length; test++) {
        curves[test] = readings(sound, u, test, data.series().get(test).time());
      }
    } catch (ComputationException e) {
      return Optional.empty();
    }
    return residuals(u, curves);
  }

  private double[] readings(Circuit sound, double[] u, int test, double[] times) {
    return simulator.readings(latentMap.condition(sound, u, test), latentMap.setup(u, test), times);
  }

  /** The residuals of side evidence alone; not-a-number where they can't be had [-]. */
  public double[] sideRows(double[] u) {
    double[] rows = new double[data.sideCount()];
    sides.fill(u, rows, 0);
    return rows;
  }

  private Optional<double[]> residuals(double[] u, double[][] curves) {
    double[] residuals = new double[rows()];
    double offset = gaugeOffset(u);
    int place = 0;
    for (int test = 0; test < curves.length; test++) {
      double[] read = data.series().get(test).pressure();
      for (int i = 0; i < read.length; i++) {
        residuals[place++] = read[i] - curves[test][i] - offset;
      }
    }
    sides.fill(u, residuals, place);
    for (double residual : residuals) {
      if (!Double.isFinite(residual)) {
        return Optional.empty();
      }
    }
    return Optional.of(residuals);
  }

  /**
   * Residuals at a place and how they change about it.
   *
   * @param residuals as for {@link #residuals(double[])}
   * @param sensitivities their derivatives, one row each, one column a coordinate
   */
  public record Linear(double[] residuals, double[][] sensitivities) {}

  /**
   * Residuals at {@code u} and their derivatives.
   *
   * @param by coordinates other than the scales
   * @return empty where the model fails
   */
  public Optional<Linear> linear(double[] u, int[] by) {
    return linear(u, by, new double[by.length][]);
  }

  /**
   * Likewise, with derivatives of readings taken over where they are known.
   *
   * @param known for each coordinate its derivatives, one a reading; null to simulate them
   */
  public Optional<Linear> linear(double[] u, int[] by, double[][] known) {
    int[] places = IntStream.range(0, by.length).filter(k -> known[k] == null).toArray();
    double[][] curves = new double[data.series().size()][];
    double[][] sensitivities = new double[rows()][by.length];
    CurveSensitivities curveSensitivities =
        new CurveSensitivities(
            latentMap, simulator, u, Arrays.stream(places).map(k -> by[k]).toArray(), SLOPE_STEP);
    int place = 0;
    try {
      for (int test = 0; test < curves.length; test++) {
        HoldSensitivities hold = curveSensitivities.of(test, data.series().get(test).time());
        curves[test] = hold.shown();
        fillRows(hold, curveSensitivities, test, places, sensitivities, place);
        place += curves[test].length;
      }
    } catch (ComputationException e) {
      return Optional.empty();
    }
    for (int k = 0; k < by.length; k++) {
      for (int i = 0; known[k] != null && i < place; i++) {
        sensitivities[i][k] = known[k][i];
      }
    }
    Optional<double[]> residuals = residuals(u, curves);
    if (residuals.isPresent()) {
      for (int k = 0; k < by.length; k++) {
        sides.fillColumn(u, residuals.get(), by[k], sensitivities, k, place);
      }
    }
    return residuals.map(values -> new Linear(values, sensitivities));
  }

  private void fillRows(
      HoldSensitivities hold,
      CurveSensitivities sensitivities,
      int test,
      int[] places,
      double[][] out,
      int place) {
    for (int k = 0; k < places.length; k++) {
      double offset = sensitivities.isOffset(k) ? data.job().gauge().classUncertainty() : 0;
      int column = sensitivities.column(k, test);
      for (int i = 0; i < hold.shown().length; i++) {
        out[place + i][places[k]] = -offset - (column < 0 ? 0 : hold.sensitivities()[i][column]);
      }
    }
  }

  /**
   * What the gauge would show without offset, rounding or model error [Pa]; empty where the model
   * fails.
   */
  public Optional<double[]> curve(double[] u, int test, double[] times) {
    try {
      return Optional.of(readings(latentMap.sound(u), u, test, times));
    } catch (ComputationException e) {
      return Optional.empty();
    }
  }

  /**
   * Log likelihood of what was found beside the gauge, with the prior of the unknowns that it has
   * of its own [nat].
   *
   * @param rows residuals there, or those whitened: side evidence is the same in both
   */
  public double found(double[] u, double[] rows) {
    double sum = latents.logPriorOfSides(u);
    for (int i = data.residualCount(); i < rows.length; i++) {
      sum -= 0.5 * rows[i] * rows[i];
    }
    return sum;
  }

  /** How far readings stand from the curve. */
  public Scales scales(double[] u) {
    return new Scales(readingDeviation(u), modelError(u));
  }

  /** Error common to all readings of the gauge [Pa]. */
  public double gaugeOffset(double[] u) {
    return latents.shared(u, Shared.GAUGE_OFFSET) * data.job().gauge().classUncertainty();
  }

  /** Standard deviation of one reading about the true needle [Pa]. */
  public double readingDeviation(double[] u) {
    double scale = latents.shared(u, Shared.READING_SCALE);
    return priors.readingDeviation(data.job().gauge(), LatentMap.factor(priors.eyeFactor(), scale));
  }

  /** Amplitude of the model's own error [Pa]. */
  public double modelError(double[] u) {
    double z = latents.shared(u, Shared.MODEL_ERROR);
    double levelling = MOST_MODEL_ERROR - Math.log1p(Math.exp(2 * (MOST_MODEL_ERROR - z))) / 2;
    return priors.modelError() * LatentMap.factor(priors.modelErrorFactor(), levelling);
  }
}
