package holdcurve.casebook;

import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.LeakFault;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.prior.FaultPriors;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Collectors;

/**
 * Garages whose rates are not the shipped ones, each with jobs out of a bank of rankings. A garage
 * ranks by what it has learned so far; one case in ten is noted as something else than it was,
 * drawn from the ranking; and how often a case is proved at all differs between garages and faults.
 */
final class SimulatedGarages {
  /** After so many confirmed cases it is seen what they taught. */
  static final List<Integer> SEEN_AFTER = List.of(20, 50, 100);

  /** Share of the confirmed cases that are noted as something else [-]. */
  private static final double MISTAKEN = 0.1;

  /** Least share of the cases of a fault that are proved [-]. */
  private static final double PROVED_LEAST = 0.5;

  /** A log score counts a chance as no less than this [-]. */
  private static final double LEAST = 1e-4;

  private static final double MOST_RATE = 0.4;

  private final FaultCatalogue catalogue = FaultCatalogue.load();
  private final FaultPriors shipped = FaultPriors.shipped();

  /** Truth → what each of its cases was ranked as by the shipped rates. */
  private final Map<String, List<Map<String, Double>>> bank = new TreeMap<>();

  /**
   * @param csv as {@link RankedBank} writes it
   */
  SimulatedGarages(String csv) throws IOException {
    Map<String, Map<String, Double>> cases = new HashMap<>();
    BufferedReader lines = new BufferedReader(new StringReader(csv));
    lines.readLine();
    for (String line = lines.readLine(); line != null; line = lines.readLine()) {
      String[] cells = line.split(",");
      if (!cells[1].contains("+")) {
        cases
            .computeIfAbsent(
                cells[0],
                id -> {
                  Map<String, Double> fresh = new TreeMap<>();
                  bank.computeIfAbsent(cells[1], truth -> new ArrayList<>()).add(fresh);
                  return fresh;
                })
            .put(cells[2], Double.parseDouble(cells[3]));
      }
    }
  }

  /**
   * Mean over garages of the gain in log score by learning [nat], after {@link #SEEN_AFTER}.
   *
   * @param spread of the garages' rates about the shipped ones, of the logarithm; 0 for garages
   *     that the shipped rates are right for
   * @param weight cases that a shipped rate counts for
   */
  double[] gains(long firstSeed, int garages, double spread, double weight) {
    double[] sum = new double[SEEN_AFTER.size()];
    for (int i = 0; i < garages; i++) {
      double[] one = gain(new Random(firstSeed + i), spread, weight);
      for (int k = 0; k < sum.length; k++) {
        sum[k] += one[k] / garages;
      }
    }
    return sum;
  }

  private double[] gain(Random random, double spread, double weight) {
    Map<String, Double> truths = new TreeMap<>();
    Map<String, Double> proved = new HashMap<>();
    for (String truth : bank.keySet()) {
      truths.put(
          truth,
          truth.equals(Suspect.NONE) ? shipped.soundWeight(false) : odds(random, truth, spread));
      proved.put(truth, PROVED_LEAST + (1 - PROVED_LEAST) * random.nextDouble());
    }
    double before = score(truths, Map.of());
    double[] gains = new double[SEEN_AFTER.size()];
    Map<String, Integer> counts = new HashMap<>();
    Map<String, Double> learned = Map.of();
    for (int cases = 0; cases < SEEN_AFTER.get(SEEN_AFTER.size() - 1); ) {
      String truth = drawn(random, truths);
      List<Map<String, Double>> some = bank.get(truth);
      Map<String, Double> ranked = weighted(some.get(random.nextInt(some.size())), learned);
      if (random.nextDouble() > proved.get(truth)) {
        continue;
      }
      String noted = random.nextDouble() < MISTAKEN ? drawn(random, singles(ranked)) : truth;
      if (noted.equals(Suspect.NONE)) {
        continue;
      }
      counts.merge(noted, 1, Integer::sum);
      cases++;
      learned = ratios(counts, weight);
      int seen = SEEN_AFTER.indexOf(cases);
      if (seen >= 0) {
        gains[seen] = score(truths, learned) - before;
      }
    }
    return gains;
  }

  private double odds(Random random, String fault, double spread) {
    double rate = shipped.rate(fault, 1) * Math.exp(spread * random.nextGaussian());
    double used = Math.min(MOST_RATE, rate);
    return used / (1 - used);
  }

  /** Fault id → by how much what was learned changes its odds. */
  private Map<String, Double> ratios(Map<String, Integer> counts, double weight) {
    FaultPriors learned =
        shipped.withRates(LearnedRates.of(catalogue, shipped, counts, weight).learned());
    return catalogue.faults().stream()
        .collect(
            Collectors.toMap(
                LeakFault::id, f -> learned.odds(f.id(), 1, 1) / shipped.odds(f.id(), 1, 1)));
  }

  private static Map<String, Double> weighted(
      Map<String, Double> chances, Map<String, Double> ratios) {
    Map<String, Double> weighted = new TreeMap<>();
    double sum = 0;
    for (Map.Entry<String, Double> one : chances.entrySet()) {
      double weight = one.getValue();
      for (String fault : one.getKey().split("\\+")) {
        weight *= ratios.getOrDefault(fault, 1.0);
      }
      weighted.put(one.getKey(), weight);
      sum += weight;
    }
    double all = sum;
    weighted.replaceAll((faults, weight) -> weight / all);
    return weighted;
  }

  private static Map<String, Double> singles(Map<String, Double> ranked) {
    Map<String, Double> singles = new TreeMap<>(ranked);
    singles.keySet().removeIf(faults -> faults.contains("+"));
    return singles;
  }

  private static String drawn(Random random, Map<String, Double> weights) {
    double left = random.nextDouble() * weights.values().stream().mapToDouble(w -> w).sum();
    String last = "";
    for (Map.Entry<String, Double> one : weights.entrySet()) {
      last = one.getKey();
      left -= one.getValue();
      if (left < 0) {
        break;
      }
    }
    return last;
  }

  /** Expected log chance of the truth over all cases that come to this garage [nat]. */
  private double score(Map<String, Double> truths, Map<String, Double> ratios) {
    double all = truths.values().stream().mapToDouble(w -> w).sum();
    double score = 0;
    for (Map.Entry<String, Double> truth : truths.entrySet()) {
      List<Map<String, Double>> some = bank.get(truth.getKey());
      for (Map<String, Double> one : some) {
        double chance = weighted(one, ratios).getOrDefault(truth.getKey(), 0.0);
        score += truth.getValue() / all / some.size() * Math.log(Math.max(LEAST, chance));
      }
    }
    return score;
  }

  /** Gains in a line. */
  static String words(double spread, double weight, double[] gains) {
    return String.format(
        Locale.ROOT,
        "rates off by a factor of e^%.1f, shipped ones count for %.0f cases: %+.4f, %+.4f, %+.4f"
            + " nat after 20, 50, 100",
        spread,
        weight,
        gains[0],
        gains[1],
        gains[2]);
  }

  /** Chooses the weight: a bank, first seed, number of garages, weights to try. */
  public static void main(String[] arguments) throws IOException {
    SimulatedGarages garages = new SimulatedGarages(Files.readString(Path.of(arguments[0])));
    for (int i = 3; i < arguments.length; i++) {
      double weight = Double.parseDouble(arguments[i]);
      for (double spread : new double[] {0, 0.3, 0.7, 1}) {
        double[] gains =
            garages.gains(
                Long.parseLong(arguments[1]), Integer.parseInt(arguments[2]), spread, weight);
        System.out.println(words(spread, weight, gains));
      }
    }
  }
}
