package holdcurve.ui.window;

import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Control;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TabPane;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;

/** The pieces of a page, each shown alone for a moment, so that none takes long at first. */
final class Pieces {
  /** More controls than this are taken apart. */
  private static final int MOST = 6;

  private Pieces() {}

  /**
   * A child of a border pane stays: taken out, it would lose its side.
   *
   * @param stage shows a node that has no parent
   * @param steps receives one step a piece; after it the piece is where it was. A step does nothing
   *     while the page is on the screen
   */
  static void of(Node node, Consumer<Node> stage, Consumer<Runnable> steps) {
    if (node instanceof ScrollPane scroll) {
      of(scroll.getContent(), stage, steps);
    } else if (node instanceof TitledPane titled) {
      of(titled.getContent(), stage, steps);
    } else if (node instanceof TabPane tabs) {
      tabs.getTabs().forEach(tab -> of(tab.getContent(), stage, steps));
    } else if (node instanceof BorderPane border) {
      border.getChildren().forEach(child -> of(child, stage, steps));
    } else if (node instanceof Pane pane) {
      pane.getChildren().forEach(child -> ofChild(pane, child, stage, steps));
    }
  }

  private static void ofChild(
      Pane pane, Node child, Consumer<Node> stage, Consumer<Runnable> steps) {
    int controls = controls(child);
    if (controls > MOST) {
      of(child, stage, steps);
    } else if (controls > 0) {
      steps.accept(() -> lend(pane, child, stage));
    }
  }

  private static void lend(Pane pane, Node child, Consumer<Node> stage) {
    int at = pane.getChildren().indexOf(child);
    if (at >= 0 && pane.getScene() == null) {
      pane.getChildren().set(at, new Region());
      stage.accept(child);
      pane.getChildren().set(at, child);
    }
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
