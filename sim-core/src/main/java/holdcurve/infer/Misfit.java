package holdcurve.infer;

import java.util.Locale;
import java.util.Optional;

/** Whether the likeliest hypothesis explains the readings at all, and where it doesn't. */
final class Misfit {
  /** A departure that neither rounding nor a gauge a little off in its gain explains [Pa]. */
  private static final double LEAST = 2e4;

  /** Departure in units of the reading's own error beyond which the model is off [-]. */
  private static final double LIMIT = 5;

  /**
   * Beyond this no reading error is believed, however large one was inferred: an eye that is off by
   * a fifth of a bar reads nothing [Pa].
   */
  private static final double MOST = 4e4;

  /** Share of readings that may be off without a run of them, as slips [-]. */
  private static final double SLIPS = 0.3;

  /** Readings in a row that must depart alike: one alone is a slip. */
  private static final int RUN = 3;

  /** Mean squared departure of a run-up, in deviations, beyond which nothing explains it [-]. */
  private static final double RUN_UP_LIMIT = 9;

  private final Optional<String> where;

  Misfit(JobModel data, Judged best) {
    where = find(data, best);
  }

  /** Which part of which log is off, for a sentence; empty if all is explained. */
  Optional<String> where() {
    return where;
  }

  private static Optional<String> find(JobModel data, Judged best) {
    double[] mean = new double[best.likelihood().dimension()];
    for (int i = 0; i < mean.length; i++) {
      int place = i;
      mean[i] = best.evidence().draws().mean(u -> u[place]);
    }
    MarginalLikelihood.Point point = best.likelihood().at(mean);
    if (point == null) {
      return Optional.empty();
    }
    return runUp(data, best, point).or(() -> hold(data, best, point));
  }

  /** What is off before the pump stops also spoils the hold, so it comes first. */
  private static Optional<String> runUp(
      JobModel data, Judged best, MarginalLikelihood.Point point) {
    return data.runUp()
        .filter(run -> meanSquare(best.model().departures(point.u()), run.rows()) > RUN_UP_LIMIT)
        .map(run -> "what was read before the pump stopped");
  }

  private static Optional<String> hold(JobModel data, Judged best, MarginalLikelihood.Point point) {
    double limit =
        Math.max(LEAST, Math.min(MOST, LIMIT * best.model().readingDeviation(point.u())));
    for (int test = 0; test < data.series().size(); test++) {
      ReadingSeries series = data.series().get(test);
      double[] curve = best.model().curve(point.u(), test, series.time());
      if (Boolean.getBoolean("mis")) {
        double e = UnknownPriors.usual().readingDeviation(data.job().gauge(), 1);
        double sum = 0;
        int n = 0;
        double jump = 0;
        double lastr = Double.NaN;
        double lastt = 0;
        double acf = 0;
        for (int i = 0; i < curve.length; i++) {
          if (series.weight()[i] < 1) continue;
          double r = (series.pressure()[i] - curve[i] - best.model().gaugeOffset(point.u()));
          sum += r * r;
          n++;
          if (!Double.isNaN(lastr)) {
            jump = Math.max(jump, Math.abs(r - lastr));
            acf += r * lastr;
          }
          lastr = r;
        }
        System.err.printf(
            "MIS %s n %d e %.0f rms %.0f rms/e %.2f jump %.0f jump/e %.2f acf %.2f%n",
            data.job().title(),
            n,
            e,
            Math.sqrt(sum / n),
            Math.sqrt(sum / n) / e,
            jump,
            jump / e,
            acf / sum);
      }
      int start = runOff(series, curve, best.model().gaugeOffset(point.u()), limit);
      if (start >= 0) {
        return Optional.of(
            String.format(
                Locale.ROOT,
                "the log '%s' from %.0f s on",
                data.job().tests().get(test).id(),
                series.time()[start]));
      }
    }
    return Optional.empty();
  }

  /**
   * Of the last rows, which are those of the run-up: about one where all is explained; nothing
   * where the model fails.
   */
  private static double meanSquare(double[] rows, int last) {
    if (rows == null) {
      return 0;
    }
    double sum = 0;
    for (int i = rows.length - last; i < rows.length; i++) {
      sum += rows[i] * rows[i];
    }
    return sum / last;
  }

  private static int runOff(ReadingSeries series, double[] curve, double offset, double limit) {
    int run = 0;
    int all = 0;
    int first = -1;
    double sign = 0;
    for (int i = 0; i < curve.length; i++) {
      double away = series.pressure()[i] - curve[i] - offset;
      boolean off = Math.abs(away) > limit && series.weight()[i] >= 1;
      run = off && Math.signum(away) == sign ? run + 1 : off ? 1 : 0;
      sign = off ? Math.signum(away) : 0;
      if (run == RUN) {
        return i - RUN + 1;
      }
      first = off && all++ == 0 ? i : first;
    }
    return all >= RUN && all > SLIPS * curve.length ? first : -1;
  }
}
