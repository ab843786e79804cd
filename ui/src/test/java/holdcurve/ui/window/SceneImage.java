package holdcurve.ui.window;

import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.ui.window.frame.Pictures;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import javafx.scene.Scene;
import javafx.stage.Stage;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** Writes what a scene shows to a PNG file. */
public final class SceneImage {
  private SceneImage() {}

  /** A picture of a window at a size, which must show something. */
  public static void write(Stage stage, Path file, int width, int height) throws Exception {
    settled(
        () -> {
          stage.setX(0);
          stage.setY(0);
          stage.setWidth(width);
          stage.setHeight(height);
        });
    settled(() -> write(stage.getScene(), file));
    assertTrue(Files.size(file) > 10_000, file + " is nearly empty");
  }

  private static void settled(Runnable work) throws Exception {
    FxToolkit.setupFixture(work::run);
    WaitForAsyncUtils.waitForFxEvents();
  }

  public static void write(Scene scene, Path file) {
    try {
      Files.createDirectories(file.getParent());
      Files.write(file, Pictures.png(scene.snapshot(null)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
