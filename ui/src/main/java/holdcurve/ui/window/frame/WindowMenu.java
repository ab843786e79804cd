package holdcurve.ui.window.frame;

import holdcurve.ui.theme.Looks;
import holdcurve.ui.window.job.JobModel;
import javafx.beans.binding.BooleanBinding;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.input.KeyCombination;

/** Everything that can be done, with its keys. */
final class WindowMenu extends MenuBar {
  private final Menu page = new Menu("_Page");

  /**
   * @param open asks for a job and opens it
   * @param quit closes the window
   */
  WindowMenu(JobModel model, Looks looks, Runnable open, Runnable quit) {
    BooleanBinding noJob = model.jobProperty().isNull();
    MenuItem reload = item("_Read again and rank", "F5", model::reload);
    reload.disableProperty().bind(noJob);
    page.disableProperty().bind(noJob);
    Menu file =
        new Menu(
            "_File",
            null,
            item("_Open a job …", "Shortcut+O", open),
            reload,
            new SeparatorMenuItem(),
            item("_Quit", "Shortcut+Q", quit));
    Menu view =
        new Menu(
            "_View",
            null,
            item("Light or _dark", "Shortcut+D", looks::switchTheme),
            new SeparatorMenuItem(),
            item("_Larger text", "Shortcut+PLUS", looks::enlarge),
            item("_Smaller text", "Shortcut+MINUS", looks::shrink),
            item("_Usual text", "Shortcut+0", looks::usualSize));
    getMenus().addAll(file, view, page);
  }

  /** Offers what the page on view can do. */
  void show(Page shown) {
    page.getItems().setAll(shown.actions());
  }

  private static MenuItem item(String text, String keys, Runnable what) {
    MenuItem item = new MenuItem(text);
    item.setMnemonicParsing(true);
    item.setAccelerator(KeyCombination.valueOf(keys));
    item.setOnAction(event -> what.run());
    return item;
  }
}
