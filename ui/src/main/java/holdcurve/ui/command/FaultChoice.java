package holdcurve.ui.command;

import holdcurve.common.input.InputException;
import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.FaultParameter;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import java.util.List;

/**
 * Puts faults named on the command line into a circuit: {@code id}, {@code id@site}, either with
 * {@code =size}.
 */
final class FaultChoice {
  private static final String FAULT = "--fault";

  private FaultChoice() {}

  /**
   * One fault as it was named.
   *
   * @param values of its parameters [SI]
   */
  record Choice(LeakFault fault, Site site, double[] values) {
    Condition apply(Condition condition) {
      return fault.apply(condition, site, values);
    }
  }

  static Condition apply(Circuit circuit, FaultCatalogue catalogue, List<String> choices) {
    Condition condition = Condition.sound(circuit);
    for (String choice : choices) {
      condition = choose(circuit, catalogue, choice).apply(condition);
    }
    return condition;
  }

  static Choice choose(Circuit circuit, FaultCatalogue catalogue, String choice) {
    String[] parts = choice.split("=", 2);
    String[] place = parts[0].split("@", 2);
    LeakFault fault = fault(catalogue, FAULT, place[0]);
    Site site = site(fault, circuit, place.length > 1 ? place[1] : "");
    return new Choice(fault, site, values(fault, choice, parts));
  }

  /**
   * The fault of an id.
   *
   * @param option at which it was named
   */
  static LeakFault fault(FaultCatalogue catalogue, String option, String id) {
    return catalogue
        .byId(id)
        .orElseThrow(
            () ->
                bad(
                    option + " " + id,
                    "there is no such fault",
                    "use one of "
                        + String.join(
                            ", ", catalogue.faults().stream().map(LeakFault::id).toList())));
  }

  private static Site site(LeakFault fault, Circuit circuit, String id) {
    List<Site> sites = fault.sites(circuit);
    return sites.stream()
        .filter(site -> id.isEmpty() || site.id().equals(id))
        .findFirst()
        .orElseThrow(
            () ->
                bad(
                    FAULT + " " + fault.id() + (id.isEmpty() ? "" : "@" + id),
                    "this circuit has no such place for it",
                    sites.isEmpty()
                        ? "choose another fault"
                        : "use one of "
                            + String.join(", ", sites.stream().map(Site::id).toList())));
  }

  private static double[] values(LeakFault fault, String choice, String[] parts) {
    List<FaultParameter> parameters = fault.parameters();
    double[] values = FaultParameter.usual(parameters);
    if (parts.length > 1) {
      FaultParameter size = parameters.get(0);
      try {
        double given = Double.parseDouble(parts[1]);
        if (!(given > 0) || Double.isInfinite(given)) {
          throw new NumberFormatException();
        }
        values[0] = size.unit().toSi(given);
      } catch (NumberFormatException e) {
        throw bad(
            FAULT + " " + choice,
            "'" + parts[1] + "' is no size",
            "give "
                + size.name()
                + " in "
                + size.unit().symbol()
                + ", such as "
                + fault.id()
                + "=0.3");
      }
    }
    return values;
  }

  private static InputException bad(String place, String problem, String remedy) {
    return InputException.at("command line", place, problem, remedy);
  }
}
