package holdcurve.physics.network;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.circuit.Part;
import java.util.ArrayList;
import java.util.List;

/**
 * What a circuit in some condition brings under one operation, part by part.
 *
 * @param condition parts and leaks
 * @param operation what is being done
 * @param parts what each part brings, in the circuit's order, and the leaks as the last
 */
record Contributions(Condition condition, Operation operation, NetworkBuilder[] parts) {
  /**
   * @param memory of what parts brought before
   */
  static Contributions of(Condition condition, Operation operation, PartMemory memory) {
    List<Part> parts = condition.circuit().parts();
    NetworkBuilder[] brought = new NetworkBuilder[parts.size() + 1];
    for (int i = 0; i < parts.size(); i++) {
      brought[i] = memory.brought(condition.circuit(), parts.get(i), operation);
    }
    brought[parts.size()] = of(condition, operation);
    return new Contributions(condition, operation, brought);
  }

  /** What one part brings. */
  static NetworkBuilder of(Circuit circuit, Part part, Operation operation) {
    NetworkBuilder builder = new NetworkBuilder(circuit.fluid(), operation);
    if (part.kind() instanceof PartEquations kind) {
      kind.assemble(part, builder);
    }
    return builder;
  }

  private static NetworkBuilder of(Condition condition, Operation operation) {
    NetworkBuilder builder = new NetworkBuilder(condition.circuit().fluid(), operation);
    for (LeakPath leak : condition.leaks()) {
      builder.addPassage(
          "leak from " + leak.from() + " to " + leak.to(), leak.from(), leak.to(), leak.law());
    }
    return builder;
  }

  Circuit circuit() {
    return condition.circuit();
  }

  /** All passages, part after part. */
  List<NetworkBuilder.Passage> passages() {
    List<NetworkBuilder.Passage> all = new ArrayList<>();
    for (NetworkBuilder part : parts) {
      all.addAll(part.passages);
    }
    return all;
  }

  /** Whether everything is joined as in the other, whatever the sizes. */
  boolean isJoinedLike(Contributions other) {
    if (parts.length != other.parts.length || !sameFrame(other)) {
      return false;
    }
    List<Part> here = circuit().parts();
    List<Part> there = other.circuit().parts();
    for (int i = 0; i < parts.length; i++) {
      boolean same = parts[i] == other.parts[i] || Shapes.same(parts[i], other.parts[i]);
      if (!same || i < here.size() && !Shapes.same(here.get(i), there.get(i))) {
        return false;
      }
    }
    return true;
  }

  private boolean sameFrame(Contributions other) {
    Operation a = operation;
    Operation b = other.operation;
    return a == b
        || a.manifoldPressure() == b.manifoldPressure()
            && a.pace() == b.pace()
            && a.temperatureCourse().isPresent() == b.temperatureCourse().isPresent();
  }
}
