package holdcurve.ui.window.help;

import holdcurve.ui.theme.Appearance;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;

/** A window beside the work, with its looks; Escape closes it. */
final class SideWindow {
  private SideWindow() {}

  static Stage of(String title, Parent content, Appearance looks, double width, double height) {
    Scene scene = new Scene(content, width, height);
    looks.dress(scene);
    Stage stage = new Stage();
    stage.setTitle(title + " – Holdcurve");
    stage.getIcons().add(Appearance.icon());
    stage.setScene(scene);
    scene.setOnKeyPressed(
        event -> {
          if (event.getCode() == KeyCode.ESCAPE) {
            stage.close();
          }
        });
    return stage;
  }
}
