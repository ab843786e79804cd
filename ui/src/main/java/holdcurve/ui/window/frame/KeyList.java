package holdcurve.ui.window.frame;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** All keys, those of the menus and those that stand in none, over the page on view. */
final class KeyList extends VBox {
  private final FlowPane sections = new FlowPane();
  private final ScrollPane scroll = Scrolled.downAround(sections);
  private Node before;

  KeyList() {
    setId("keys");
    getStyleClass().add("hc-keys");
    sections.getStyleClass().add("hc-keys-sections");
    Button close = new Button("Close (Esc)");
    close.setMinWidth(USE_PREF_SIZE);
    close.setOnAction(event -> close());
    Label title = Texts.heading("Keys");
    title.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(title, Priority.ALWAYS);
    HBox head = new HBox(title, close);
    head.getStyleClass().add("hc-line");
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(head, scroll);
    setVisible(false);
    managedProperty().bind(visibleProperty());
  }

  /** Lists what the menus and pages have now. */
  void show(List<Menu> always, List<Page> pages) {
    sections.getChildren().clear();
    for (Menu menu : always) {
      section(menu.getText().replace("_", ""), menu.getItems(), List.of());
    }
    for (Page page : pages) {
      section("Page " + page.title(), page.actions(), page.keys());
    }
    before = getScene().getFocusOwner();
    setVisible(true);
    scroll.requestFocus();
  }

  private void section(String title, List<MenuItem> items, List<Page.KeyUse> others) {
    GridPane grid = new GridPane();
    grid.getStyleClass().add("hc-keys-grid");
    int row = 0;
    for (Page.KeyUse other : others) {
      grid.addRow(row++, Texts.words(other.key(), "hc-strong"), Texts.words(other.use()));
    }
    for (MenuItem item : items) {
      if (item.getAccelerator() != null) {
        grid.addRow(
            row++,
            Texts.words(item.getAccelerator().getDisplayText(), "hc-strong"),
            Texts.words(item.getText().replace("_", "")));
      }
    }
    if (row > 0) {
      sections.getChildren().add(new VBox(Texts.heading(title), grid));
    }
  }

  /** Back to where the keyboard was. */
  void close() {
    setVisible(false);
    if (before != null) {
      before.requestFocus();
    }
  }
}
