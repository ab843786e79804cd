package holdcurve.ui.window;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Control;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.Pane;

/**
 * A page taken apart, so that no piece of it takes long to show. It can't be put together again.
 */
final class Pieces {
  /** More controls than this are taken apart. */
  private static final int MOST = 6;

  private Pieces() {}

  /**
   * @param into receives the pieces, which have no parents any more
   */
  static void of(Node node, List<Node> into) {
    if (node == null) {
      return;
    }
    if (controls(node) <= MOST) {
      into.add(node);
    } else if (node instanceof ScrollPane scroll) {
      Node content = scroll.getContent();
      scroll.setContent(null);
      of(content, into);
      into.add(scroll);
    } else if (node instanceof TitledPane titled) {
      Node content = titled.getContent();
      titled.setContent(null);
      of(content, into);
      into.add(titled);
    } else if (node instanceof TabPane tabs) {
      tabs.getTabs().forEach(tab -> of(tab, into));
      into.add(tabs);
    } else if (node instanceof Pane pane) {
      List<Node> children = List.copyOf(pane.getChildren());
      pane.getChildren().clear();
      children.forEach(child -> of(child, into));
    } else {
      into.add(node);
    }
  }

  private static void of(Tab tab, List<Node> into) {
    Node content = tab.getContent();
    tab.setContent(null);
    of(content, into);
  }

  private static int controls(Node node) {
    int own = node instanceof Control ? 1 : 0;
    if (node instanceof ScrollPane scroll && scroll.getContent() != null) {
      return own + controls(scroll.getContent());
    }
    if (node instanceof TitledPane titled && titled.getContent() != null) {
      return own + controls(titled.getContent());
    }
    if (node instanceof TabPane tabs) {
      return own
          + tabs.getTabs().stream()
              .filter(tab -> tab.getContent() != null)
              .mapToInt(tab -> controls(tab.getContent()))
              .sum();
    }
    return node instanceof Parent parent
        ? own + parent.getChildrenUnmodifiable().stream().mapToInt(Pieces::controls).sum()
        : own;
  }
}
