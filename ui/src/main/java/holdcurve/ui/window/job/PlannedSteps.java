package holdcurve.ui.window.job;

import holdcurve.common.message.Message;
import java.util.List;

/**
 * How a test that was chosen is done.
 *
 * @param hold id of the hold beside which the steps stand
 * @param name of the test
 * @param steps in the order in which they are done
 * @param cautions to be read before
 */
public record PlannedSteps(String hold, String name, List<Message> steps, List<String> cautions) {
  public PlannedSteps {
    steps = List.copyOf(steps);
    cautions = List.copyOf(cautions);
  }
}
