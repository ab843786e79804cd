package holdcurve.ui.window.holdtests;

import holdcurve.log.LogEvent;
import holdcurve.log.Reading;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.value.ObservableValue;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.Callback;

/** The readings taken so far, and what can be done with one. */
final class ReadingList extends VBox {
  private final HoldTestsModel model;
  private final TableView<Reading> table = new TableView<>();
  private int filled;

  ReadingList(HoldTestsModel model) {
    this.model = model;
    getStyleClass().add("hc-readings");
    table.setId("readings");
    table.setItems(model.readings());
    table.setColumnResizePolicy(TableView.CONSTRAINED_RESIZE_POLICY_FLEX_LAST_COLUMN);
    table.setPlaceholder(placeholder());
    fixed(column("Time", reading -> Entry.clock(reading.time())), 0.28);
    fixed(column("Gauge", reading -> model.pressures().text(reading.pressure())), 0.36);
    column("Note", ReadingList::remark);
    table.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
    table.setOnMouseClicked(
        event -> {
          if (event.getClickCount() == 2) {
            withChosen(model.entry()::startCorrecting);
          }
        });
    setVgrow(table, Priority.ALWAYS);
    table.setMinHeight(60);
    getChildren().addAll(table, buttons());
    model.readings().addListener((ListChangeListener<Reading>) change -> fill());
    model.pressures().unitProperty().addListener((property, before, now) -> table.refresh());
    fill();
  }

  private static Label placeholder() {
    Label nothing =
        new Label(
            "No reading yet. Start the watch with Space, type readings, paste or import them.");
    nothing.setWrapText(true);
    nothing.getStyleClass().add("hc-muted");
    nothing.setStyle("-fx-padding: 1em;");
    return nothing;
  }

  private void fill() {
    int before = table.getSelectionModel().getSelectedIndex();
    boolean grown = model.readings().size() > filled;
    filled = model.readings().size();
    int last = model.readings().size() - 1;
    if (last >= 0) {
      int row = grown || before < 0 ? last : Math.min(before, last);
      table.getSelectionModel().select(row);
      table.scrollTo(Math.max(0, row - 1));
    }
  }

  private static String remark(Reading reading) {
    String event = reading.event().map(LogEvent::text).orElse("");
    String phase = reading.time() < 0 ? "pump runs" : "";
    String words = event.isEmpty() ? phase : event;
    return reading.doubtful() ? (words.isEmpty() ? "doubtful" : "doubtful, " + words) : words;
  }

  private TableColumn<Reading, String> column(String title, Callback<Reading, String> words) {
    TableColumn<Reading, String> column = new TableColumn<>(title);
    column.setCellValueFactory(cell -> text(words.call(cell.getValue())));
    column.setSortable(false);
    column.setReorderable(false);
    table.getColumns().add(column);
    return column;
  }

  /**
   * @param share of the width [-]
   */
  private void fixed(TableColumn<Reading, String> column, double share) {
    column.minWidthProperty().bind(table.widthProperty().multiply(share));
    column.maxWidthProperty().bind(column.minWidthProperty());
  }

  private static ObservableValue<String> text(String words) {
    return new ReadOnlyStringWrapper(words);
  }

  private void key(KeyEvent event) {
    switch (event.getCode()) {
      case ENTER, F2 -> take(event, model.entry()::startCorrecting);
      case DELETE, BACK_SPACE -> take(event, model.edits()::delete);
      case D -> {
        if (!event.isShortcutDown()) {
          take(event, model.edits()::toggleDoubt);
        }
      }
      default -> {}
    }
  }

  private void take(KeyEvent event, Consumer<Reading> what) {
    event.consume();
    withChosen(what);
  }

  /** Does something with the chosen reading, if there is one. */
  void withChosen(Consumer<Reading> what) {
    Optional.ofNullable(table.getSelectionModel().getSelectedItem()).ifPresent(what);
  }

  private FlowPane buttons() {
    FlowPane buttons =
        new FlowPane(
            button("Correct", model.entry()::startCorrecting),
            button("Doubtful (D)", model.edits()::toggleDoubt),
            button("Delete", model.edits()::delete));
    buttons.getStyleClass().add("hc-buttons");
    buttons.disableProperty().bind(table.getSelectionModel().selectedItemProperty().isNull());
    return buttons;
  }

  private Button button(String text, Consumer<Reading> what) {
    Button button = new Button(text);
    button.getStyleClass().add("hc-small");
    button.setOnAction(event -> withChosen(what));
    return button;
  }
}
