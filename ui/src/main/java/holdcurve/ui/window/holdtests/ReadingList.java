package holdcurve.ui.window.holdtests;

import holdcurve.record.log.LogEvent;
import holdcurve.record.log.Reading;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import javafx.application.Platform;
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
  private List<Reading> shown = List.of();
  private int chosen = -1;

  /**
   * @param bring buttons that bring readings from elsewhere
   */
  ReadingList(HoldTestsModel model, Button... bring) {
    this.model = model;
    getStyleClass().add("hc-readings");
    table.setId("readings");
    table.setAccessibleText("Readings");
    table.setItems(model.readings());
    table
        .getSelectionModel()
        .selectedIndexProperty()
        .addListener((property, before, now) -> choose(now.intValue()));
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
    getChildren().addAll(table, buttons(bring));
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

  /** What is new is chosen and seen; else the choice stays where it was. */
  private void fill() {
    List<Reading> before = shown;
    shown = List.copyOf(model.readings());
    if (shown.isEmpty()) {
      return;
    }
    boolean grown = shown.size() > before.size();
    int row = grown ? added(before, shown) : Math.max(0, Math.min(chosen, shown.size() - 1));
    chosen = row;
    table.getSelectionModel().select(row);
    reveal(row);
  }

  /** Whatever the table makes of its choice while its rows are exchanged is not the user's. */
  private void choose(int row) {
    if (!model.isTaking()) {
      chosen = row;
    }
  }

  /** The last of those that were not there before. */
  private static int added(List<Reading> before, List<Reading> now) {
    Set<Reading> known = new HashSet<>(before);
    for (int i = now.size() - 1; i > 0; i--) {
      if (!known.contains(now.get(i))) {
        return i;
      }
    }
    return 0;
  }

  /** With the one before it, for comparison; again once the new rows are laid out. */
  private void reveal(int row) {
    table.scrollTo(Math.max(0, row - 1));
    if (table.getScene() != null) {
      Platform.runLater(() -> table.scrollTo(Math.max(0, row - 1)));
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

  private FlowPane buttons(Button... bring) {
    FlowPane buttons =
        new FlowPane(
            button("Correct", model.entry()::startCorrecting),
            button("Doubtful (D)", model.edits()::toggleDoubt),
            button("Delete", model.edits()::delete));
    buttons
        .getChildren()
        .forEach(
            button ->
                button
                    .disableProperty()
                    .bind(table.getSelectionModel().selectedItemProperty().isNull()));
    buttons.getChildren().addAll(bring);
    buttons.getStyleClass().addAll("hc-buttons", "hc-compact");
    return buttons;
  }

  private Button button(String text, Consumer<Reading> what) {
    Button button = new Button(text);
    button.getStyleClass().add("hc-small");
    button.setOnAction(event -> withChosen(what));
    return button;
  }
}
