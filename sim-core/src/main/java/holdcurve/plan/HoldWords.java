package holdcurve.plan;

import holdcurve.circuit.Circuit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** Steps and cautions of holds. Minutes are common practice, no source. */
final class HoldWords {
  static final String PETROL =
      "Petrol and its vapour ignite: no flame or spark, ventilate, extinguisher at hand, cold"
          + " engine, eye protection.";
  static final String BRIDGE =
      "A pump run by a bridged relay has lost its cut-out: fused lead, never unattended.";
  static final String RELIEVE = "Relieve the pressure before opening any joint.";
  private static final String CLAMP =
      "Clamp only sound flexible hose, with smooth jaws; never rigid or plastic line.";
  private static final String DEAD_HEAD =
      "No clamp while the pump runs: it would push against a shut line.";

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
              + String.join(", then ", clamped)
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
                + String.join(" and ", clamped)
                + " clamped.");
    return steps;
  }

  static List<String> cautions(Set<String> clamped) {
    List<String> cautions = new ArrayList<>(List.of(PETROL, BRIDGE));
    if (!clamped.isEmpty()) {
      cautions.add(DEAD_HEAD);
      cautions.add(CLAMP);
    }
    return cautions;
  }

  /** Clamped hoses in circuit order. */
  static List<String> inOrder(Circuit circuit, Set<String> clamped) {
    return circuit.parts().stream().map(p -> p.id()).filter(clamped::contains).toList();
  }
}
