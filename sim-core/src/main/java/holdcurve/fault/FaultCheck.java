package holdcurve.fault;

import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Looks at what a plugin says of itself before it is used. */
final class FaultCheck {
  private static final int MOST_PARAMETERS = 6;
  private static final int LONGEST_ID = 60;
  private static final int LONGEST_TEXT = 600;

  private FaultCheck() {}

  /**
   * @param taken ids of the faults accepted so far
   * @return what is wrong, as the end of a sentence that begins with "it", or an empty text
   */
  static String problem(FaultDescription fault, Set<String> taken) {
    String id = fault.id();
    if (id == null || id.length() > LONGEST_ID || !id.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
      return "has the id '"
          + FaultFailure.shown(id)
          + "', which is not a few lower-case words with hyphens";
    }
    if (fault.contractVersion() != LeakFault.CONTRACT_VERSION) {
      return "was written for contract version "
          + fault.contractVersion()
          + "; this program has "
          + LeakFault.CONTRACT_VERSION;
    }
    String gap = gap(fault);
    return gap.isEmpty() && taken.contains(id) ? "has the same id as another fault" : gap;
  }

  private static String gap(FaultDescription fault) {
    for (String text : new String[] {fault.name(), fault.symptoms(), fault.repair()}) {
      if (text == null || text.isBlank()) {
        return "gives no name, symptoms or repair";
      }
      if (text.length() > LONGEST_TEXT) {
        return "gives a name, symptoms or repair of more than " + LONGEST_TEXT + " characters";
      }
    }
    double prevalence = fault.prevalence();
    if (!(prevalence > 0 && prevalence < 1e6)) {
      return "gives a prevalence of " + prevalence + "; it must be positive and below a million";
    }
    return parameterGap(fault.parameters());
  }

  private static String parameterGap(List<FaultParameter> parameters) {
    if (parameters == null || parameters.isEmpty() || parameters.contains(null)) {
      return "gives no parameters, or an empty one among them";
    }
    if (parameters.size() > MOST_PARAMETERS) {
      return "has " + parameters.size() + " parameters; at most " + MOST_PARAMETERS + " make sense";
    }
    Set<String> names = new HashSet<>();
    for (FaultParameter parameter : parameters) {
      if (parameter.name().isBlank() || !names.add(parameter.name())) {
        return "has two parameters of one name, or one without";
      }
      if (parameter.source().isBlank()) {
        return "doesn't say where the prior of '" + parameter.name() + "' comes from";
      }
      if (!usable(parameter.prior())) {
        return "has a prior for '" + parameter.name() + "' that runs out of all numbers";
      }
    }
    return "";
  }

  /** Finite and rising as far as a search is likely to go. */
  private static boolean usable(Prior prior) {
    double low = prior.at(-6);
    double high = prior.at(6);
    return Double.isFinite(low) && Double.isFinite(high) && low < high;
  }
}
