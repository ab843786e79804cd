package holdcurve.ui.window.benchsheet;

import holdcurve.ui.window.frame.Desk;
import holdcurve.ui.window.frame.Page;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.MenuItem;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** A flow-bench sheet: filled in on the left, judged on the right. */
public final class BenchSheetPage implements Page {
  /** Share of the width that the table takes [-]. */
  private static final double TABLE_SHARE = 0.47;

  private final BenchSheetModel model;
  private final Desk desk;
  private final BorderPane content = new BorderPane();
  private final SheetTablePane table;

  public BenchSheetPage(BenchSheetModel model, Desk desk) {
    this.model = model;
    this.desk = desk;
    table = new SheetTablePane(model, this::open, this::paste);
    table.prefWidthProperty().bind(content.widthProperty().multiply(TABLE_SHARE));
    table.setMinWidth(0);
    SheetSays says = new SheetSays(model);
    says.setMinWidth(0);
    says.setPrefWidth(0);
    HBox.setHgrow(says, Priority.ALWAYS);
    content.setId("bench-sheet");
    content.setTop(new SheetVerdict(model));
    content.setCenter(new HBox(table, says));
  }

  @Override
  public String title() {
    return "Bench sheet";
  }

  @Override
  public Node content() {
    return content;
  }

  @Override
  public List<MenuItem> actions() {
    return List.of(
        action("Read a bench sheet …", onShortcut(KeyCode.B), this::open),
        action(
            "Paste a sheet",
            new KeyCodeCombination(
                KeyCode.V, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN),
            this::paste),
        action("Another injector", onShortcut(KeyCode.I), this::addRow),
        action("Put the drops into the job", onShortcut(KeyCode.J), model::takeDrops));
  }

  private static KeyCombination onShortcut(KeyCode key) {
    return new KeyCodeCombination(key, KeyCombination.SHORTCUT_DOWN);
  }

  private static MenuItem action(String text, KeyCombination keys, Runnable what) {
    MenuItem item = new MenuItem(text);
    item.setAccelerator(keys);
    item.setOnAction(event -> what.run());
    return item;
  }

  private void open() {
    desk.dialogs().chooseBenchSheet(desk.jobs().fileProperty().get()).ifPresent(model::open);
  }

  private void paste() {
    String text = Clipboard.getSystemClipboard().getString();
    model.paste(text == null ? "" : text);
  }

  private void addRow() {
    model.addRow();
    table.focusLast();
  }

  @Override
  public void focus() {
    table.focusFirst();
  }
}
