package holdcurve.ui.window.frame;

import javafx.scene.Node;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;

/**
 * Undo and redo from within a field: what was typed there comes first, and where nothing of that is
 * left, the last change of the job. A field by itself takes the keys and does nothing then.
 */
final class UndoKeys {
  private UndoKeys() {}

  static void passOn(Node root, Undoing undoing) {
    root.addEventFilter(
        KeyEvent.KEY_PRESSED,
        event -> {
          if (event.isShortcutDown() && event.getTarget() instanceof TextInputControl field) {
            boolean redo =
                event.getCode() == KeyCode.Y || event.getCode() == KeyCode.Z && event.isShiftDown();
            boolean undo = event.getCode() == KeyCode.Z && !event.isShiftDown();
            if (undo && !field.isUndoable()) {
              undoing.undo();
              event.consume();
            } else if (redo && !field.isRedoable()) {
              undoing.redo();
              event.consume();
            }
          }
        });
  }
}
