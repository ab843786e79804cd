package holdcurve.casebook;

import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.LeakFault;
import holdcurve.inference.prior.FaultPriors;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What confirmed cases say about how common faults are: a Gamma posterior for each, whose prior has
 * the shipped rate as its mean and counts for as many cases as {@code priors.json} states.
 *
 * <p>Cases teach how faults share what there is, not how many cars have one: the cars that are
 * brought in and repaired are no sample of all. So the exposure is that which would have shown as
 * many cases at shipped rates, apart for faults that a hold shows and for those that only a running
 * pump shows.
 *
 * @param rates in order of how common they are now
 * @param cases all that were counted
 */
public record LearnedRates(List<Rate> rates, int cases) {
  /** However often a fault was met with [-]. */
  private static final double MOST = 0.5;

  /**
   * One fault.
   *
   * @param fault its id
   * @param name in plain words
   * @param shipped rate [-]
   * @param learned rate [-]
   * @param cases it rests on
   */
  public record Rate(String fault, String name, double shipped, double learned, int cases) {}

  public LearnedRates {
    rates = List.copyOf(rates);
  }

  /**
   * @param counts fault id → confirmed cases; those of faults that aren't known don't count
   */
  public static LearnedRates of(
      FaultCatalogue catalogue, FaultPriors shipped, Map<String, Integer> counts) {
    return of(catalogue, shipped, counts, FaultPriors.weight());
  }

  /**
   * Likewise.
   *
   * @param weight cases of a fault that its shipped rate counts for
   */
  public static LearnedRates of(
      FaultCatalogue catalogue, FaultPriors shipped, Map<String, Integer> counts, double weight) {
    List<Rate> rates = new ArrayList<>();
    for (boolean held : List.of(true, false)) {
      List<LeakFault> some =
          catalogue.faults().stream().filter(fault -> fault.showsInHold() == held).toList();
      double odds = some.stream().mapToDouble(f -> shipped.odds(f.id(), f.prevalence(), 1)).sum();
      int met = some.stream().mapToInt(fault -> counts.getOrDefault(fault.id(), 0)).sum();
      for (LeakFault fault : some) {
        double rate = shipped.rate(fault.id(), fault.prevalence());
        int cases = counts.getOrDefault(fault.id(), 0);
        double learned = posteriorMean(rate, weight, cases, met / odds);
        rates.add(new Rate(fault.id(), fault.name(), rate, learned, cases));
      }
    }
    rates.sort((one, other) -> Double.compare(other.learned(), one.learned()));
    return new LearnedRates(rates, rates.stream().mapToInt(Rate::cases).sum());
  }

  /**
   * Mean of a Gamma distribution of shape {@code weight + cases}.
   *
   * @param exposure circuits that were looked at [-]
   */
  static double posteriorMean(double rate, double weight, int cases, double exposure) {
    return rate == 0 ? 0 : Math.min(MOST, (weight + cases) / (weight / rate + exposure));
  }

  /** Fault id → learned rate [-]. */
  public Map<String, Double> learned() {
    Map<String, Double> learned = new HashMap<>();
    rates.forEach(rate -> learned.put(rate.fault(), rate.learned()));
    return learned;
  }
}
