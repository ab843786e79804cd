package holdcurve.infer;

import holdcurve.check.InputException;
import holdcurve.check.Troubles;
import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.LeakFault;
import holdcurve.job.Job;
import java.util.List;

/** Whether the faults exist that a job calls likelier or rarer than usual. */
final class PriorNames {
  private PriorNames() {}

  /**
   * @throws InputException that names each one that doesn't
   */
  static void check(Job job, FaultCatalogue catalogue) {
    List<String> known = catalogue.faults().stream().map(LeakFault::id).sorted().toList();
    Troubles troubles = new Troubles();
    for (String name : job.priors().keySet()) {
      if (!known.contains(name)) {
        troubles.add(
            InputException.at(
                job.title(),
                "priors",
                "there is no fault '" + name + "'",
                "use one of "
                    + String.join(", ", known)
                    + ", or name the folder of its plugin with --plugins"));
      }
    }
    troubles.refuse();
  }
}
