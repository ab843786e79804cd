package holdcurve.ui.window.frame;

import javafx.application.Platform;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.Scene;

/**
 * Keeps the keyboard where it was when what had it is built anew. Left alone, it would go to the
 * first field of the window, the title of the job, and the next reading typed would be the title.
 */
final class KeyboardPlace {
  private final Node root;
  private final Runnable otherwise;

  private KeyboardPlace(Node root, Runnable otherwise) {
    this.root = root;
    this.otherwise = otherwise;
  }

  /**
   * @param root of the window
   * @param otherwise puts the keyboard where it belongs if what had it is gone for good
   */
  static void keep(Node root, Runnable otherwise) {
    KeyboardPlace place = new KeyboardPlace(root, otherwise);
    root.sceneProperty()
        .addListener(
            (property, before, now) -> {
              if (before != null) {
                before.focusOwnerProperty().removeListener(place::moved);
              }
              if (now != null) {
                now.focusOwnerProperty().addListener(place::moved);
              }
            });
  }

  private void moved(ObservableValue<? extends Node> property, Node before, Node now) {
    if (before != null && (before.getScene() == null || before.isDisabled() || !shows(before))) {
      Platform.runLater(() -> back(before.getId()));
    }
  }

  private static boolean shows(Node node) {
    return node.isVisible() && (node.getParent() == null || shows(node.getParent()));
  }

  private void back(String id) {
    Scene scene = root.getScene();
    Node owner = scene == null ? null : scene.getFocusOwner();
    if (scene == null || owner != null && !(owner instanceof JobTitle)) {
      return;
    }
    Node again = id == null ? null : root.lookup("#" + id);
    if (again != null && shows(again) && !again.isDisabled()) {
      again.requestFocus();
    } else {
      root.requestFocus();
      otherwise.run();
    }
  }
}
