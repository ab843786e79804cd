package holdcurve.inference.prior;

import holdcurve.common.input.InputErrors;
import holdcurve.common.input.InputException;
import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.LeakFault;
import holdcurve.record.job.Job;
import java.util.List;

/** Whether the faults exist that a job calls likelier or rarer than usual. */
public final class PriorNames {
  private PriorNames() {}

  /**
   * @throws InputException that names each one that doesn't
   */
  public static void check(Job job, FaultCatalogue catalogue) {
    List<String> known = catalogue.faults().stream().map(LeakFault::id).sorted().toList();
    InputErrors troubles = new InputErrors();
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
