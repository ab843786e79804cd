package holdcurve.training;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.part.ColdStartInjector;
import holdcurve.physics.part.Hose;
import holdcurve.physics.part.Injector;
import java.util.ArrayList;
import java.util.List;

/** What can be done to a circuit. */
public final class Steps {
  private static final double WATCHED = 10;
  private static final double COUNTED = 5;

  private Steps() {}

  /** Holds with every set of at most two clamps, drop counts, and looks. */
  public static List<Step> of(Circuit circuit) {
    List<Step> steps = new ArrayList<>();
    steps.add(new Step.Hold(List.of(), WATCHED));
    List<String> hoses = Hose.clampable(circuit);
    hoses.forEach(hose -> steps.add(new Step.Hold(List.of(hose), WATCHED)));
    for (int i = 0; i < hoses.size(); i++) {
      for (int j = i + 1; j < hoses.size(); j++) {
        steps.add(new Step.Hold(List.of(hoses.get(i), hoses.get(j)), WATCHED));
      }
    }
    steps.add(new Step.LookAtJoints());
    steps.add(new Step.LookIntoReferenceHose());
    for (Part part : circuit.parts()) {
      if (part.kind() == Injector.KIND || part.kind() == ColdStartInjector.KIND) {
        steps.add(new Step.CountDrops(part.id(), COUNTED));
      }
    }
    return steps;
  }

  /**
   * @throws IllegalArgumentException if there is none of that id
   */
  public static Step byId(List<Step> steps, String id) {
    return steps.stream()
        .filter(step -> step.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no step '" + id + "'"));
  }
}
