package holdcurve.ui.window.frame;

import holdcurve.ui.window.job.OpenJobModel;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** How far the ranking is, and a way to stop it. */
final class ProgressStrip extends HBox {
  ProgressStrip(OpenJobModel model) {
    setId("progress");
    getStyleClass().add("hc-progress");
    ProgressBar bar = new ProgressBar();
    bar.progressProperty().bind(model.ranking().progressProperty());
    bar.setPrefWidth(320);
    bar.setMinWidth(160);
    Label step = new Label();
    step.textProperty().bind(model.ranking().stepProperty());
    step.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(step, Priority.ALWAYS);
    Button stop = new Button("Stop (Esc)");
    stop.setMinWidth(Region.USE_PREF_SIZE);
    stop.setOnAction(event -> model.ranking().cancel());
    getChildren().addAll(bar, step, stop);
    visibleProperty().bind(model.ranking().busyProperty());
    managedProperty().bind(visibleProperty());
  }
}
