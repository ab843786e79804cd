package holdcurve.ui.window.holdtests;

import holdcurve.record.job.HoldTest;
import holdcurve.ui.window.frame.Texts;
import holdcurve.ui.window.job.PlannedSteps;
import javafx.scene.layout.VBox;

/** What is to be done now, with its caution; what is done is gone, what comes later waits. */
final class StepsBox extends VBox {
  private final HoldTestsModel model;

  StepsBox(HoldTestsModel model) {
    this.model = model;
    setId("steps");
    getStyleClass().add("hc-steps");
    model.hold().testProperty().addListener((property, before, now) -> update());
    model.hold().jobs().plannedProperty().addListener((property, before, now) -> update());
    model.watch().runningProperty().addListener((property, before, now) -> update());
    model.entry().clampsOnProperty().addListener((property, before, now) -> update());
    update();
  }

  private void update() {
    getChildren().clear();
    HoldTest test = model.hold().testProperty().get();
    if (test == null) {
      return;
    }
    HoldSteps.Stage stage =
        HoldSteps.stage(
            test, model.watch().runningProperty().get(), model.entry().clampsOnProperty().get());
    PlannedSteps planned = model.hold().jobs().plannedProperty().get();
    if (planned != null && planned.hold().equals(test.id()) && stage != HoldSteps.Stage.READING) {
      show(planned);
      return;
    }
    int number = 1;
    for (HoldSteps.Step step : HoldSteps.of(test)) {
      if (step.stage() == stage) {
        if (!step.caution().isEmpty()) {
          getChildren().add(Texts.words(step.caution(), "hc-caution", "hc-small"));
        }
        getChildren().add(Texts.words(number + "  " + step.what(), "hc-step-due"));
      }
      number++;
    }
  }

  /** All of it: the test was chosen from a plan, and may be no plain hold. */
  private void show(PlannedSteps planned) {
    getChildren().add(Texts.words(planned.name(), "hc-heading"));
    getChildren().add(Texts.caution(String.join(" ", planned.cautions())));
    int number = 1;
    for (String step : model.pressures().texts(planned.steps())) {
      getChildren().add(Texts.words(number++ + "  " + step));
    }
  }
}
