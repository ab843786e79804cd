package holdcurve.fault;

import java.util.List;
import java.util.Objects;
import java.util.Set;

/** Looks at what a plugin says of itself before it is used. */
final class FaultCheck {
  private FaultCheck() {}

  /**
   * @param ids of the faults accepted so far; the id is added when there is no problem
   * @return one sentence that names the plugin, or an empty text
   */
  static String problem(LeakFault fault, Set<String> ids) {
    String type = fault.getClass().getName();
    try {
      String id = fault.id();
      if (id == null || !id.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
        return said(type, "has the id '" + id + "', which is not lower-case words with hyphens");
      }
      if (fault.contractVersion() != LeakFault.CONTRACT_VERSION) {
        return said(
            id,
            "was written for contract version "
                + fault.contractVersion()
                + "; this program has "
                + LeakFault.CONTRACT_VERSION);
      }
      String gap = gap(fault);
      if (!gap.isEmpty()) {
        return said(id, gap);
      }
      return ids.add(id) ? "" : said(id, "has the same id as another fault");
    } catch (RuntimeException | LinkageError e) {
      return said(type, "failed when asked who it is: " + e);
    }
  }

  private static String gap(LeakFault fault) {
    for (String text : new String[] {fault.name(), fault.symptoms(), fault.repair()}) {
      if (text == null || text.isBlank()) {
        return "gives no name, symptoms or repair";
      }
    }
    List<FaultParameter> parameters = fault.parameters();
    if (parameters == null
        || parameters.isEmpty()
        || parameters.stream().anyMatch(Objects::isNull)) {
      return "gives no parameters";
    }
    double prevalence = fault.prevalence();
    return prevalence > 0 && prevalence < 1e6
        ? ""
        : "gives a prevalence of " + prevalence + "; it must be positive";
  }

  private static String said(String who, String what) {
    return "The fault plugin '" + who + "' is left out: it " + what + ".";
  }
}
