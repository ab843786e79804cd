package holdcurve.ui.window.holdtests;

import holdcurve.job.HoldTest;
import holdcurve.ui.window.frame.Texts;
import javafx.scene.layout.VBox;

/** What is to be done now, with its caution; what is done is gone, what comes later waits. */
final class StepsBox extends VBox {
  private final HoldTestsModel model;

  StepsBox(HoldTestsModel model) {
    this.model = model;
    setId("steps");
    getStyleClass().add("hc-steps");
    model.hold().testProperty().addListener((property, before, now) -> update());
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
}
