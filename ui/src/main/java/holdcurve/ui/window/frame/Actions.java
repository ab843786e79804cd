package holdcurve.ui.window.frame;

import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;

/** Entries of the menu "Page". */
public final class Actions {
  private Actions() {}

  /** An entry that does something, also by its keys. */
  public static MenuItem of(String text, KeyCombination keys, Runnable what) {
    MenuItem item = new MenuItem(text);
    item.setAccelerator(keys);
    item.setOnAction(event -> what.run());
    return item;
  }

  /** A key together with the one for shortcuts. */
  public static KeyCombination onShortcut(KeyCode key) {
    return new KeyCodeCombination(key, KeyCombination.SHORTCUT_DOWN);
  }
}
