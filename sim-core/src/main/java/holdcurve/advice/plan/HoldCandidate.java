package holdcurve.advice.plan;

import holdcurve.common.message.Message;
import holdcurve.common.work.ComputationException;
import holdcurve.inference.noise.ReadingScatter;
import holdcurve.inference.posterior.PosteriorDraw;
import holdcurve.physics.hold.Hold;
import holdcurve.physics.hold.HoldSimulator;
import holdcurve.record.job.HoldTest;
import holdcurve.record.log.GaugeLog;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.IntStream;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;

/** Another hold: with clamps, longer, primed twice, or with the temperature logged. */
final class HoldCandidate implements CandidateTest {
  private static final double CLAMP_TIME = 8;
  private static final double PRIME = 20;

  /** Of a hold as it is usually done [s]. */
  private static final double USUAL_END = 600;

  /** What a clip-on thermometer is good for: assumed [K]. */
  private static final double THERMOMETER = 0.3;

  private final Procedure procedure;
  private final double primeTime;
  private final boolean temperature;
  private final double[] times;

  /**
   * @param hold how long [min]
   * @param primeTime how long pressure had stood before the hold [s]
   */
  HoldCandidate(
      String id,
      String name,
      List<String> clamped,
      double hold,
      double primeTime,
      boolean temperature) {
    this.primeTime = primeTime;
    this.temperature = temperature;
    this.times = times(hold);
    Set<String> set = new java.util.LinkedHashSet<>(clamped);
    boolean twice = primeTime > PRIME;
    this.procedure =
        new Procedure(
            id,
            name,
            HoldWords.minutes(hold, clamped.size())
                + (twice ? primeTime / 60 : 0)
                + (temperature ? HoldWords.PREPARE : 0),
            true,
            set,
            Message.plain(HoldWords.steps(set, hold, twice, temperature)),
            HoldWords.cautions(set));
  }

  static HoldCandidate plain(String id, String name, List<String> clamped, double hold) {
    return new HoldCandidate(id, name, clamped, hold, PRIME, false);
  }

  private static double[] times(double minutes) {
    double[] usual = {10, 30, 60, 120, 180, 240, 300, 360, 420, 480, 540, 600};
    return IntStream.concat(
            Arrays.stream(usual).mapToInt(t -> (int) t),
            IntStream.rangeClosed(11, (int) minutes).map(m -> 60 * m))
        .filter(t -> t <= 600 || t % 120 == 0 || t == (int) (60 * minutes))
        .mapToDouble(t -> t)
        .toArray();
  }

  @Override
  public Procedure procedure() {
    return procedure;
  }

  @Override
  public PlannedTest predicted(OpenHypotheses futures, Separation separation, long seed) {
    double[][][] expected = new double[futures.count()][][];
    IntStream.range(0, expected.length)
        .parallel()
        .forEach(h -> expected[h] = expected(futures.draws(h), seed * 1009 + h));
    ReadingOutcomes outcomes =
        new ReadingOutcomes(
            futures.prior(),
            expected,
            scatter(futures.scatter(), 1),
            scatter(futures.scatter(), futures.power()),
            seed);
    Information information = outcomes.information();
    List<Branch> branches =
        new ReadingBranches(futures, outcomes.readings(), times, procedure.clamped()).branches();
    String reason = separation.reason(procedure.clamped(), isPlain(), information, branches);
    return new PlannedTest(procedure, information, branches, reason);
  }

  /** Whether it is no more than a hold as it may have been done already. */
  private boolean isPlain() {
    return primeTime == PRIME && !temperature && times[times.length - 1] <= USUAL_END;
  }

  /** Draws that can't be simulated take the place of one that can. */
  private double[][] expected(List<PosteriorDraw> draws, long seed) {
    HoldSimulator simulator = new HoldSimulator();
    double[][] rows = new double[draws.size()][];
    double[] last = null;
    for (int i = 0; i < rows.length; i++) {
      rows[i] = expected(draws.get(i), new Well19937c(seed * 1013 + i), simulator);
      last = rows[i] == null ? last : rows[i];
    }
    for (int i = 0; i < rows.length; i++) {
      rows[i] = rows[i] == null ? last : rows[i];
    }
    return rows;
  }

  private double[] expected(PosteriorDraw draw, RandomGenerator random, HoldSimulator simulator) {
    HoldTest test =
        new HoldTest(
            procedure.id(),
            procedure.clamped(),
            CLAMP_TIME,
            primeTime,
            OptionalDouble.empty(),
            new GaugeLog("none", List.of(), 0),
            "",
            "");
    Hold hold = draw.hold(test, random);
    try {
      double[] shown = simulator.readings(hold.condition(), hold.setup(), times);
      double[] row = Arrays.copyOf(shown, times.length + (temperature ? 1 : 0));
      for (int k = 0; k < times.length; k++) {
        row[k] += draw.scatter().offset();
      }
      if (temperature) {
        row[times.length] =
            hold.setup()
                .operation()
                .temperatureCourse()
                .orElseThrow()
                .change(times[times.length - 1]);
      }
      return row;
    } catch (ComputationException e) {
      return null;
    }
  }

  /**
   * Covariance of what is read.
   *
   * @param power at which readings of the gauge count [-]
   */
  private double[][] scatter(ReadingScatter scatter, double power) {
    int n = times.length;
    double[][] readings = scatter.covariance(times);
    double[][] all = new double[n + (temperature ? 1 : 0)][n + (temperature ? 1 : 0)];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        all[i][j] = readings[i][j] / power;
      }
    }
    if (temperature) {
      all[n][n] = THERMOMETER * THERMOMETER;
    }
    return all;
  }
}
