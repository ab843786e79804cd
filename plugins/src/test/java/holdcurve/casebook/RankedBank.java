package holdcurve.casebook;

import holdcurve.calibration.GeneratedCase;
import holdcurve.calibration.blind.BlindCases;
import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.JobReader;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.prior.FaultPriors;
import holdcurve.inference.ranking.RankingService;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Makes {@code ranked-bank.csv}: rankings, by the shipped rates, of jobs from the simulator whose
 * physics are not the fitted model's. Other rates only weight them anew, so that thousands of
 * garages need no further ranking.
 *
 * <p>Run it with: first seed, number of cases, file to write.
 */
final class RankedBank {
  /** Chances below this are left out [-]. */
  private static final double LEAST = 1e-7;

  private RankedBank() {}

  public static void main(String[] arguments) throws IOException {
    long first = Long.parseLong(arguments[0]);
    int count = Integer.parseInt(arguments[1]);
    Path folder = Files.createTempDirectory("bank");
    FaultCatalogue catalogue = FaultCatalogue.load();
    String lines =
        IntStream.range(0, count)
            .parallel()
            .mapToObj(i -> lines(first + i, folder, catalogue))
            .collect(Collectors.joining());
    Files.writeString(Path.of(arguments[2]), "case,truth,faults,probability\n" + lines);
  }

  /** One test, two or four, as garages do. */
  private static String lines(long seed, Path folder, FaultCatalogue catalogue) {
    int tests = seed % 3 == 0 ? 1 : seed % 3 == 1 ? 2 : 4;
    GeneratedCase made = new BlindCases(folder).make(seed, tests);
    Ranking ranking =
        new RankingService(catalogue, FaultPriors.shipped(), 1)
            .verdictOnly()
            .rank(JobReader.read(made.file()), 1, Progress.NONE);
    Map<String, Double> chances = new TreeMap<>();
    for (Suspect suspect : ranking.suspects()) {
      chances.merge(faults(suspect.id()), suspect.probability(), Double::sum);
    }
    String truth =
        made.faults().isEmpty()
            ? Suspect.NONE
            : made.faults().stream().sorted().collect(Collectors.joining("+"));
    return chances.entrySet().stream()
        .filter(entry -> entry.getValue() > LEAST || entry.getKey().equals(truth))
        .map(
            entry ->
                String.format(
                    Locale.ROOT, "%d,%s,%s,%.4g\n", seed, truth, entry.getKey(), entry.getValue()))
        .collect(Collectors.joining());
  }

  /** The faults of a suspect, wherever they are. */
  private static String faults(String suspect) {
    return Arrays.stream(suspect.split("\\+"))
        .map(member -> member.replaceFirst("@.*", ""))
        .sorted()
        .collect(Collectors.joining("+"));
  }
}
