package holdcurve.ui.window.whatif;

import holdcurve.ui.window.frame.Actions;
import holdcurve.ui.window.frame.Desk;
import holdcurve.ui.window.frame.FileKind;
import holdcurve.ui.window.frame.OutOfDate;
import holdcurve.ui.window.frame.Page;
import holdcurve.ui.window.frame.Pictures;
import holdcurve.ui.window.frame.Texts;
import holdcurve.ui.window.plot.SeveralHoldsPanel;
import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Changes tried, before and after side by side; and what to order. */
public final class WhatIfPage implements Page {
  /** Share of the width that the changes take, within their own limits [-]. */
  private static final double CHANGES_SHARE = 0.28;

  /** Least width of it [sizes of the text]. */
  private static final double CHANGES_LETTERS = 21;

  /** Share of the width that the parts list takes [-]. */
  private static final double PARTS_SHARE = 0.5;

  private final WhatIfModel model;
  private final Desk desk;
  private final TabPane tabs = new TabPane();
  private final BorderPane content = new BorderPane(tabs);
  private final SeveralHoldsPanel both = new SeveralHoldsPanel();
  private final ChangePanel changes;
  private final ComparisonTable table;
  private final Label note = Texts.words("", "hc-small");
  private final TriedBar tried;
  private final PartsTable parts;

  public WhatIfPage(WhatIfModel model, Desk desk) {
    this.model = model;
    this.desk = desk;
    changes = new ChangePanel(model);
    table = new ComparisonTable(model.jobs().pressures());
    tried = new TriedBar(model);
    parts = new PartsTable(model.parts(), this::openPrices, this::savePrices);
    tabs.setTabClosingPolicy(TabPane.TabClosingPolicy.UNAVAILABLE);
    tabs.setId("what-if");
    content.setTop(OutOfDate.ranking(desk, tabs));
    tabs.getTabs().addAll(new Tab("Try a change", changing()), new Tab("What to order", order()));
    content.addEventFilter(KeyEvent.KEY_PRESSED, this::pressed);
    note.setId("what-if-note");
    note.getStyleClass().add("hc-legend");
    note.managedProperty().bind(note.textProperty().isNotEmpty());
    model.holdsProperty().addListener((property, was, now) -> show());
    model.figuresProperty().addListener((property, was, now) -> show());
    model.jobs().pressures().unitProperty().addListener((property, was, now) -> show());
    show();
  }

  /** Undo is of what is tried here; only where nothing is, of the job. */
  private void pressed(KeyEvent event) {
    boolean undo = event.isShortcutDown() && !event.isShiftDown() && event.getCode() == KeyCode.Z;
    if (undo && !(event.getTarget() instanceof TextInputControl) && model.takeBack()) {
      event.consume();
    }
  }

  private Node changing() {
    BorderPane pane = new BorderPane();
    changes
        .prefWidthProperty()
        .bind(
            Bindings.max(
                content.widthProperty().multiply(CHANGES_SHARE),
                desk.looks().textSizeProperty().multiply(CHANGES_LETTERS)));
    VBox.setVgrow(both, Priority.ALWAYS);
    Pictures.offer(both, () -> both, desk, "what-if");
    HBox.setHgrow(tried, Priority.ALWAYS);
    Button repair = new Button("Note the repair");
    repair.setId("to-repair");
    repair.getStyleClass().add("accent");
    repair.setMinWidth(Region.USE_PREF_SIZE);
    repair.setOnAction(event -> desk.page().set("Repair check"));
    HBox top = new HBox(tried, repair);
    top.getStyleClass().add("hc-page-top");
    VBox middle = new VBox(top, both, table, note);
    middle.setMinWidth(0);
    pane.setCenter(middle);
    pane.setRight(changes);
    return pane;
  }

  private Node order() {
    parts.prefWidthProperty().bind(content.widthProperty().multiply(PARTS_SHARE));
    parts.setMinWidth(0);
    OrderPane order = new OrderPane(model.parts(), model.jobs().pressures());
    order.setMinWidth(0);
    order.setPrefWidth(0);
    HBox.setHgrow(order, Priority.ALWAYS);
    return new HBox(parts, order);
  }

  private void show() {
    table.show(model.holdsProperty().get(), model.figuresProperty().get());
    tried.show();
    note.setText(
        model.figuresProperty().get() == null
            ? ""
            : String.join(" ", model.figuresProperty().get().notes()));
    if (model.holdsProperty().get() != null) {
      both.show(model.bothPlots());
    }
  }

  private void openPrices() {
    desk.dialogs()
        .choose(FileKind.PRICES, desk.jobs().fileProperty().get())
        .ifPresent(model.parts()::open);
  }

  private void savePrices() {
    desk.dialogs()
        .save(FileKind.PRICES, desk.jobs().fileProperty().get(), "prices.json")
        .ifPresent(model.parts()::save);
  }

  private void turn() {
    tabs.getSelectionModel().select(1 - tabs.getSelectionModel().getSelectedIndex());
    focus();
  }

  @Override
  public String title() {
    return "What if";
  }

  @Override
  public Node content() {
    return content;
  }

  @Override
  public List<KeyUse> keys() {
    return List.of(
        new KeyUse("\u2190 \u2192", "In the plot: from reading to reading"),
        new KeyUse("+ \u2212 0", "In the plot: nearer, farther, all of it"));
  }

  @Override
  public List<MenuItem> actions() {
    return List.of(
        Actions.of("Back to as it is", Actions.onShortcut(KeyCode.BACK_SPACE), model::reset),
        Actions.of("Try a change, or what to order", Actions.onShortcut(KeyCode.T), this::turn),
        Actions.of("Copy the picture", Pictures.COPY, () -> Pictures.copy(both)),
        Actions.of("Save the picture …", null, () -> Pictures.save(both, desk, "what-if")),
        Actions.of("Open a price list …", Actions.onShortcut(KeyCode.L), this::openPrices),
        Actions.of("Save the prices …", null, this::savePrices),
        Actions.of(
            "Work out the cheapest order",
            new KeyCodeCombination(KeyCode.F7),
            () -> {
              tabs.getSelectionModel().select(1);
              model.parts().order();
            }));
  }

  /** What stands in a tab can take the keyboard only once the tabs are laid out. */
  @Override
  public void focus() {
    content.applyCss();
    if (tabs.getSelectionModel().getSelectedIndex() == 0) {
      changes.focusFirst();
    } else {
      parts.focusFirst();
    }
  }
}
