package holdcurve.calibration;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.apache.commons.math3.stat.descriptive.moment.StandardDeviation;

/** How often rankings are right, and whether as often as they say. */
final class Scores {
  private static final int BINS = 10;

  /** Claims below this are not made: nobody reads them [-]. */
  private static final double SPOKEN = 0.01;

  private final List<CaseOutcome> outcomes;

  Scores(List<CaseOutcome> outcomes) {
    this.outcomes = List.copyOf(outcomes);
  }

  double rightFirst() {
    return share(outcomes, CaseOutcome::rightFirst);
  }

  /** Of the sound circuits [-]. */
  double falseAccusations() {
    List<CaseOutcome> sound = outcomes.stream().filter(o -> o.truth().isSound()).toList();
    return share(sound, CaseOutcome::accused);
  }

  /** Of the leaks, those whose true size lies in the stated 90 % range [-]. */
  double coverage() {
    return share(sized(), o -> o.size().orElseThrow().contains(o.truth().size()));
  }

  private List<CaseOutcome> sized() {
    return outcomes.stream().filter(o -> o.size().isPresent()).toList();
  }

  /** Mean log probability of the truth [nat]. */
  double logScore() {
    return outcomes.stream()
        .mapToDouble(o -> Math.log(Math.max(o.probabilityOfTruth(), 1e-4)))
        .average()
        .orElse(Double.NaN);
  }

  /** Expected calibration error of what each ranking puts first, ten bins [-]. */
  double calibrationError() {
    return firstError(outcomes);
  }

  private static double firstError(List<CaseOutcome> some) {
    return error(some.stream().map(CaseOutcome::first).toList());
  }

  /** The same over every group of suspects that is given one per cent or more [-]. */
  double calibrationErrorOfAll() {
    return allError(outcomes);
  }

  private static double allError(List<CaseOutcome> some) {
    return error(some.stream().flatMap(o -> o.claims().stream()).toList());
  }

  private static double error(List<CaseOutcome.Claim> claims) {
    double[] said = new double[BINS];
    double[] came = new double[BINS];
    int count = 0;
    for (CaseOutcome.Claim claim : claims) {
      if (claim.probability() >= SPOKEN) {
        int bin = Math.min((int) (claim.probability() * BINS), BINS - 1);
        said[bin] += claim.probability();
        came[bin] += claim.right() ? 1 : 0;
        count++;
      }
    }
    double sum = 0;
    for (int bin = 0; bin < BINS; bin++) {
      sum += Math.abs(said[bin] - came[bin]);
    }
    return count == 0 ? 0 : sum / count;
  }

  /** Standard error of a score, from cases drawn again with replacement. */
  private double spread(ToDoubleFunction<List<CaseOutcome>> score) {
    Random random = new Random(1);
    double[] again = new double[200];
    for (int i = 0; i < again.length; i++) {
      List<CaseOutcome> some = new ArrayList<>();
      for (int k = 0; k < outcomes.size(); k++) {
        some.add(outcomes.get(random.nextInt(outcomes.size())));
      }
      again[i] = score.applyAsDouble(some);
    }
    return new StandardDeviation().evaluate(again);
  }

  /**
   * What the error of the first claims would be on average if every percentage were right: with few
   * cases it isn't nothing [-].
   */
  private double errorIfCalibrated() {
    Random random = new Random(2);
    double sum = 0;
    for (int i = 0; i < 200; i++) {
      sum +=
          error(
              outcomes.stream()
                  .map(CaseOutcome::first)
                  .map(
                      c ->
                          new CaseOutcome.Claim(
                              c.suspects(), c.probability(), random.nextDouble() < c.probability()))
                  .toList());
    }
    return sum / 200;
  }

  private static double share(
      List<CaseOutcome> of, java.util.function.Predicate<CaseOutcome> which) {
    return of.isEmpty() ? 0 : (double) of.stream().filter(which).count() / of.size();
  }

  /** First claims by bin: how many, what was said, what came true. */
  String table() {
    StringBuilder text = new StringBuilder("  said      cases  said  came true\n");
    for (int bin = 0; bin < BINS; bin++) {
      int b = bin;
      List<CaseOutcome.Claim> in =
          outcomes.stream()
              .map(CaseOutcome::first)
              .filter(c -> Math.min((int) (c.probability() * BINS), BINS - 1) == b)
              .toList();
      if (!in.isEmpty()) {
        text.append(
            String.format(
                Locale.ROOT,
                "  %2d-%3d %%  %4d  %5.1f  %5.1f\n",
                10 * bin,
                10 * bin + 10,
                in.size(),
                100 * in.stream().mapToDouble(CaseOutcome.Claim::probability).average().orElse(0),
                100.0 * in.stream().filter(CaseOutcome.Claim::right).count() / in.size()));
      }
    }
    return text.toString();
  }

  @Override
  public String toString() {
    long sound = outcomes.stream().filter(o -> o.truth().isSound()).count();
    return String.format(
        Locale.ROOT,
        "%d cases: right group first %.1f %%; calibration error of the first %.3f ± %.3f (%.3f by"
            + " chance alone), of all %.3f ± %.3f; true size in the 90 %% range %.1f %% of %d;"
            + " sound accused %.1f %% of %d; called unexplained %d; log score %.3f ± %.3f",
        outcomes.size(),
        100 * rightFirst(),
        calibrationError(),
        spread(Scores::firstError),
        errorIfCalibrated(),
        calibrationErrorOfAll(),
        spread(Scores::allError),
        100 * coverage(),
        sized().size(),
        100 * falseAccusations(),
        sound,
        outcomes.stream().filter(CaseOutcome::unexplained).count(),
        logScore(),
        spread(some -> new Scores(some).logScore()));
  }
}
