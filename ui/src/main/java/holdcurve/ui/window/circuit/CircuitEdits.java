package holdcurve.ui.window.circuit;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.PartKind;
import holdcurve.physics.circuit.Ports;
import holdcurve.physics.circuit.Property;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/** Parts put in, taken out, moved and renamed; each gives a new circuit, joined up again. */
final class CircuitEdits {
  private CircuitEdits() {}

  /** Whether a part can be taken out or moved: the tank can't, everything else stands on it. */
  static boolean isMovable(Part part) {
    return part.kind().ports() != Ports.PLACE;
  }

  /**
   * The circuit with one more part, all its values left to their defaults.
   *
   * @param after the part it follows: in the line after it, or at the same point
   * @param id that no part has; see {@link #freeId}
   */
  static Circuit add(Circuit circuit, Part after, PartKind kind, String id) {
    return insert(circuit, after, (from, to) -> Part.of(kind, id, from, to, Map.of()), kind);
  }

  /** The circuit without a part; what was joined to its ends is joined together. */
  static Circuit remove(Circuit circuit, Part part) {
    List<Part> left = new ArrayList<>(circuit.parts());
    left.remove(part);
    if (part.kind().ports() != Ports.TWO) {
      return with(circuit, left);
    }
    boolean ends = circuit.isBoundary(part.to());
    String gone = ends ? part.from() : part.to();
    String kept = ends ? part.to() : part.from();
    if (circuit.isBoundary(gone)) {
      return with(circuit, left);
    }
    left.replaceAll(one -> joined(one, point -> point.equals(gone) ? kept : point));
    return with(circuit, left);
  }

  /** The circuit with a part taken out and put in again after another. */
  static Circuit moveAfter(Circuit circuit, Part part, String after) {
    Circuit without = remove(circuit, part);
    return insert(without, without.part(after), (from, to) -> at(part, from, to), part.kind());
  }

  /**
   * The id of the part to put a part after, so that it goes one place on; empty at the end of the
   * line.
   *
   * @param step 1 with the flow, -1 against it
   */
  static Optional<String> neighbour(Circuit circuit, Part part, int step) {
    if (part.kind().ports() == Ports.ONE) {
      return step > 0
          ? lines(circuit).filter(one -> one.from().equals(part.from())).map(Part::id).findFirst()
          : lines(circuit)
              .filter(one -> one.to().equals(part.from()))
              .findFirst()
              .flatMap(before -> lineInto(circuit, before.from()));
    }
    if (step > 0) {
      return lines(circuit).filter(one -> one.from().equals(part.to())).map(Part::id).findFirst();
    }
    return lineInto(circuit, part.from()).flatMap(id -> lineInto(circuit, circuit.part(id).from()));
  }

  private static Optional<String> lineInto(Circuit circuit, String point) {
    return lines(circuit).filter(one -> one.to().equals(point)).map(Part::id).findFirst();
  }

  private static Stream<Part> lines(Circuit circuit) {
    return circuit.parts().stream().filter(part -> part.kind().ports() == Ports.TWO);
  }

  /** The circuit with another id for a part. */
  static Circuit rename(Circuit circuit, Part part, String id) {
    return circuit.map(
        one ->
            one.equals(part)
                ? Part.of(part.kind(), id, part.from(), part.to(), stated(part))
                : one);
  }

  /** An id that no part has, after {@code wanted}. */
  static String freeId(Circuit circuit, String wanted) {
    Set<String> taken = new TreeSet<>(circuit.points());
    circuit.parts().forEach(part -> taken.add(part.id()));
    String id = wanted;
    for (int i = 2; taken.contains(id); i++) {
      id = wanted + "-" + i;
    }
    return id;
  }

  /** Makes a part between two points. */
  private interface Maker {
    Part make(String from, String to);
  }

  private static Circuit insert(Circuit circuit, Part after, Maker maker, PartKind kind) {
    List<Part> parts = new ArrayList<>(circuit.parts());
    int place = parts.indexOf(after) + 1;
    String end = after.kind().ports() == Ports.TWO ? after.to() : after.from();
    if (kind.ports() == Ports.ONE) {
      String point = circuit.isBoundary(end) ? after.from() : end;
      parts.add(place, maker.make(point, point));
      return with(circuit, parts);
    }
    String middle = freeId(circuit, "after-" + after.id());
    Part made;
    if (after.kind().ports() == Ports.TWO) {
      made = maker.make(middle, end);
      parts.set(place - 1, at(after, after.from(), middle));
    } else {
      // After what sits at a point: the lines that leave the point leave the new part instead.
      made = maker.make(end, middle);
      parts.replaceAll(
          one ->
              one.kind().ports() == Ports.TWO && one.from().equals(end)
                  ? at(one, middle, one.to())
                  : one);
    }
    parts.add(place, made);
    return with(circuit, parts);
  }

  private static Part joined(Part part, UnaryOperator<String> points) {
    return part.kind().ports() == Ports.PLACE
        ? part
        : at(part, points.apply(part.from()), points.apply(part.to()));
  }

  private static Part at(Part part, String from, String to) {
    return Part.of(part.kind(), part.id(), from, to, stated(part));
  }

  /** The values that were given; the others stay left to their defaults. */
  static Map<Property, Double> stated(Part part) {
    Map<Property, Double> stated = new HashMap<>();
    for (Property property : part.kind().properties()) {
      if (part.states(property)) {
        stated.put(property, part.value(property));
      }
    }
    return stated;
  }

  private static Circuit with(Circuit circuit, List<Part> parts) {
    return new Circuit(circuit.title(), circuit.fluid(), parts);
  }
}
