package holdcurve.advice.plan;

import holdcurve.common.caution.Caution;
import holdcurve.common.caution.Cautions;
import holdcurve.common.message.PartName;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Steps and cautions of holds. Minutes are common practice, no source. */
final class HoldWords {
  static final double PREPARE = 3;
  private static final double A_CLAMP = 1;

  private HoldWords() {}

  static double minutes(double hold, int clamps) {
    return PREPARE + hold + clamps * A_CLAMP;
  }

  static List<String> steps(Set<String> clamped, double hold, boolean twice, boolean temperature) {
    List<String> steps = new ArrayList<>();
    if (temperature) {
      steps.add("Fix a thermometer to the rail, under a wrap of cloth, and let it settle.");
    }
    steps.add("Bridge the pump relay with a fused lead; run the pump for 20 s.");
    if (twice) {
      steps.add("Stop the pump, wait five minutes, run it again for 20 s.");
    }
    steps.add("Stop the pump and start the stopwatch at once.");
    if (!clamped.isEmpty()) {
      steps.add(
          "Within 10 s, the pump standing, clamp "
              + clamped.stream()
                  .map(c -> "the " + PartName.of(c))
                  .collect(Collectors.joining(", then "))
              + "; note the time.");
    }
    steps.add(
        String.format(
            java.util.Locale.ROOT,
            "Read the gauge at 10, 30 and 60 s, then every minute up to %.0f min.",
            hold));
    if (temperature) {
      steps.add("Note the temperature at the start and every two minutes.");
    }
    steps.add(
        clamped.isEmpty()
            ? "Enter the readings as a hold without clamps."
            : "Take the clamps off; enter the readings as a hold with "
                + PartName.all(clamped)
                + " clamped.");
    return steps;
  }

  static List<String> cautions(Set<String> clamped) {
    return clamped.isEmpty()
        ? Cautions.texts(
            Caution.PETROL, Caution.BRIDGED_PUMP, Caution.STILL_PRESSURISED, Caution.LOCAL_CODES)
        : Cautions.texts(
            Caution.PETROL,
            Caution.BRIDGED_PUMP,
            Caution.DEAD_HEAD,
            Caution.CLAMPS,
            Caution.STILL_PRESSURISED,
            Caution.LOCAL_CODES);
  }
}
