package holdcurve.ui.schematic;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Ports;
import holdcurve.physics.part.ColdStartInjector;
import holdcurve.physics.part.Injector;
import holdcurve.physics.part.Rail;
import holdcurve.physics.part.Regulator;
import holdcurve.ui.schematic.Drawing.Placed;
import holdcurve.ui.schematic.Drawing.Stand;
import holdcurve.ui.schematic.Drawing.Wire;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Lays a circuit out. What is under pressure runs to the right along the top, from the pump to the
 * regulator; branches run below it; the return runs back to the left along the bottom. Parts with
 * one end stand above or below their connection point, which gets the room they need.
 */
public final class CircuitLayout {
  private static final double CELL = 104;
  private static final double SLOT = 76;
  private static final double INJECTOR = 30;
  private static final double LEFT = 74;
  private static final double ABOVE = 92;
  private static final double BELOW = 112;
  private static final double BARE = 58;
  private static final double MARGIN = 24;

  private final Circuit circuit;
  private final Map<String, double[]> placed = new LinkedHashMap<>();
  private final Set<Part> used = new HashSet<>();
  private final List<Placed> parts = new ArrayList<>();
  private final List<Wire> wires = new ArrayList<>();
  private double right;
  private double bottom;

  private CircuitLayout(Circuit circuit) {
    this.circuit = circuit;
  }

  public static Drawing of(Circuit circuit) {
    return new CircuitLayout(circuit).draw();
  }

  private Drawing draw() {
    List<Part> way = FlowPath.main(circuit);
    used.addAll(way);
    int turn = turn(way);
    List<Part> pressed = way.subList(0, turn);
    List<Part> back = way.subList(turn, way.size());
    double top = MARGIN + above(pressed);
    double end = row(pressed, LEFT, top, gaps(pressed));
    double lane = top + below(pressed);
    for (String point : List.copyOf(placed.keySet())) {
      lane = branches(point, lane);
    }
    double returnY = lane + (back.isEmpty() ? 0 : Math.max(BARE, above(back)));
    end = Math.max(end, LEFT + length(back) + CELL / 2);
    if (!back.isEmpty()) {
      String last = back.get(0).from();
      wires.add(new Wire(x(last), top, end, top));
      wires.add(new Wire(end, top, end, returnY));
    }
    returnRow(back, end, returnY);
    tank(way, top, returnY);
    strays(returnY + BELOW);
    bottom = Math.max(bottom, returnY + BARE);
    return new Drawing(Math.max(right, end) + MARGIN + 20, bottom + MARGIN, inOrder(), wires);
  }

  /** Where the return begins. */
  private static int turn(List<Part> way) {
    for (int i = 0; i < way.size(); i++) {
      if (way.get(i).kind() == Regulator.KIND) {
        return i;
      }
    }
    return way.size();
  }

  private List<Placed> inOrder() {
    List<Placed> ordered = new ArrayList<>();
    for (Part part : circuit.parts()) {
      parts.stream().filter(one -> one.part() == part).forEach(ordered::add);
    }
    return ordered;
  }

  // ---- room that points need

  private List<Part> at(String point) {
    return circuit.parts().stream()
        .filter(part -> part.kind().ports() == Ports.ONE && part.from().equals(point))
        .toList();
  }

  private static boolean hangs(Part part) {
    return part.kind() == Injector.KIND || part.kind() == ColdStartInjector.KIND;
  }

  private static boolean stands(Part part) {
    return !hangs(part) && part.kind() != Rail.KIND;
  }

  private static double slot(Part part) {
    return part.kind() == Injector.KIND
        ? Math.max(SLOT, INJECTOR * part.value(Injector.COUNT) + 16)
        : SLOT;
  }

  private double width(String point) {
    List<Part> here = at(point);
    double up = here.stream().filter(CircuitLayout::stands).mapToDouble(CircuitLayout::slot).sum();
    double down = here.stream().filter(CircuitLayout::hangs).mapToDouble(CircuitLayout::slot).sum();
    boolean rail = here.stream().anyMatch(part -> part.kind() == Rail.KIND);
    return Math.max(Math.max(up, down), rail ? CELL : 0);
  }

  private double length(List<Part> way) {
    return way.size() * CELL + way.stream().mapToDouble(part -> width(part.to())).sum();
  }

  private double above(List<Part> way) {
    boolean any = points(way).stream().flatMap(p -> at(p).stream()).anyMatch(CircuitLayout::stands);
    return any ? ABOVE : BARE / 2;
  }

  private double below(List<Part> way) {
    boolean any = points(way).stream().flatMap(p -> at(p).stream()).anyMatch(CircuitLayout::hangs);
    return any ? BELOW : BARE;
  }

  private List<String> points(List<Part> way) {
    List<String> points = new ArrayList<>();
    way.forEach(part -> points.add(part.to()));
    points.removeIf(circuit::isBoundary);
    return points;
  }

