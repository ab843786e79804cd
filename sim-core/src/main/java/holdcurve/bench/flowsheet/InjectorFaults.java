package holdcurve.bench.flowsheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What is wrong with an injector beside its flow. */
record InjectorFaults(BenchLimits limits) {
  List<String> of(BenchReadings readings) {
    List<String> troubles = new ArrayList<>();
    readings
        .drops()
        .filter(drops -> drops.perMinute() > limits.mostDrops())
        .ifPresent(drops -> troubles.add(drip(drops)));
    readings
        .spray()
        .filter(grade -> grade > limits.worstGoodSpray())
        .ifPresent(grade -> troubles.add("sprays badly: " + limits.sprayGrades().get(grade - 1)));
    readings.coil().ifPresent(ohm -> addCoil(ohm, troubles));
    return troubles;
  }

  private static String drip(BenchDrops drops) {
    double minutes = drops.time() / 60;
    return String.format(
        Locale.ROOT,
        "drips: %d drop%s in %s min",
        drops.drops(),
        drops.drops() == 1 ? "" : "s",
        SheetNumbers.few(minutes));
  }

  private void addCoil(double ohm, List<String> troubles) {
    boolean known = limits.coils().stream().anyMatch(k -> ohm >= k.least() && ohm <= k.most());
    if (!known) {
      troubles.add(
          "coil of " + SheetNumbers.few(ohm) + " Ω is like no sound one (" + bands() + ")");
    }
  }

  private String bands() {
    return String.join(
        ", or ",
        limits.coils().stream()
            .map(k -> SheetNumbers.few(k.least()) + " to " + SheetNumbers.few(k.most()) + " Ω")
            .toList());
  }
}
