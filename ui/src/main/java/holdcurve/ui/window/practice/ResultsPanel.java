package holdcurve.ui.window.practice;

import holdcurve.ui.practice.PracticeResults.Result;
import holdcurve.ui.window.frame.FileDialogs;
import holdcurve.ui.window.frame.FileKind;
import holdcurve.ui.window.frame.Texts;
import javafx.beans.binding.Bindings;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What was scored here, newest first; a class's files can be added. */
final class ResultsPanel extends VBox {
  ResultsPanel(PracticeModel model, FileDialogs dialogs) {
    setId("practice-results");
    getStyleClass().add("hc-practice-rows");
    TableView<Result> table = new TableView<>(model.log().all());
    table.setId("results-table");
    table.setAccessibleText("Results, newest first");
    table.setPlaceholder(Texts.aside("No results yet. They appear here after a debrief."));
    add(table, "Mark", "mark", 130);
    add(table, "Car", "exercise", 250);
    add(table, "Level", "level", 80);
    add(table, "Score", "score", 80);
    add(table, "Odds (60)", "odds", 125);
    add(table, "Tests (20)", "tests", 125);
    add(table, "Repair (20)", "repair", 135);
    add(table, "Minutes", "minutes_used", 105);
    add(table, "Right", "right", 80);
    VBox.setVgrow(table, Priority.ALWAYS);
    Button save = new Button("Save as CSV …");
    save.setId("results-save");
    save.setOnAction(
        event ->
            dialogs.save(FileKind.SCORES, null, "class-results.csv").ifPresent(model::saveResults));
    save.disableProperty().bind(Bindings.isEmpty(model.log().all()));
    Button add = new Button("Add from a file …");
    add.setId("results-add");
    add.setOnAction(event -> dialogs.choose(FileKind.SCORES, null).ifPresent(model::addResults));
    Label told = new Label();
    told.textProperty().bind(model.saved());
    FlowPane row = new FlowPane(save, add, told);
    row.getStyleClass().add("hc-buttons");
    getChildren().addAll(table, row);
  }

  private static void add(TableView<Result> table, String name, String column, double width) {
    TableColumn<Result, String> shown = new TableColumn<>(name);
    shown.setCellValueFactory(row -> new ReadOnlyStringWrapper(row.getValue().in(column)));
    shown.setPrefWidth(width);
    shown.setSortable(false);
    table.getColumns().add(shown);
  }
}