  /** How much farther two points must stand apart so that branches between them have room. */
  private Map<String, Double> gaps(List<Part> way) {
    Map<String, Double> gaps = new LinkedHashMap<>();
    Set<Part> drawn = new HashSet<>(used);
    List<String> points = points(way);
    for (int i = 0; i < points.size(); i++) {
      String start = points.get(i);
      List<Part> branch = FlowPath.branch(circuit, start, drawn, points::contains);
      if (!branch.isEmpty()) {
        int end = points.indexOf(branch.get(branch.size() - 1).to());
        double here = 0;
        for (int k = i + 1; k <= end; k++) {
          here += CELL + (k < end ? width(points.get(k)) : 0);
        }
        double wanted = length(branch) - width(branch.get(branch.size() - 1).to());
        if (end > i) {
          gaps.merge(start, Math.max(0, wanted - here), Math::max);
        }
      }
    }
    return gaps;
  }

  // ---- rows

  /** Places parts in a row to the right; returns where it ends. */
  private double row(List<Part> way, double from, double y, Map<String, Double> gaps) {
    double x = from;
    for (Part part : way) {
      double gap = gaps.getOrDefault(part.from(), 0.0);
      if (gap > 0) {
        wires.add(new Wire(x, y, x + gap, y));
        x += gap;
      }
      line(part, x + CELL / 2, y, Stand.RIGHT);
      x += CELL;
      x = point(part.to(), x, y, 1);
    }
    right = Math.max(right, x);
    return x;
  }

  private void returnRow(List<Part> way, double from, double y) {
    double x = from;
    for (Part part : way) {
      line(part, x - CELL / 2, y, Stand.LEFT);
      x -= CELL;
      if (!circuit.isBoundary(part.to())) {
        x = point(part.to(), x, y, -1);
      }
    }
    if (!way.isEmpty()) {
      wires.add(new Wire(x, y, tankX(), y));
    }
  }

  private void line(Part part, double x, double y, Stand stand) {
    used.add(part);
    parts.add(new Placed(part, x, y, CELL, stand));
  }

  /** Places a point with what sits at it; returns where the line goes on. */
  private double point(String point, double x, double y, int direction) {
    if (placed.containsKey(point) || circuit.isBoundary(point)) {
      return x;
    }
    double width = width(point);
    double left = direction > 0 ? x : x - width;
    placed.put(point, new double[] {left, left + width, y});
    if (width > 0) {
      wires.add(new Wire(left, y, left + width, y));
    }
    double up = left + (width - sum(point, true)) / 2;
    double down = left + (width - sum(point, false)) / 2;
    for (Part part : at(point)) {
      used.add(part);
      if (part.kind() == Rail.KIND) {
        parts.add(new Placed(part, left + width / 2, y, width, Stand.ALONG));
      } else if (hangs(part)) {
        parts.add(new Placed(part, down + slot(part) / 2, y, slot(part), Stand.BELOW));
        down += slot(part);
      } else {
        parts.add(new Placed(part, up + slot(part) / 2, y, slot(part), Stand.ABOVE));
        up += slot(part);
      }
    }
    bottom = Math.max(bottom, y + BARE);
    return direction > 0 ? left + width : left;
  }

  private double sum(String point, boolean up) {
    return at(point).stream()
        .filter(up ? CircuitLayout::stands : CircuitLayout::hangs)
        .mapToDouble(CircuitLayout::slot)
        .sum();
  }

  private double x(String point) {
    double[] at = placed.get(point);
    return at == null ? tankX() : at[1];
  }

  private static double tankX() {
    return LEFT - 30;
  }

  /** Draws every branch that leaves a point, each in a lane of its own. */
  private double branches(String start, double lane) {
    double next = lane;
    while (true) {
      List<Part> way = FlowPath.branch(circuit, start, used, placed::containsKey);
      if (way.isEmpty()) {
        return next;
      }
      double[] from = placed.get(start);
      double y = next + above(way);
      double end = row(way, from[1], y, Map.of());
      String last = way.get(way.size() - 1).to();
      wires.add(new Wire(from[1], from[2], from[1], y));
      double[] to = placed.get(last);
      if (to[2] != y) {
        double meet = Math.max(end, to[0]);
        wires.add(new Wire(end, y, meet, y));
        wires.add(new Wire(meet, y, meet, to[2]));
        if (meet > to[1]) {
          wires.add(new Wire(to[1], to[2], meet, to[2]));
        }
      }
      next = y + below(way);
    }
  }

  private void tank(List<Part> way, double top, double returnY) {
    for (Part part : circuit.parts()) {
      if (part.kind().ports() == Ports.PLACE) {
        used.add(part);
        parts.add(new Placed(part, tankX(), returnY, SLOT, Stand.BELOW));
      }
    }
    if (!way.isEmpty()) {
      wires.add(new Wire(tankX() - 12, top, LEFT, top));
      wires.add(new Wire(tankX() - 12, top, tankX() - 12, returnY + 12));
    }
    wires.add(new Wire(tankX(), returnY, tankX() + 6, returnY));
  }

  /** What no way reaches is set out below, so that nothing is missing. */
  private void strays(double y) {
    double x = LEFT + CELL / 2;
    for (Part part : circuit.parts()) {
      if (!used.contains(part)) {
        parts.add(new Placed(part, x, y, CELL, Stand.RIGHT));
        x += CELL;
        bottom = Math.max(bottom, y + BARE);
      }
    }
    right = Math.max(right, x - CELL / 2);
  }
}
