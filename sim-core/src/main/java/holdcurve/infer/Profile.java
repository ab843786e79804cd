package holdcurve.infer;

import holdcurve.buildup.RunUpEvidence;
import holdcurve.fault.FaultParameter;
import holdcurve.infer.Latents.Shared;
import holdcurve.saying.Saying;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A hypothesis at its best point: what each part of the data and each unknown costs it. All costs
 * together, with {@link #room} and {@link #logPrior}, make its log posterior.
 */
final class Profile {
  /** What an unknown costs, and the words for it. */
  record Need(Saying words, double log) {}

  /** When the temperature of the fuel is compared with that at the pump stop [s]. */
  private static final double LATER = 600;

  private final JobModel data;
  private final Judged judged;
  private final double[] u;
  private final double[] rows;
  private final double[][] departures;

  private Profile(JobModel data, Judged judged, double[] u, double[] rows, double[][] departures) {
    this.data = data;
    this.judged = judged;
    this.u = u;
    this.rows = rows;
    this.departures = departures;
  }

  /** Null where the model fails. */
  static Profile of(JobModel data, Judged judged) {
    MarginalLikelihood.Point point = judged.likelihood().at(judged.likelihood().modes().get(0).u());
    if (point == null) {
      return null;
    }
    double[] u = point.u();
    double[] all = judged.model().departures(u);
    if (all == null) {
      return null;
    }
    double[] rows = data.whitened(all, judged.model().scales(u));
    double[][] departures = new double[data.series().size()][];
    int place = 0;
    for (int test = 0; test < departures.length; test++) {
      int end = place + data.series().get(test).time().length;
      departures[test] = Arrays.copyOfRange(all, place, end);
      place = end;
    }
    return new Profile(data, judged, u, rows, departures);
  }

  /**
   * Log likelihood of the findings at the hypothesis's best; minus infinity where it fails [nat].
   */
  static double found(JobModel data, Judged judged) {
    Profile profile = of(data, judged);
    return profile == null
        ? Double.NEGATIVE_INFINITY
        : judged.model().found(profile.u, profile.rows);
  }

  Judged judged() {
    return judged;
  }

  /** Log likelihood of some rows, but for what all hypotheses share [nat]. */
  double log(int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum -= 0.5 * rows[i] * rows[i];
    }
    return sum;
  }

  /** Root mean square distance of some readings of a test from its curve [Pa]. */
  double distance(int test, int from, int to) {
    double sum = 0;
    for (int i = from; i < to; i++) {
      sum += departures[test][i] * departures[test][i];
    }
    return Math.sqrt(sum / Math.max(1, to - from));
  }

  /**
   * Log of how much of what it leaves open fits about as well, and of how sharply, beside the rows
   * of the data and the needs [nat].
   */
  double room() {
    double density = log(0, rows.length);
    for (Need need : needs().values()) {
      density += need.log();
    }
    return judged.evidence().logEvidence() - density;
  }

  /** Log of how rough it takes readings and model to be [-]. */
  double roughness() {
    return Math.log(judged.model().readingDeviation(u)) + Math.log(judged.model().modelError(u));
  }

  double logPrior() {
    return Math.log(judged.hypothesis().priorWeight());
  }

  /** What each unknown costs, by a key that stands for the same in every hypothesis. */
  Map<String, Need> needs() {
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
              ? need(Strain.gauge(z, gauge), z)
              : need(Strain.of(shared, z), z));
    }
    Latents latents = judged.model().realisation().latents();
    List<FaultParameter> parameters = judged.hypothesis().parameters();
    for (int k = 0; k < parameters.size(); k++) {
      double z = latents.parameter(u, k);
      String large = z > 0 ? " large" : " small";
      needs.put(
          "parameter " + k + judged.hypothesis().id(),
          need("'" + parameters.get(k).name() + "' to be " + Strain.degree(z) + large, z));
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
                + Strain.degree(start)
                + (start > 0 ? " far above" : " far below")
                + " the set pressure"
                + in,
            start));
    double change = judged.model().realisation().course(u, test).change(LATER);
    String fuel = change > 0 ? "fuel that warms up" : "fuel that cools down";
    double cost = 0;
    for (double z : latents.course(u, test)) {
      cost -= 0.5 * z * z;
    }
    needs.put("temperature" + test, new Need(Saying.plain(fuel + in), cost));
    if (!data.job().tests().get(test).clamped().isEmpty()) {
      double clamp = latents.clamp(u, test);
      needs.put(
          "clamp" + test, need("a clamp that lets " + Strain.much(clamp) + " past" + in, clamp));
      double squeeze = latents.squeeze(u, test);
      needs.put(
          "squeeze" + test,
          need("clamps that push " + Strain.much(squeeze) + " fuel aside" + in, squeeze));
    }
    for (int k = 0; k < parameters; k++) {
      double other = latents.variation(u, test, k);
      if (other != 0) {
        String large = other > 0 ? " large" : " small";
        needs.put(
            "variation " + k + judged.hypothesis().id() + test,
            need("a leak " + Strain.degree(other) + large + in, other));
      }
    }
  }

  private void addRunUp(RunUpEvidence runUp, Map<String, Need> needs) {
    for (int k = 0; k < runUp.unknowns(); k++) {
      double z = judged.model().unknown(u, runUp, k);
      needs.put("run-up " + k, need(runUp.unknown(k) + " " + Strain.degree(z) + Strain.high(z), z));
    }
  }

  private static Need need(String words, double z) {
    return need(Saying.plain(words), z);
  }

  private static Need need(Saying words, double z) {
    return new Need(words, -0.5 * z * z);
  }

  /** Rows where a test's readings begin, one more for the end. */
  List<Integer> starts() {
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
