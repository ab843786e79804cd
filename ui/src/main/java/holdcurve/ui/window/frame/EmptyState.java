package holdcurve.ui.window.frame;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;
import javafx.scene.text.TextAlignment;

/** What stands in the window while no job is open. */
final class EmptyState extends VBox {
  private final Button choose = new Button("Choose a job …");

  EmptyState(Runnable open) {
    setId("empty");
    getStyleClass().add("hc-empty");
    Label title = new Label("No job is open");
    title.getStyleClass().add("hc-large");
    Label how =
        new Label(
            "A job is a circuit, its hold tests and their gauge readings, in a file whose name ends"
                + " in .job.json. Choose one, press Ctrl+O, or drop it here.");
    how.setWrapText(true);
    how.setMaxWidth(620);
    how.setTextAlignment(TextAlignment.CENTER);
    choose.setOnAction(event -> open.run());
    choose.setDefaultButton(true);
    getChildren().addAll(title, how, choose);
  }
}
