package holdcurve.ui.window.frame;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.MenuItem;

/** One page of the window. */
public interface Page {
  /** Short name, as the list of pages shows it. */
  String title();

  /** What of it is in front, to find its chapter in the guide; the title for all of it. */
  default String topic() {
    return title();
  }

  /** What the page shows; always the same node. */
  Node content();

  /** Whether there is nothing on it without an open job. */
  default boolean needsJob() {
    return true;
  }

  /** Entries it adds to the menu "Page", with their keys. */
  default List<MenuItem> actions() {
    return List.of();
  }

  /** Keys that stand in no menu, each with what it does. */
  default List<KeyUse> keys() {
    return List.of();
  }

  /**
   * A key and what it does.
   *
   * @param key as it is written on keyboards
   */
  record KeyUse(String key, String use) {}

  /** Puts the keyboard where work on this page starts. */
  default void focus() {
    content().requestFocus();
  }
}
