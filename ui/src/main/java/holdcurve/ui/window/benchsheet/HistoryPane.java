package holdcurve.ui.window.benchsheet;

import holdcurve.bench.flowsheet.BenchSheet;
import holdcurve.bench.flowsheet.SetHistory;
import holdcurve.ui.window.frame.Scrolled;
import holdcurve.ui.window.frame.Sign;
import holdcurve.ui.window.frame.Texts;
import java.util.List;
import java.util.Optional;
import javafx.collections.ListChangeListener;
import javafx.geometry.HPos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The set of the sheet at earlier visits to the bench, and who wanders. */
final class HistoryPane extends VBox {
  private final BenchSheetModel model;
  private final Button add;
  private final VBox shown = new VBox();

  /**
   * @param open asks for an earlier sheet and reads it
   */
  HistoryPane(BenchSheetModel model, Runnable open) {
    this.model = model;
    getStyleClass().add("hc-matched");
    shown.setId("set-history");
    shown.getStyleClass().add("hc-matched-sets");
    add = SheetTablePane.button("Add an earlier sheet …", open);
    FlowPane buttons =
        new FlowPane(add, SheetTablePane.button("Begin again", model.earlier()::clear));
    buttons.getStyleClass().add("hc-sheet-bench");
    ScrollPane scroll = Scrolled.down(shown);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren()
        .addAll(
            Texts.words(
                "Earlier sheets of the set on the flow bench's sheet. Injectors are known by their"
                    + " marks, or by number where they have none."),
            buttons,
            scroll);
    model.reportProperty().addListener((property, before, now) -> show());
    model.earlier().addListener((ListChangeListener<BenchSheet>) change -> show());
    show();
  }

  private void show() {
    Optional<SetHistory> history = model.history();
    if (history.isEmpty()) {
      shown.getChildren().setAll(Texts.words(nothing(), "hc-muted"));
      return;
    }
    shown
        .getChildren()
        .setAll(Texts.heading("Per cent from the middle of the set"), table(history.get()));
    List<String> said = history.get().said();
    for (int i = 0; i < said.size(); i++) {
      Label sentence = Texts.words(said.get(i));
      boolean wanders =
          i < history.get().lines().size()
              && history.get().lines().get(i).trend() != SetHistory.Trend.STEADY;
      sentence.setGraphic(wanders ? Sign.WARNING.node() : null);
      shown.getChildren().add(sentence);
    }
  }

  private String nothing() {
    if (model.reportProperty().get() == null) {
      return "Fill in or read this year's sheet first, under Flow bench.";
    }
    return model.earlier().isEmpty()
        ? "No earlier sheet yet."
        : "No injector stands on two of the sheets. Give each its mark, or the same number.";
  }

  private static GridPane table(SetHistory history) {
    GridPane grid = new GridPane();
    grid.getStyleClass().add("hc-history");
    grid.add(strong("Mark"), 0, 0);
    for (int v = 0; v < history.visits().size(); v++) {
      SetHistory.Visit visit = history.visits().get(v);
      grid.add(SheetTablePane.head(visit.date(), visit.state().word()), v + 1, 0);
    }
    int row = 1;
    for (SetHistory.Line line : history.lines()) {
      grid.add(strong(line.mark()), 0, row);
      for (int v = 0; v < line.departures().size(); v++) {
        Label cell =
            new Label(
                line.departures().get(v).map(d -> SetHistory.percent(d.middle())).orElse("–"));
        GridPane.setHalignment(cell, HPos.LEFT);
        grid.add(cell, v + 1, row);
      }
      row++;
    }
    return grid;
  }

  private static Label strong(String text) {
    Label label = new Label(text);
    label.getStyleClass().add("hc-strong");
    return label;
  }

  void focusFirst() {
    add.requestFocus();
  }
}
