package holdcurve.inference.explain;

import holdcurve.inference.data.ReadingSeries;
import holdcurve.inference.likelihood.JobModel;
import holdcurve.inference.posterior.EvaluatedHypothesis;
import holdcurve.inference.prior.UnknownPriors;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Whether the likeliest hypothesis explains the readings at all, and where it doesn't. */
public final class PredictiveCheck {
  /** By how much a curve may be off that is right but for what no unknown covers [Pa]. */
  private static final double CURVE = 2e3;

  /**
   * Root mean square of the residuals, and change between neighbours, that nothing explains, in
   * units of the usual residual. Chosen so that fewer than 2 % of generated holds, sound and
   * leaking, are beyond [-].
   */
  private static final double SCATTER = 2.5;

  private static final double STEP = 4.5;

  /** Residuals on either side of a step. */
  private static final int HALF = 3;

  /** Mean squared residual of a run-up, in deviations, beyond which nothing explains it [-]. */
  private static final double RUN_UP_LIMIT = 9;

  private final Optional<String> where;

  public PredictiveCheck(JobModel data, EvaluatedHypothesis best) {
    where = find(data, best);
  }

  /** Which part of which log is off, for a sentence; empty if all is explained. */
  public Optional<String> where() {
    return where;
  }

  private static Optional<String> find(JobModel data, EvaluatedHypothesis best) {
    double[] u = best.posterior().mode();
    return runUp(data, best, u).or(() -> hold(data, best, u));
  }

  /** What is off before the pump stops also spoils the hold, so it comes first. */
  private static Optional<String> runUp(JobModel data, EvaluatedHypothesis best, double[] u) {
    return data.runUp()
        .filter(
            run ->
                best.model()
                    .residuals(u)
                    .filter(rows -> meanSquare(rows, run.rows()) > RUN_UP_LIMIT)
                    .isPresent())
        .map(run -> "what was read before the pump stopped");
  }

  private static Optional<String> hold(JobModel data, EvaluatedHypothesis best, double[] u) {
    double usual = Math.hypot(UnknownPriors.usual().readingDeviation(data.job().gauge(), 1), CURVE);
    for (int test = 0; test < data.series().size(); test++) {
      ReadingSeries series = data.series().get(test);
      Optional<double[]> curve = best.model().curve(u, test, series.time());
      if (curve.isEmpty()) {
        continue;
      }
      List<double[]> residuals = residuals(series, curve.get(), best.model().gaugeOffset(u));
      String log = "the log '" + data.job().tests().get(test).id() + "'";
      if (rootMeanSquare(residuals) > SCATTER * usual) {
        return Optional.of(log);
      }
      double[] step = step(residuals);
      if (step[1] > STEP * usual) {
        return Optional.of(String.format(Locale.ROOT, "%s from %.0f s on", log, step[0]));
      }
    }
    return Optional.empty();
  }

  /** Time and residual of each reading that is trusted [s, Pa]. */
  private static List<double[]> residuals(ReadingSeries series, double[] curve, double offset) {
    List<double[]> residuals = new ArrayList<>();
    for (int i = 0; i < curve.length; i++) {
      if (series.weight()[i] >= 1) {
        residuals.add(new double[] {series.time()[i], series.pressure()[i] - curve[i] - offset});
      }
    }
    return residuals;
  }

  private static double rootMeanSquare(List<double[]> residuals) {
    double sum = 0;
    for (double[] residual : residuals) {
      sum += residual[1] * residual[1];
    }
    return Math.sqrt(sum / Math.max(1, residuals.size()));
  }

  /**
   * The largest change between the medians of three residuals and of the next three, and when. A
   * slip moves no median; a step or a kink does.
   */
  private static double[] step(List<double[]> residuals) {
    double[] largest = {0, 0};
    for (int i = HALF; i + HALF <= residuals.size(); i++) {
      double change =
          Math.abs(median(residuals.subList(i, i + HALF)) - median(residuals.subList(i - HALF, i)));
      if (change > largest[1]) {
        largest = new double[] {residuals.get(i)[0], change};
      }
    }
    return largest;
  }

  private static double median(List<double[]> residuals) {
    double[] values = residuals.stream().mapToDouble(r -> r[1]).sorted().toArray();
    return values[values.length / 2];
  }

  /** Of the last rows, which are those of the run-up: about one where all is explained. */
  private static double meanSquare(double[] rows, int last) {
    double sum = 0;
    for (int i = rows.length - last; i < rows.length; i++) {
      sum += rows[i] * rows[i];
    }
    return sum / last;
  }
}
