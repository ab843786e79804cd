package holdcurve.file;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Ports;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.function.Predicate;

/** Which connection points lines join. */
final class Joined {
  private Joined() {}

  /**
   * Points that a point is joined to, itself included, in the order of the way. A boundary, such as
   * a tank, is among them, and nothing leads on from there.
   */
  static Set<String> points(Circuit circuit, String start, Predicate<Part> lines) {
    Set<String> points = new LinkedHashSet<>(Set.of(start));
    for (int before = 0; before != points.size(); ) {
      before = points.size();
      for (Part part : circuit.parts()) {
        if (part.kind().ports() == Ports.TWO && lines.test(part)) {
          boolean from = points.contains(part.from()) && !circuit.isBoundary(part.from());
          boolean to = points.contains(part.to()) && !circuit.isBoundary(part.to());
          if (from) {
            points.add(part.to());
          }
          if (to) {
            points.add(part.from());
          }
        }
      }
    }
    return points;
  }
}
