package holdcurve.fault;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.flow.FlowLaw;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Looks at the sites and conditions that a fault gives. Quick: a ranking asks thousands of times.
 */
final class ConditionCheck {
  /** Pressures at which a leak law is tried [Pa]. */
  private static final double[] TEST_PRESSURES = {1e3, 1e4, 1e5, 2e5, 6e5};

  private ConditionCheck() {}

  /**
   * @return what is wrong, as the end of a sentence that begins with "it", or an empty text
   */
  static String problem(List<Site> sites, Circuit circuit) {
    Set<String> ids = new HashSet<>();
    for (Site site : sites) {
      if (site == null || site.id().isBlank() || site.where().isBlank()) {
        return "gave a site without a name";
      }
      if (!ids.add(site.id())) {
        return "gave two sites with the id '" + FaultFailure.shown(site.id()) + "'";
      }
      if (!isPoint(circuit, site.point())) {
        return noPoint("gave a site", site.point(), circuit);
      }
      for (String part : site.parts()) {
        if (circuit.parts().stream().noneMatch(p -> p.id().equals(part))) {
          return "gave a site at the part '"
              + FaultFailure.shown(part)
              + "', which is not in "
              + circuit.title();
        }
      }
    }
    return "";
  }

  /**
   * @return what is wrong, as the end of a sentence that begins with "it", or an empty text
   */
  static String problem(Condition before, Condition after) {
    if (after == null) {
      return "gave no condition";
    }
    String change = after.circuit() == before.circuit() ? "" : changeProblem(before, after);
    return change.isEmpty() ? leakProblem(before, after) : change;
  }

  private static String changeProblem(Condition before, Condition after) {
    List<Part> old = before.circuit().parts();
    List<Part> now = after.circuit().parts();
    if (old.size() != now.size()) {
      return "added or removed parts";
    }
    for (int i = 0; i < old.size(); i++) {
      Part part = now.get(i);
      if (part != old.get(i)) {
        if (!sameButForValues(part, old.get(i))) {
          return "swapped " + old.get(i) + " for another part";
        }
        for (Property property : part.kind().properties()) {
          if (!Double.isFinite(part.value(property))) {
            return "set " + property.fileName() + " of " + part + " to " + part.value(property);
          }
        }
      }
    }
    return "";
  }

  private static boolean sameButForValues(Part a, Part b) {
    return a.kind() == b.kind()
        && a.id().equals(b.id())
        && a.from().equals(b.from())
        && a.to().equals(b.to());
  }

  private static String leakProblem(Condition before, Condition after) {
    int kept = before.leaks().size();
    if (after.leaks().size() < kept) {
      return "closed a leak that was open before";
    }
    for (int i = 0; i < after.leaks().size(); i++) {
      LeakPath leak = after.leaks().get(i);
      String problem = "";
      if (i >= kept) {
        problem = leakProblem(leak, after.circuit());
      } else if (leak != before.leaks().get(i)) {
        problem = "changed a leak that was open before";
      }
      if (!problem.isEmpty()) {
        return problem;
      }
    }
    return "";
  }

  private static String leakProblem(LeakPath leak, Circuit circuit) {
    for (String point : new String[] {leak.from(), leak.to()}) {
      if (!isPoint(circuit, point)) {
        return noPoint("gave a leak", point, circuit);
      }
    }
    if (leak.from().equals(leak.to())) {
      return "gave a leak from '" + leak.from() + "' to itself";
    }
    return lawProblem(leak.law());
  }

  private static String lawProblem(FlowLaw law) {
    for (double pressure : TEST_PRESSURES) {
      if (!sound(law.flow(pressure)) || !sound(law.slope(pressure))) {
        return "gave a leak that passes "
            + law.flow(pressure)
            + " m³/s at "
            + pressure
            + " Pa, with a slope of "
            + law.slope(pressure);
      }
    }
    return sound(law.slope(0)) && law.flow(0) == 0
        ? ""
        : "gave a leak that flows without any pressure, or has no finite slope there";
  }

  private static boolean sound(double value) {
    return value >= 0 && value < Double.POSITIVE_INFINITY;
  }

  private static boolean isPoint(Circuit circuit, String point) {
    if (point.equals(Circuit.AIR) || point.equals(Circuit.MANIFOLD)) {
      return true;
    }
    for (Part part : circuit.parts()) {
      if (part.from().equals(point) || part.to().equals(point)) {
        return true;
      }
    }
    return false;
  }

  private static String noPoint(String what, String point, Circuit circuit) {
    return what
        + " at the point '"
        + FaultFailure.shown(point)
        + "', which is not in "
        + circuit.title();
  }
}
