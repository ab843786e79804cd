package holdcurve.ui.window.frame;

import holdcurve.ui.window.job.OpenJobModel;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** What went wrong, in one sentence, until it is dismissed or put right. */
final class Banner extends HBox {
  Banner(OpenJobModel model) {
    setId("banner");
    getStyleClass().add("hc-banner");
    Label sentence = new Label();
    sentence.setWrapText(true);
    sentence.setMinHeight(Region.USE_PREF_SIZE);
    sentence.textProperty().bind(model.problemProperty());
    sentence.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(sentence, Priority.ALWAYS);
    Button close = new Button("Close (Esc)");
    close.setMinWidth(Region.USE_PREF_SIZE);
    close.setOnAction(event -> model.dismissProblem());
    getChildren().addAll(Sign.WARNING.node(), sentence, close);
    visibleProperty().bind(model.problemProperty().isNotEmpty());
    managedProperty().bind(visibleProperty());
  }
}
