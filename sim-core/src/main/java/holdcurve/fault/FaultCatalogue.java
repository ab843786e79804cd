package holdcurve.fault;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.ServiceConfigurationError;
import java.util.ServiceLoader;
import java.util.Set;

/**
 * The faults that were found, after checking what each says of itself.
 *
 * @param faults usable faults, in order of id
 * @param problems one sentence for each plugin that was left out
 */
public record FaultCatalogue(List<LeakFault> faults, List<String> problems) {
  public FaultCatalogue {
    faults = List.copyOf(faults);
    problems = List.copyOf(problems);
  }

  /** Every fault on the class path. */
  public static FaultCatalogue load() {
    return of(ServiceLoader.load(LeakFault.class).iterator());
  }

  static FaultCatalogue of(Iterator<LeakFault> found) {
    List<LeakFault> faults = new ArrayList<>();
    List<String> problems = new ArrayList<>();
    Set<String> ids = new HashSet<>();
    while (true) {
      try {
        if (!found.hasNext()) {
          break;
        }
        LeakFault fault = found.next();
        String problem = FaultCheck.problem(fault, ids);
        if (problem.isEmpty()) {
          faults.add(fault);
        } else {
          problems.add(problem);
        }
      } catch (ServiceConfigurationError e) {
        problems.add("A fault plugin can't be loaded: " + e.getMessage() + ".");
      }
    }
    faults.sort((a, b) -> a.id().compareTo(b.id()));
    return new FaultCatalogue(faults, problems);
  }

  /** The fault of that id; empty if there is none. */
  public Optional<LeakFault> byId(String id) {
    return faults.stream().filter(fault -> fault.id().equals(id)).findFirst();
  }
}
