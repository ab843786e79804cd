package holdcurve.ui.window.cases;

import holdcurve.casebook.CaseEntry;
import holdcurve.casebook.KnownAnswer;
import holdcurve.common.message.PartName;
import holdcurve.record.job.Repair;
import java.util.Optional;
import java.util.function.Function;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.collections.transformation.SortedList;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableRow;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/** All cases that the search leaves, one a row. */
final class CaseList {
  /** Width of a letter [px]. */
  private static final double LETTER = 14;

  /** Letters of a column that must be seen whole, such as a date. */
  private static final double LEAST = 8;

  private final CasesModel model;
  private final TableView<CaseEntry> table = new TableView<>();
  private String chosen = "";

  CaseList(CasesModel model) {
    this.model = model;
    table.setId("cases");
    table.setAccessibleText("Cases");
    table.getStyleClass().add("hc-cases");
    SortedList<CaseEntry> sorted = new SortedList<>(model.entries());
    sorted.comparatorProperty().bind(table.comparatorProperty());
    table.setItems(sorted);
    table.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN);
    Label nothing = new Label("No case fits this search.");
    nothing.getStyleClass().add("hc-muted");
    table.setPlaceholder(nothing);
    column("Date", CaseEntry::date, 8);
    column("Car", CaseEntry::car, 19);
    column("State", entry -> entry.state().words(), 10.5);
    column("Verdict", entry -> entry.answer().map(KnownAnswer::words).orElse(""), 16);
    column("Last repair", entry -> entry.repair().map(CaseList::repair).orElse(""), 14);
    column("Proved", entry -> entry.proof().words(), 10.5);
    table.setRowFactory(view -> row());
    table.addEventFilter(
        KeyEvent.KEY_PRESSED,
        event -> {
          if (event.getCode() == KeyCode.ENTER) {
            open();
            event.consume();
          }
        });
    table
        .getSelectionModel()
        .selectedItemProperty()
        .addListener(
            (property, before, now) -> {
              if (now != null) {
                chosen = now.file().toString();
              }
            });
    model.shownProperty().addListener((property, before, now) -> chooseAgain());
  }

  private TableRow<CaseEntry> row() {
    TableRow<CaseEntry> row = new TableRow<>();
    row.setOnMouseClicked(
        event -> {
          if (event.getClickCount() == 2 && !row.isEmpty()) {
            open();
          }
        });
    return row;
  }

  /** After the list was read anew, the choice is still the user's. */
  private void chooseAgain() {
    table.getItems().stream()
        .filter(entry -> entry.file().toString().equals(chosen))
        .findFirst()
        .ifPresent(table.getSelectionModel()::select);
  }

  private void column(String title, Function<CaseEntry, String> words, double letters) {
    TableColumn<CaseEntry, String> column = new TableColumn<>(title);
    column.setCellValueFactory(cell -> new ReadOnlyStringWrapper(words.apply(cell.getValue())));
    column.setPrefWidth(LETTER * letters);
    column.setMinWidth(LETTER * Math.min(letters, LEAST));
    table.getColumns().add(column);
  }

  private static String repair(Repair repair) {
    String what = repair.part().isEmpty() ? repair.note() : PartName.of(repair.part());
    return (repair.date() + " " + what).strip();
  }

  void open() {
    chosen().ifPresent(model::open);
  }

  Optional<CaseEntry> chosen() {
    return Optional.ofNullable(table.getSelectionModel().getSelectedItem());
  }

  ReadOnlyObjectProperty<CaseEntry> chosenProperty() {
    return table.getSelectionModel().selectedItemProperty();
  }

  TableView<CaseEntry> table() {
    return table;
  }
}
