package holdcurve.ui.window.frame;

import holdcurve.ui.window.job.OpenJobModel;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** Says that the open job is a shipped example, which stays as it is. */
final class ExampleStrip extends HBox {
  ExampleStrip(OpenJobModel model, Runnable saveAs) {
    setId("example");
    getStyleClass().add("hc-rescue");
    Label words = Texts.words("Example. Try anything: it stays as shipped.");
    words.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(words, Priority.ALWAYS);
    Button save = new Button("Save as a job of your own …");
    save.setMinWidth(USE_PREF_SIZE);
    save.setOnAction(event -> saveAs.run());
    getChildren().addAll(words, save);
    visibleProperty().bind(model.exampleProperty());
    managedProperty().bind(visibleProperty());
  }
}
