package holdcurve.casebook;

import holdcurve.calibration.GeneratedCase;
import holdcurve.calibration.blind.BlindCases;
import holdcurve.common.number.Interval;
import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.JobReader;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.prior.FaultPriors;
import holdcurve.inference.ranking.RankingService;
import holdcurve.record.job.Job;
import java.io.IOException;
import java.nio.file.Files;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What an earlier job of the same car is worth: cars from the simulator whose physics are not the
 * fitted model's, held once when sound and once with their fault.
 *
 * <p>Run it with: first seed, number of cars, tests of the earlier job, tests of the later one.
 */
final class EarlierJobStudy {
  /** A log score counts a chance as no less than this [-]. */
  private static final double LEAST = 1e-4;

  private EarlierJobStudy() {}

  /**
   * One ranking.
   *
   * @param size log of the ratio of the ends of the true leak's range; not-a-number without one
   * @param holds whether that range holds the true size
   */
  private record Outcome(double logScore, double size, boolean holds) {}

  public static void main(String[] arguments) throws IOException {
    long first = Long.parseLong(arguments[0]);
    int before = Integer.parseInt(arguments[2]);
    int after = Integer.parseInt(arguments[3]);
    BlindCases cases = new BlindCases(Files.createTempDirectory("cars"));
    List<Outcome[]> both =
        IntStream.range(0, Integer.parseInt(arguments[1]))
            .parallel()
            .mapToObj(i -> both(cases, first + i, before, after))
            .toList();
    print("alone", both.stream().map(pair -> pair[0]).toList());
    print("after its earlier job", both.stream().map(pair -> pair[1]).toList());
    double[] gains = both.stream().mapToDouble(p -> p[1].logScore() - p[0].logScore()).toArray();
    double mean = Arrays.stream(gains).average().orElse(0);
    double square = Arrays.stream(gains).map(g -> (g - mean) * (g - mean)).average().orElse(0);
    System.out.printf(
        Locale.ROOT,
        "gain %+.4f, standard error %.4f nat%n",
        mean,
        Math.sqrt(square / gains.length));
  }

  private static Outcome[] both(BlindCases cases, long seed, int before, int after) {
    Job earlier = JobReader.read(cases.makeEarlier(seed, before).file());
    GeneratedCase made = cases.make(seed, after);
    Job later = JobReader.read(made.file());
    RankingService usual =
        new RankingService(FaultCatalogue.load(), FaultPriors.shipped(), 1).verdictOnly();
    RankingService taught = SameCar.ranking(usual, List.of(earlier), later, Progress.NONE);
    return new Outcome[] {
      outcome(made, usual.rank(later, 1, Progress.NONE)),
      outcome(made, taught.rank(later, 1, Progress.NONE))
    };
  }

  private static Outcome outcome(GeneratedCase truth, Ranking ranking) {
    List<String> faults = truth.faults().stream().sorted().toList();
    double chance =
        ranking.suspects().stream()
            .filter(suspect -> faults(suspect).equals(faults))
            .mapToDouble(Suspect::probability)
            .sum();
    Optional<Interval> size =
        ranking.suspects().stream()
            .filter(suspect -> faults.size() == 1 && faults(suspect).equals(faults))
            .findFirst()
            .flatMap(Suspect::leak);
    return new Outcome(
        Math.log(Math.max(LEAST, chance)),
        size.map(range -> Math.log(range.high() / range.low())).orElse(Double.NaN),
        size.map(range -> range.contains(truth.size())).orElse(false));
  }

  private static List<String> faults(Suspect suspect) {
    return suspect.isNone()
        ? List.of()
        : Arrays.stream(suspect.id().split("\\+"))
            .map(member -> member.replaceFirst("@.*", ""))
            .sorted()
            .toList();
  }

  private static void print(String what, List<Outcome> outcomes) {
    List<Outcome> sized = outcomes.stream().filter(o -> !Double.isNaN(o.size())).toList();
    System.out.printf(
        Locale.ROOT,
        "%s: log score %.3f of %d; range of the size a factor of %.2f, holds the true one in %.1f %%"
            + " of %d%n",
        what,
        outcomes.stream().mapToDouble(Outcome::logScore).average().orElse(0),
        outcomes.size(),
        Math.exp(sized.stream().mapToDouble(Outcome::size).average().orElse(0)),
        100.0 * sized.stream().filter(Outcome::holds).count() / Math.max(1, sized.size()),
        sized.size());
  }
}
