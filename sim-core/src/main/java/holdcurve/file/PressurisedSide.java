package holdcurve.file;

import holdcurve.check.InputException;
import holdcurve.circuit.Circuit;
import holdcurve.circuit.Part;
import holdcurve.circuit.PartKind;
import holdcurve.circuit.Ports;
import holdcurve.part.CheckValve;
import holdcurve.part.Gauge;
import holdcurve.part.Pump;
import holdcurve.part.Regulator;
import java.util.HashSet;
import java.util.Set;

/**
 * Whether the parts make one circuit: pump, check valve, then lines that lead to the gauge and to a
 * regulator. A hold of anything else says nothing.
 */
final class PressurisedSide {
  private static final Set<PartKind> VALVES = Set.of(Pump.KIND, CheckValve.KIND, Regulator.KIND);

  private PressurisedSide() {}

  static void check(Circuit circuit, String file) {
    Set<String> held = new HashSet<>();
    for (Part valve : circuit.partsOf(CheckValve.KIND)) {
      held.addAll(joined(circuit, valve.to()));
    }
    Set<String> delivered = new HashSet<>();
    for (Part pump : circuit.partsOf(Pump.KIND)) {
      delivered.addAll(joined(circuit, pump.to()));
    }
    for (int i = 0; i < circuit.parts().size(); i++) {
      Part part = circuit.parts().get(i);
      String place = "parts[" + i + "]";
      if (part.kind() == CheckValve.KIND && !delivered.isEmpty()) {
        need(delivered, part, file, place, "the outlet of the pump");
      }
      if (part.kind() == Gauge.KIND || part.kind() == Regulator.KIND) {
        need(held, part, file, place, "the outlet of the check valve");
      }
    }
  }

  private static void need(Set<String> points, Part part, String file, String place, String from) {
    if (!points.contains(part.from())) {
      String at = part.kind().ports() == Ports.TWO ? " begins at '" : " sits at '";
      throw InputException.at(
          file,
          place,
          part + at + part.from() + "', which no open line joins to " + from,
          "join it there; every part's 'from' is its upstream end");
    }
  }

  /** Points that a point is joined to by lines without a valve, the tank and the air left out. */
  private static Set<String> joined(Circuit circuit, String start) {
    Set<String> points = new HashSet<>();
    if (!circuit.isBoundary(start)) {
      points.add(start);
    }
    for (int before = -1; before != points.size(); ) {
      before = points.size();
      for (Part part : circuit.parts()) {
        boolean line = part.kind().ports() == Ports.TWO && !VALVES.contains(part.kind());
        if (line && (points.contains(part.from()) || points.contains(part.to()))) {
          points.add(part.from());
          points.add(part.to());
          points.removeIf(circuit::isBoundary);
        }
      }
    }
    return points;
  }
}
