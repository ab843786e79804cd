package holdcurve.ui.window.repaircheck;

import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The buttons under the plot, and how the holds lie to the pass limit. */
final class CheckActions extends VBox {
  private final Button check = new Button("Check the last holds (F6)");

  CheckActions(RepairCheckModel model) {
    Label pass = new Label();
    pass.setId("pass");
    pass.setWrapText(true);
    pass.setMinHeight(USE_PREF_SIZE);
    Runnable update = () -> pass.setText(String.join(" ", model.passSentences()));
    model.checkProperty().addListener((property, before, now) -> update.run());
    model.unit().addListener((property, before, now) -> update.run());
    check.setId("check");
    check.setOnAction(event -> model.check());
    Button report = new Button("Write the report");
    report.setId("report");
    report.setOnAction(event -> model.report());
    Label said = new Label();
    said.getStyleClass().addAll("hc-muted", "hc-small");
    said.textProperty().bind(model.saidProperty());
    said.setWrapText(true);
    HBox.setHgrow(said, Priority.ALWAYS);
    check.setMinWidth(Region.USE_PREF_SIZE);
    report.setMinWidth(Region.USE_PREF_SIZE);
    HBox buttons = new HBox(check, report, said);
    buttons.setStyle("-fx-spacing: 0.7em; -fx-alignment: center-left;");
    getStyleClass().add("hc-check-actions");
    getChildren().addAll(pass, buttons, new RepairNote(model));
  }

  void focusCheck() {
    check.requestFocus();
  }
}
