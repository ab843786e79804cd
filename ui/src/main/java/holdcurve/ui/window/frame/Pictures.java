package holdcurve.ui.window.frame;

import holdcurve.file.SafeFile;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.SnapshotParameters;
import javafx.scene.control.ContextMenu;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;
import javafx.scene.input.Clipboard;
import javafx.scene.input.ClipboardContent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.transform.Transform;
import javax.imageio.ImageIO;

/** What a page shows, as a picture to paste or to keep. */
public final class Pictures {
  /** Finer than the screen, for print [-]. */
  private static final double SCALE = 2;

  /** Copies a picture. */
  public static final KeyCombination COPY =
      new KeyCodeCombination(KeyCode.C, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN);

  private Pictures() {}

  /** Offers a picture where the right button is pressed on a node. */
  public static void offer(Node on, Supplier<Node> picture, Desk desk, String name) {
    ContextMenu menu =
        new ContextMenu(
            Actions.of("Copy the picture", null, () -> copy(picture.get())),
            Actions.of("Save the picture …", null, () -> save(picture.get(), desk, name)));
    on.setOnContextMenuRequested(event -> menu.show(on, event.getScreenX(), event.getScreenY()));
  }

  /** Puts a picture on the clipboard. */
  public static void copy(Node shown) {
    ClipboardContent content = new ClipboardContent();
    content.putImage(image(shown));
    Clipboard.getSystemClipboard().setContent(content);
  }

  /**
   * Asks where, and writes a picture there.
   *
   * @param name proposed, without its ending
   */
  public static void save(Node shown, Desk desk, String name) {
    byte[] png = png(image(shown));
    desk.dialogs()
        .save(FileKind.PICTURE, desk.jobs().fileProperty().get(), name + ".png")
        .ifPresent(file -> write(file, png, desk));
  }

  private static void write(Path file, byte[] png, Desk desk) {
    desk.jobs()
        .work()
        .start(
            "Writing the picture",
            progress -> {
              SafeFile.write(file, png);
              return file;
            },
            written -> {});
  }

  private static WritableImage image(Node shown) {
    SnapshotParameters finer = new SnapshotParameters();
    finer.setTransform(Transform.scale(SCALE, SCALE));
    return shown.snapshot(finer, null);
  }

  /** An image as a file in the format PNG. */
  public static byte[] png(WritableImage image) {
    int width = (int) image.getWidth();
    int height = (int) image.getHeight();
    int[] pixels = new int[width * height];
    image
        .getPixelReader()
        .getPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
    BufferedImage picture = new BufferedImage(width, height, BufferedImage.TYPE_INT_ARGB);
    picture.setRGB(0, 0, width, height, pixels, 0, width);
    ByteArrayOutputStream png = new ByteArrayOutputStream();
    try {
      ImageIO.write(picture, "png", png);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return png.toByteArray();
  }
}
