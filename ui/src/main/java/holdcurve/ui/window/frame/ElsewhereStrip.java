package holdcurve.ui.window.frame;

import holdcurve.ui.window.job.OpenJobModel;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** Says that the open job is being worked on in another window. */
final class ElsewhereStrip extends HBox {
  ElsewhereStrip(OpenJobModel model, Runnable saveAs) {
    setId("elsewhere");
    getStyleClass().add("hc-rescue");
    Label words =
        new Label(
            "Another window works on this job. What you change here can only be saved under another"
                + " name.");
    words.setWrapText(true);
    words.setMinHeight(Region.USE_PREF_SIZE);
    words.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(words, Priority.ALWAYS);
    Button again = button("Look again", model::reload);
    again.disableProperty().bind(model.unsaved());
    getChildren()
        .addAll(Sign.WARNING.node(), words, again, button("Save under another name…", saveAs));
    visibleProperty().bind(model.elsewhereProperty());
    managedProperty().bind(visibleProperty());
  }

  private static Button button(String text, Runnable what) {
    Button button = new Button(text);
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setOnAction(event -> what.run());
    return button;
  }
}
