package holdcurve.ui.window.holdtests;

import holdcurve.record.job.HoldTest;
import holdcurve.ui.window.frame.StepCautions;
import java.util.ArrayList;
import java.util.List;

/** How a hold is done, step by step, with its cautions where the step is. */
final class HoldSteps {
  /** Where in the test one is. */
  enum Stage {
    BEFORE,
    CLAMPING,
    READING,
    DONE
  }

  /**
   * A step.
   *
   * @param stage when it is due
   * @param what to do
   * @param caution to beware of; may be empty
   */
  record Step(Stage stage, String what, String caution) {}

  private HoldSteps() {}

  static List<Step> of(HoldTest test) {
    List<Step> steps = new ArrayList<>();
    steps.add(
        new Step(Stage.BEFORE, "Tee the gauge in; look at every joint.", StepCautions.OPENING));
    steps.add(
        new Step(
            Stage.BEFORE,
            String.format("Run the pump for %.0f s.", test.primeTime()),
            StepCautions.BRIDGED_PUMP));
    steps.add(new Step(Stage.BEFORE, "Stop the pump and press Space at that moment.", ""));
    if (!test.clamped().isEmpty()) {
      String hoses = String.join(" and ", test.clamped().stream().sorted().toList());
      steps.add(
          new Step(
              Stage.CLAMPING,
              "At once, clamp " + hoses + ", then press Clamps on.",
              StepCautions.CLAMPS));
    }
    steps.add(
        new Step(
            Stage.READING,
            "Read every 30 s for two minutes, then each minute: Space, the value, Enter.",
            ""));
    steps.add(
        new Step(
            Stage.DONE,
            "After ten minutes look at the joints again, and note what is wet.",
            StepCautions.RELIEVE));
    return steps;
  }

  /** Where a test is. */
  static Stage stage(HoldTest test, boolean running, boolean clampsOn) {
    if (!running) {
      return test.log().readings().isEmpty() ? Stage.BEFORE : Stage.DONE;
    }
    return test.clamped().isEmpty() || clampsOn ? Stage.READING : Stage.CLAMPING;
  }
}
