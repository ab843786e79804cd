package holdcurve.inference.posterior;

import holdcurve.common.message.Message;
import holdcurve.fault.FaultParameter;
import holdcurve.inference.data.ReadingSeries;
import holdcurve.inference.likelihood.JobModel;
import holdcurve.inference.likelihood.Latents;
import holdcurve.inference.likelihood.Latents.Shared;
import holdcurve.inference.runup.RunUpLikelihood;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A hypothesis at its best point: what each part of the data and each unknown costs it. All costs
 * together, with {@link #room} and {@link #logPrior}, make its log posterior.
 */
public final class Profile {
  /** What an unknown costs, and the words for it. */
  public record Need(Message words, double log) {}

  /** When the temperature of the fuel is compared with that at the pump stop [s]. */
  private static final double LATER = 600;

  private final JobModel data;
  private final EvaluatedHypothesis evaluated;
  private final double[] u;
  private final double[] rows;
  private final double[][] residuals;

  private Profile(
      JobModel data,
      EvaluatedHypothesis evaluated,
      double[] u,
      double[] rows,
      double[][] residuals) {
    this.data = data;
    this.evaluated = evaluated;
    this.u = u;
    this.rows = rows;
    this.residuals = residuals;
  }

  /** Empty where the model fails. */
  public static Optional<Profile> of(JobModel data, EvaluatedHypothesis evaluated) {
    return evaluated
        .model()
        .residuals(evaluated.posterior().mode())
        .map(residuals -> of(data, evaluated, residuals));
  }

  private static Profile of(JobModel data, EvaluatedHypothesis evaluated, double[] all) {
    double[] u = evaluated.posterior().mode();
    double[] rows = data.whitened(all, evaluated.model().scales(u));
    double[][] residuals = new double[data.series().size()][];
    int place = 0;
    for (int test = 0; test < residuals.length; test++) {
      int end = place + data.series().get(test).time().length;
      residuals[test] = Arrays.copyOfRange(all, place, end);
      place = end;
    }
    return new Profile(data, evaluated, u, rows, residuals);
  }

  /**
   * Log likelihood of the findings at the hypothesis's best; minus infinity where it fails [nat].
   */
  public static double found(JobModel data, EvaluatedHypothesis evaluated) {
    return of(data, evaluated)
        .map(profile -> evaluated.model().found(profile.u, profile.rows))
        .orElse(Double.NEGATIVE_INFINITY);
  }

  public EvaluatedHypothesis evaluated() {
    return evaluated;
  }

  /** Log likelihood of some rows, but for what all hypotheses share [nat]. */
  public double log(int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum -= 0.5 * rows[i] * rows[i];
    }
    return sum;
  }

  /** Root mean square distance of some readings of a test from its curve [Pa]. */
  public double distance(int test, int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += residuals[test][i] * residuals[test][i];
    }
    return Math.sqrt(sum / Math.max(1, to - from));
  }

  /**
   * Log of how much of what it leaves open fits about as well, and of how sharply, beside the rows
   * of the data and the needs [nat].
   */
  public double room() {
    double density = log(0, rows.length);
    for (Need need : needs().values()) {
      density += need.log();
    }
    return evaluated.logEvidence() - density;
  }

  /** Log of how rough it takes readings and model to be [-]. */
  public double roughness() {
    return Math.log(evaluated.model().readingDeviation(u))
        + Math.log(evaluated.model().modelError(u));
  }

  public double logPrior() {
    return Math.log(evaluated.hypothesis().priorWeight());
  }

  /** What each unknown costs, by a key that stands for the same in every hypothesis. */
  public Map<String, Need> needs() {
    Map<String, Need> needs = new LinkedHashMap<>();
    for (Shared shared : Shared.values()) {
      if (shared == Shared.READING_SCALE || shared == Shared.MODEL_ERROR) {
        continue;
      }
      double gauge = data.job().gauge().classUncertainty();
      double z = u[shared.ordinal()];
      needs.put(
          shared.name(),
          shared == Shared.GAUGE_OFFSET
              ? need(PriorPenalty.gauge(z, gauge), z)
              : need(PriorPenalty.of(shared, z), z));
    }
    Latents latents = evaluated.model().latentMap().latents();
    List<FaultParameter> parameters = evaluated.hypothesis().parameters();
    for (int k = 0; k < parameters.size(); k++) {
      double z = latents.parameter(u, k);
      String large = z > 0 ? " large" : " small";
      needs.put(
          "parameter " + k + evaluated.hypothesis().id(),
          need("'" + parameters.get(k).name() + "' to be " + PriorPenalty.degree(z) + large, z));
    }
    for (int test = 0; test < data.series().size(); test++) {
      addTest(test, latents, parameters.size(), needs);
    }
    data.runUp().ifPresent(runUp -> addRunUp(runUp, needs));
    return needs;
  }

  private void addTest(int test, Latents latents, int parameters, Map<String, Need> needs) {
    String in = " in '" + data.job().tests().get(test).id() + "'";
    double start = latents.start(u, test);
    needs.put(
        "start" + test,
        need(
            "a start "
                + PriorPenalty.degree(start)
                + (start > 0 ? " far above" : " far below")
                + " the set pressure"
                + in,
            start));
    double change = evaluated.model().latentMap().course(u, test).change(LATER);
    String fuel = change > 0 ? "fuel that warms up" : "fuel that cools down";
    double cost = 0;
    for (double z : latents.course(u, test)) {
      cost -= 0.5 * z * z;
    }
    needs.put("temperature" + test, new Need(Message.plain(fuel + in), cost));
    if (!data.job().tests().get(test).clamped().isEmpty()) {
      double clamp = latents.clamp(u, test);
      needs.put(
          "clamp" + test,
          need("a clamp that lets " + PriorPenalty.much(clamp) + " past" + in, clamp));
      double squeeze = latents.squeeze(u, test);
      needs.put(
          "squeeze" + test,
          need("clamps that push " + PriorPenalty.much(squeeze) + " fuel aside" + in, squeeze));
    }
    for (int k = 0; k < parameters; k++) {
      double other = latents.variation(u, test, k);
      if (other != 0) {
        String large = other > 0 ? " large" : " small";
        needs.put(
            "variation " + k + evaluated.hypothesis().id() + test,
            need("a leak " + PriorPenalty.degree(other) + large + in, other));
      }
    }
  }

  private void addRunUp(RunUpLikelihood runUp, Map<String, Need> needs) {
    for (int k = 0; k < runUp.unknowns(); k++) {
      double z = evaluated.model().unknown(u, runUp, k);
      needs.put(
          "run-up " + k,
          need(runUp.unknown(k) + " " + PriorPenalty.degree(z) + PriorPenalty.high(z), z));
    }
  }

  private static Need need(String words, double z) {
    return need(Message.plain(words), z);
  }

  private static Need need(Message words, double z) {
    return new Need(words, -0.5 * z * z);
  }

  /** Rows where a test's readings begin, one more for the end. */
  public List<Integer> starts() {
    List<Integer> starts = new ArrayList<>();
    int row = 0;
    for (ReadingSeries series : data.series()) {
      starts.add(row);
      row += series.time().length;
    }
    starts.add(row);
    return starts;
  }
}
