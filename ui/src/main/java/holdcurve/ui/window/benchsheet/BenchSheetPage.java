package holdcurve.ui.window.benchsheet;

import holdcurve.ui.window.frame.Actions;
import holdcurve.ui.window.frame.Desk;
import holdcurve.ui.window.frame.FileKind;
import holdcurve.ui.window.frame.Page;
import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.control.MenuItem;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** Injectors compared: on a flow bench, in the car by the drop of the gauge, and sorted in sets. */
public final class BenchSheetPage implements Page {
  private static final String DROP_TEST = "Drop test in the car";

  /** Share of the width that the table takes [-]. */
  private static final double TABLE_SHARE = 0.56;

  /** So that the bars beside it can still be read [-]. */
  private static final double MOST_SHARE = 0.6;

  /** What its headings need, in sizes of the text. */
  private static final double TABLE_LETTERS = 40;

  private final BenchSheetModel sheet;
  private final DropTestModel drops;
  private final Desk desk;
  private final TabPane content = new TabPane();
  private final SheetTablePane table;
  private final DropTestPane dropTest;
  private final MatchedSetsPane sets;
  private final HistoryPane history;

  public BenchSheetPage(BenchSheetModel sheet, DropTestModel drops, Desk desk) {
    this.sheet = sheet;
    this.drops = drops;
    this.desk = desk;
    table =
        new SheetTablePane(
            sheet, new SheetTablePane.Ways(this::open, this::paste, this::save, this::draw));
    dropTest = new DropTestPane(drops, this::open, this::paste);
    sets = new MatchedSetsPane(sheet);
    history = new HistoryPane(sheet, this::openEarlier);
    content.setId("bench-tabs");
    content.setTabClosingPolicy(TabPane.TabClosingPolicy.UNAVAILABLE);
    content
        .getTabs()
        .addAll(
            new Tab("Flow bench", flowBench()),
            whenSelected("Matched sets", sets),
            whenSelected("History", history),
            whenSelected(DROP_TEST, dropTest));
  }

  /** A tab that is filled when it is first turned to: tables of fields take long to lay out. */
  private static Tab whenSelected(String title, Node content) {
    Tab tab = new Tab(title);
    tab.setOnSelectionChanged(event -> tab.setContent(content));
    return tab;
  }

  private Node flowBench() {
    BorderPane pane = new BorderPane();
    table
        .prefWidthProperty()
        .bind(
            Bindings.min(
                content.widthProperty().multiply(MOST_SHARE),
                Bindings.max(
                    content.widthProperty().multiply(TABLE_SHARE),
                    desk.looks().textSizeProperty().multiply(TABLE_LETTERS))));
    table.setMinWidth(0);
    table.fitTo(desk.looks().textSizeProperty().get());
    desk.looks()
        .textSizeProperty()
        .addListener((property, before, now) -> table.fitTo(now.intValue()));
    SheetSays says = new SheetSays(sheet);
    says.setMinWidth(0);
    says.setPrefWidth(0);
    HBox.setHgrow(says, Priority.ALWAYS);
    pane.setId("bench-sheet");
    pane.setTop(new SheetVerdict(sheet));
    pane.setCenter(new HBox(table, says));
    return pane;
  }

  private boolean isDropTest() {
    return content.getSelectionModel().getSelectedItem().getText().equals(DROP_TEST);
  }

  @Override
  public String title() {
    return "Bench sheet";
  }

  @Override
  public String topic() {
    return isDropTest() ? DROP_TEST : title();
  }

  @Override
  public Node content() {
    return content;
  }

  @Override
  public List<MenuItem> actions() {
    return List.of(
        Actions.of("Read a sheet or a drop test …", Actions.onShortcut(KeyCode.B), this::open),
        Actions.of(
            "Paste a sheet or a drop test",
            new KeyCodeCombination(
                KeyCode.V, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN),
            this::paste),
        Actions.of(
            "Another injector, or another round", Actions.onShortcut(KeyCode.I), this::addRow),
        Actions.of("Put the drops into the job", Actions.onShortcut(KeyCode.J), sheet::takeDrops),
        Actions.of("Put the drop test's result into the job", null, drops::takeResult),
        Actions.of("Save the sheet …", null, this::save),
        Actions.of("Print the sheet for the customer …", null, this::draw),
        Actions.of(
            "Flow bench, matched sets, history or drop test",
            Actions.onShortcut(KeyCode.T),
            this::turn));
  }

  private void turn() {
    int next = (content.getSelectionModel().getSelectedIndex() + 1) % content.getTabs().size();
    content.getSelectionModel().select(next);
    focus();
  }

  private void open() {
    if (isDropTest()) {
      desk.dialogs()
          .choose(FileKind.DROP_TEST, desk.jobs().fileProperty().get())
          .ifPresent(drops::open);
    } else {
      desk.dialogs().chooseBenchSheet(desk.jobs().fileProperty().get()).ifPresent(sheet::open);
    }
  }

  private void openEarlier() {
    desk.dialogs().chooseBenchSheet(desk.jobs().fileProperty().get()).ifPresent(sheet::addEarlier);
  }

  private void save() {
    desk.dialogs()
        .save(FileKind.BENCH_SHEET, desk.jobs().fileProperty().get(), "injectors.csv")
        .ifPresent(sheet::save);
  }

  private void draw() {
    desk.dialogs()
        .save(FileKind.DRAWN_SHEET, desk.jobs().fileProperty().get(), "injectors.pdf")
        .ifPresent(file -> sheet.draw(file, desk.dialogs()::show));
  }

  private void paste() {
    String clip = Clipboard.getSystemClipboard().getString();
    String text = clip == null ? "" : clip;
    if (isDropTest()) {
      drops.paste(text);
    } else {
      sheet.paste(text);
    }
  }

  private void addRow() {
    if (isDropTest()) {
      drops.addRound();
    } else {
      sheet.addRow();
      table.focusLast();
    }
  }

  /** What stands in a tab can take the keyboard only once the tabs are laid out. */
  @Override
  public void focus() {
    content.applyCss();
    switch (content.getSelectionModel().getSelectedIndex()) {
      case 1 -> sets.focusFirst();
      case 2 -> history.focusFirst();
      case 3 -> dropTest.focusFirst();
      default -> table.focusFirst();
    }
  }
}
