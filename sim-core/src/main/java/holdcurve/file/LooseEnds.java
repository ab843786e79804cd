package holdcurve.file;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Ports;
import holdcurve.physics.circuit.TankEnd;
import holdcurve.physics.part.Tank;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Ends of lines that lead nowhere, most likely slips of the pen: the fuel behind them would count
 * as part of the circuit, or not at all.
 */
record LooseEnds(Circuit circuit) {
  /** Takes what is wrong with a part. */
  interface Report {
    void add(Part part, String problem, String remedy);
  }

  private static final String JOIN = "join it to a connection point of another part";

  void find(Report report) {
    for (Part part : circuit.parts()) {
      if (part.kind().ports() == Ports.PLACE) {
        continue;
      }
      if (part.kind().ports() == Ports.TWO && part.from().equals(part.to())) {
        report.add(
            part,
            part + " begins and ends at '" + part.to() + "'",
            "join its ends to two connection points");
      } else if (part.kind().ports() == Ports.ONE) {
        findPlace(part, report);
      } else {
        findEnds(part, report);
      }
    }
    findUnused(report);
  }

  private void findPlace(Part part, Report report) {
    String point = part.from();
    if (circuit.isBoundary(point)) {
      report.add(
          part,
          part + " sits at '" + point + "', where there is no pressure",
          "name the connection point on the pressure side at which it sits");
    } else if (mentions(point) < 2) {
      report.add(part, part + " ends at '" + point + "', which no other part names", JOIN);
    } else if (!joined(point, all -> true).stream().anyMatch(this::isEndOfLine)) {
      report.add(part, part + " sits at '" + point + "', where no line leads", JOIN);
    }
  }

  private boolean isEndOfLine(String point) {
    return circuit.parts().stream()
        .anyMatch(
            part ->
                part.kind().tankEnd() != TankEnd.NEITHER
                    && (part.from().equals(point) || part.to().equals(point)));
  }

  private void findEnds(Part part, Report report) {
    boolean loose = false;
    for (String point : List.of(part.from(), part.to())) {
      if (!circuit.isBoundary(point) && !isClosed(part, point)) {
        loose = true;
        String only =
            mentions(point) < 2
                ? "which no other part names"
                : "where nothing closes it, for a joint leaves it open";
        report.add(part, part + " ends at '" + point + "', " + only, JOIN);
      }
    }
    if (!loose) {
      findTank(part, report);
    }
  }

  private boolean isClosed(Part line, String point) {
    return circuit.parts().stream()
        .filter(part -> part != line && (part.from().equals(point) || part.to().equals(point)))
        .anyMatch(part -> part.kind().ports() == Ports.TWO || part.kind().closesLine());
  }

  private long mentions(String point) {
    return circuit.parts().stream()
        .filter(part -> part.kind().ports() != Ports.PLACE)
        .mapToLong(
            part ->
                (part.from().equals(point) ? 1 : 0)
                    + (part.kind().ports() == Ports.TWO && part.to().equals(point) ? 1 : 0))
        .sum();
  }

  private void findTank(Part part, Report report) {
    TankEnd end = part.kind().tankEnd();
    if (end == TankEnd.FROM && !reaches(part.from(), upstream(part), "")) {
      report.add(part, part + " draws from '" + part.from() + "', and no tank is there", tanks());
    }
    if (end == TankEnd.TO && !reaches(part.to(), other -> other.kind().isOpen(), Circuit.AIR)) {
      String last = lastPoint(part.to());
      String way = last.equals(part.to()) ? "at '" : "to '" + part.to() + "' and on to '";
      report.add(part, part + " returns fuel " + way + last + "', and no tank is there", tanks());
    }
  }

  /** A second pump before this one, and its valve, are on the way to the tank. */
  private static Predicate<Part> upstream(Part pump) {
    return other -> other != pump && other.kind().tankEnd() != TankEnd.TO;
  }

  private String tanks() {
    return "let it lead to "
        + Words.list(
            circuit.partsOf(Tank.KIND).stream().map(tank -> "'" + tank.id() + "'").toList());
  }

  private boolean reaches(String start, Predicate<Part> lines, String orHere) {
    Set<String> points = joined(start, lines);
    return points.contains(orHere)
        || circuit.partsOf(Tank.KIND).stream().anyMatch(tank -> points.contains(tank.id()));
  }

  private String lastPoint(String start) {
    String last = start;
    for (String point : joined(start, other -> other.kind().isOpen())) {
      last = point;
    }
    return last;
  }

  /** Points that lines join to a point, in the order of the way; nothing passes a boundary. */
  private Set<String> joined(String start, Predicate<Part> lines) {
    return Joined.points(circuit, start, lines);
  }

  private void findUnused(Report report) {
    Set<String> named = new HashSet<>();
    for (Part part : circuit.parts()) {
      if (part.kind().ports() != Ports.PLACE) {
        named.addAll(List.of(part.from(), part.to()));
      }
    }
    for (Part tank : circuit.partsOf(Tank.KIND)) {
      if (!named.contains(tank.id())) {
        report.add(
            tank,
            "no part leads from or to " + tank,
            "name '" + tank.id() + "' where the pump draws and where the return ends");
      }
    }
  }
}
