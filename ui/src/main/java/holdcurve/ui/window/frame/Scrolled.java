package holdcurve.ui.window.frame;

import javafx.scene.Node;
import javafx.scene.control.ScrollPane;

/** Content that may be longer than its place, and never wider. */
public final class Scrolled {
  private Scrolled() {}

  /** Scrolls down only. */
  public static ScrollPane down(Node content) {
    ScrollPane scroll = new ScrollPane(content);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    return scroll;
  }

  /** Likewise, and the keyboard passes on to what is in it. */
  public static ScrollPane downAround(Node content) {
    ScrollPane scroll = down(content);
    scroll.setFocusTraversable(false);
    return scroll;
  }
}
