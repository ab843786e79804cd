package holdcurve.ui.window.frame;

import holdcurve.ui.theme.Looks;
import holdcurve.ui.window.job.OpenJobModel;
import javafx.beans.binding.BooleanBinding;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;

/** Everything that can be done, with its keys. */
final class WindowMenu extends MenuBar {
  private final Menu page = new Menu("_Page");

  /**
   * @param open asks for a job and opens it
   * @param quit closes the window
   */
  WindowMenu(OpenJobModel model, Looks looks, Runnable open, Runnable quit) {
    BooleanBinding noJob = model.jobProperty().isNull();
    MenuItem reload =
        item("_Read again and rank", new KeyCodeCombination(KeyCode.F5), model::reload);
    reload.disableProperty().bind(noJob);
    page.disableProperty().bind(noJob);
    Menu file =
        new Menu(
            "_File",
            null,
            item("_Open a job …", onShortcut(KeyCode.O), open),
            reload,
            new SeparatorMenuItem(),
            item("_Quit", onShortcut(KeyCode.Q), quit));
    Menu view =
        new Menu(
            "_View",
            null,
            item("Light or _dark", onShortcut(KeyCode.D), looks::switchTheme),
            new SeparatorMenuItem(),
            item("_Larger text", onShortcut(KeyCode.PLUS), looks::enlarge),
            item("_Smaller text", onShortcut(KeyCode.MINUS), looks::shrink),
            item("_Usual text", onShortcut(KeyCode.DIGIT0), looks::usualSize));
    getMenus().addAll(file, view, page);
  }

  /** Offers what the page on view can do. */
  void show(Page shown) {
    page.getItems().setAll(shown.actions());
  }

  private static KeyCombination onShortcut(KeyCode key) {
    return new KeyCodeCombination(key, KeyCombination.SHORTCUT_DOWN);
  }

  private static MenuItem item(String text, KeyCombination keys, Runnable what) {
    MenuItem item = new MenuItem(text);
    item.setMnemonicParsing(true);
    item.setAccelerator(keys);
    item.setOnAction(event -> what.run());
    return item;
  }
}
