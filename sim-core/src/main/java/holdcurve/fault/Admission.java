package holdcurve.fault;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Decides, one by one, which of the faults found go into the catalogue. */
final class Admission {
  private final List<LeakFault> faults = new ArrayList<>();
  private final List<String> problems = new ArrayList<>();
  private final Set<String> ids = new HashSet<>();

  /**
   * @param jar file name it came from, or empty
   * @param call how to ask it
   */
  void admit(LeakFault fault, String jar, PluginCall call) {
    String type = fault.getClass().getName();
    FaultDescription said;
    try {
      said = call.ask(type, "it was asked who it is", () -> FaultDescription.of(fault));
    } catch (FaultFailure e) {
      refuse((jar.isEmpty() ? "" : "From " + jar + ": ") + e.getMessage());
      return;
    }
    String problem = FaultCheck.problem(said, ids);
    if (problem.isEmpty()) {
      ids.add(said.id());
      faults.add(new GuardedFault(fault, said, call));
    } else {
      String who = said.id() == null || said.id().isBlank() ? type : FaultFailure.shown(said.id());
      String from = jar.isEmpty() ? "" : " in " + jar;
      refuse("The fault plugin '" + who + "'" + from + " is left out: it " + problem + ".");
    }
  }

  void refuse(String sentence) {
    problems.add(sentence);
  }

  FaultCatalogue catalogue() {
    faults.sort(Comparator.comparing(LeakFault::id));
    return new FaultCatalogue(faults, problems);
  }
}
