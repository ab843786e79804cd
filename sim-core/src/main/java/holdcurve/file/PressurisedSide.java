package holdcurve.file;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Ports;
import holdcurve.physics.part.CheckValve;
import holdcurve.physics.part.Gauge;
import holdcurve.physics.part.Pump;
import holdcurve.physics.part.Regulator;
import java.util.HashSet;
import java.util.Set;

/**
 * Whether the parts make one circuit: pump, check valve, then lines that lead to the gauge and to a
 * regulator. A hold of anything else says nothing.
 */
record PressurisedSide(Circuit circuit) {
  void find(LooseEnds.Report report) {
    Set<String> held = new HashSet<>();
    for (Part valve : circuit.partsOf(CheckValve.KIND)) {
      held.addAll(joined(valve.to()));
    }
    Set<String> delivered = new HashSet<>();
    for (Part pump : circuit.partsOf(Pump.KIND)) {
      delivered.addAll(joined(pump.to()));
    }
    for (Part part : circuit.parts()) {
      if (part.kind() == CheckValve.KIND && !delivered.isEmpty()) {
        need(delivered, part, "the outlet of the pump", report);
      }
      if (part.kind() == Gauge.KIND || part.kind() == Regulator.KIND) {
        need(held, part, "the outlet of the check valve", report);
      }
    }
  }

  private static void need(Set<String> points, Part part, String from, LooseEnds.Report report) {
    if (!points.contains(part.from())) {
      String at = part.kind().ports() == Ports.TWO ? " begins at '" : " sits at '";
      report.add(
          part,
          part + at + part.from() + "', which no open line joins to " + from,
          "join it there; every part's 'from' is its upstream end");
    }
  }

  /** Points that a point is joined to by lines without a valve, the tank and the air left out. */
  private Set<String> joined(String start) {
    Set<String> points = new HashSet<>(Joined.points(circuit, start, part -> part.kind().isOpen()));
    points.removeIf(circuit::isBoundary);
    return points;
  }
}
