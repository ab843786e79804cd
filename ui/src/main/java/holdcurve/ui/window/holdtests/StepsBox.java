package holdcurve.ui.window.holdtests;

import holdcurve.job.HoldTest;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** How this hold is done; the step that is due stands out, with its caution. */
final class StepsBox extends VBox {
  private final HoldTestsModel model;

  StepsBox(HoldTestsModel model) {
    this.model = model;
    setId("steps");
    getStyleClass().add("hc-steps");
    model.testProperty().addListener((property, before, now) -> update());
    model.watch().runningProperty().addListener((property, before, now) -> update());
    model.clampsOnProperty().addListener((property, before, now) -> update());
    update();
  }

  private void update() {
    getChildren().clear();
    HoldTest test = model.testProperty().get();
    if (test == null) {
      return;
    }
    HoldSteps.Stage stage =
        HoldSteps.stage(
            test, model.watch().runningProperty().get(), model.clampsOnProperty().get());
    int number = 1;
    for (HoldSteps.Step step : HoldSteps.of(test)) {
      boolean due = step.stage() == stage;
      Label what = words(number++ + "  " + step.what(), due ? "hc-step-due" : "hc-muted");
      getChildren().add(what);
      if (due && !step.caution().isEmpty()) {
        getChildren().add(words(step.caution(), "hc-caution", "hc-small"));
      }
    }
  }

  static Label words(String text, String... styles) {
    Label label = new Label(text);
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    label.setMaxWidth(Double.MAX_VALUE);
    label.getStyleClass().addAll(styles);
    return label;
  }
}
