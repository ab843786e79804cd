package holdcurve.ui.window.repaircheck;

import holdcurve.ui.window.frame.OutOfDate;
import holdcurve.ui.window.frame.Primary;
import holdcurve.ui.window.frame.Texts;
import java.nio.file.Path;
import java.util.function.Consumer;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** The buttons under the plot, and how the holds lie to the pass limit. */
final class CheckActions extends VBox {
  private final Button check = new Button("Check the last holds (F6)");

  /**
   * @param open shows a file in the program that the desktop has for it
   */
  CheckActions(RepairCheckModel model, Consumer<Path> open) {
    Label pass = new Label();
    pass.setId("pass");
    pass.setWrapText(true);
    pass.setMinHeight(USE_PREF_SIZE);
    Runnable update = () -> pass.setText(String.join(" ", model.passSentences()));
    model.checkProperty().addListener((property, before, now) -> update.run());
    model.unit().addListener((property, before, now) -> update.run());
    pass.managedProperty().bind(pass.textProperty().isNotEmpty());
    OutOfDate.dim(model.outdatedProperty(), pass);
    check.setId("check");
    check.setOnAction(event -> model.check());
    Button report = new Button("Write the report");
    report.setId("report");
    report.setOnAction(event -> model.report());
    Button show = new Button("Open report");
    show.setId("open-report");
    show.setOnAction(event -> open.accept(model.writtenProperty().get()));
    show.visibleProperty().bind(model.writtenProperty().isNotNull());
    show.managedProperty().bind(show.visibleProperty());
    Label said = Texts.words("", "hc-muted", "hc-small");
    said.setId("report-said");
    said.textProperty().bind(model.saidProperty());
    said.visibleProperty().bind(model.saidProperty().isNotEmpty());
    said.managedProperty().bind(said.visibleProperty());
    BooleanBinding proved = model.checkProperty().isNotNull().and(model.outdatedProperty().not());
    BooleanBinding written = model.writtenProperty().isNotNull().and(proved);
    BooleanBinding unproved =
        Bindings.createBooleanBinding(() -> model.unproved().isPresent(), model.jobProperty());
    Primary.when(model.checkProperty().isNull().and(unproved.not()), check);
    Primary.when(proved.and(written.not()), report);
    Primary.when(written, show);
    FlowPane buttons = new FlowPane(check, report, show);
    buttons.getStyleClass().add("hc-buttons");
    getStyleClass().add("hc-check-actions");
    getChildren().addAll(pass, buttons, said, new RepairNote(model));
  }

  void focusCheck() {
    check.requestFocus();
  }
}
