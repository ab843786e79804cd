package holdcurve.inference.prior;

import com.fasterxml.jackson.databind.JsonNode;
import holdcurve.common.input.Require;
import java.util.HashMap;
import java.util.Map;

/**
 * How likely things are before any reading, from the data file {@code priors.json} beside this
 * class. Each fault is there or not, whatever the others: of rates p, a sound circuit has the
 * probability Π (1 − p), and two faults have the product of their odds.
 *
 * @param rates fault id → share of circuits that have it [-]; a fault that isn't listed says itself
 *     how common it is beside others
 * @param usualRate rate of a fault that calls itself as common as others [-]
 * @param soundTested how often a sound circuit is put on a gauge, for each time that one with a
 *     fault is [-]
 * @param soundTestedAfterRepair the same where something was just repaired [-]
 * @param most faults that one circuit may have, 1 or 2
 */
public record FaultPriors(
    Map<String, Double> rates,
    double usualRate,
    double soundTested,
    double soundTestedAfterRepair,
    int most) {
  /**
   * How many times likelier than usual a part's faults are once it is known to be new: assumed [-].
   */
  public static final double NEW_PART = 0.1;

  /** However often a job says a fault is met with [-]. */
  private static final double MOST = 0.9;

  public FaultPriors {
    rates = Map.copyOf(rates);
    rates.forEach((id, rate) -> Require.within(rate, 0, MOST, "rate of " + id, "-"));
    Require.positive(soundTested, "how often a sound circuit is tested", "-");
    Require.positive(soundTestedAfterRepair, "how often a repaired circuit is tested", "-");
  }

  /** The shipped data file. */
  public static FaultPriors shipped() {
    JsonNode root = PriorFile.section("faults").node();
    Map<String, Double> rates = new HashMap<>();
    root.get("rates")
        .properties()
        .forEach(e -> rates.put(e.getKey(), e.getValue().get("rate").asDouble()));
    return new FaultPriors(
        rates,
        root.at("/usual_rate/rate").asDouble(),
        root.at("/sound_tested/ratio").asDouble(),
        root.at("/sound_tested_after_repair/ratio").asDouble(),
        2);
  }

  /** The same but for rates that were learned; what isn't listed stays as it is. */
  public FaultPriors withRates(Map<String, Double> learned) {
    Map<String, Double> all = new HashMap<>(rates);
    all.putAll(learned);
    return new FaultPriors(all, usualRate, soundTested, soundTestedAfterRepair, most);
  }

  /** How many confirmed cases of a fault its shipped rate counts for [-]. */
  public static double weight() {
    return PriorFile.section("faults").value("shipped_weight");
  }

  /** One circuit has one fault at most. */
  public FaultPriors ofSingleFaults() {
    return new FaultPriors(rates, usualRate, soundTested, soundTestedAfterRepair, 1);
  }

  /**
   * Odds that a circuit has a fault [-].
   *
   * @param prevalence how common the fault calls itself beside others [-]
   * @param changed how many times likelier it is in this job than usual [-]
   */
  public double odds(String id, double prevalence, double changed) {
    double rate = Math.min(MOST, changed * rate(id, prevalence));
    return rate / (1 - rate);
  }

  /**
   * Share of circuits that have a fault [-].
   *
   * @param prevalence how common the fault calls itself beside others [-]
   */
  public double rate(String id, double prevalence) {
    return rates.getOrDefault(id, usualRate * prevalence);
  }

  /** Weight of a sound circuit where one with a fault has the odds of its fault [-]. */
  public double soundWeight(boolean afterRepair) {
    return afterRepair ? soundTestedAfterRepair : soundTested;
  }
}
