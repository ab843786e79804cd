package holdcurve.bench.flowsheet;

import holdcurve.common.number.Interval;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * What unequal injectors do to the mixture. All open for the same time, and the engine as a whole
 * is set right, so a cylinder is as much richer than the average as its injector passes more than
 * the mean.
 *
 * @param richness injector → its flow over the mean of the set, less 1 [-]; below 0 is lean
 */
public record Mixture(Map<String, Double> richness) {
  /** From static flows: the long pulses of full load. Empty if they weren't measured. */
  public static Optional<Mixture> underLoad(BenchReport report) {
    return of(report, FlowReport::departure);
  }

  /** From the shortest pulse that all were measured at. Empty if there is none. */
  public static Optional<Mixture> atShortPulses(BenchReport report) {
    return of(report, FlowReport::pulseDeparture);
  }

  private static Optional<Mixture> of(
      BenchReport report, Function<FlowReport, Optional<Interval>> departure) {
    Map<String, Double> ratios = new LinkedHashMap<>();
    for (InjectorReport injector : report.injectors()) {
      departure.apply(injector.now()).ifPresent(d -> ratios.put(injector.id(), 1 + d.middle()));
    }
    if (ratios.size() < 2) {
      return Optional.empty();
    }
    double mean = ratios.values().stream().mapToDouble(r -> r).average().orElseThrow();
    ratios.replaceAll((id, ratio) -> ratio / mean - 1);
    return Optional.of(new Mixture(ratios));
  }

  /** Air number of a cylinder in an engine that runs at 1 on average [-]. */
  public double airNumber(String injector) {
    return 1 / (1 + richness.get(injector));
  }

  /** The leanest and the richest. */
  String words() {
    Comparator<Map.Entry<String, Double>> byRichness = Map.Entry.comparingByValue();
    var leanest = richness.entrySet().stream().min(byRichness).orElseThrow();
    var richest = richness.entrySet().stream().max(byRichness).orElseThrow();
    return "the cylinder of "
        + leanest.getKey()
        + " is "
        + SheetNumbers.percent(leanest.getValue())
        + " lean, that of "
        + richest.getKey()
        + " "
        + SheetNumbers.percent(richest.getValue())
        + " rich";
  }
}
