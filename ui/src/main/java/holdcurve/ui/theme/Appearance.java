package holdcurve.ui.theme;

import javafx.application.Application;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Scene;
import javafx.scene.image.Image;

/** How the window looks: theme and size of text, which the person at it may change. */
public final class Appearance {
  /** Usual size of text [px]: read at arm's length. */
  public static final int USUAL_SIZE = 16;

  private static final int STEP = 2;
  private static final int SMALLEST = 12;
  private static final int LARGEST = 28;

  /** Of a screen on which the usual size is right [px]. */
  private static final double USUAL_HEIGHT = 1080;

  private final ObjectProperty<Theme> theme = new SimpleObjectProperty<>(Theme.LIGHT);
  private final ReadOnlyIntegerWrapper textSize = new ReadOnlyIntegerWrapper(USUAL_SIZE);
  private int usual = USUAL_SIZE;

  /** The drawing that stands for the program on the desktop. */
  public static Image icon() {
    return new Image(Appearance.class.getResource("icon.png").toExternalForm());
  }

  public ObjectProperty<Theme> themeProperty() {
    return theme;
  }

  public Theme theme() {
    return theme.get();
  }

  /** Size of ordinary text [px]. */
  public ReadOnlyIntegerProperty textSizeProperty() {
    return textSize.getReadOnlyProperty();
  }

  public void switchTheme() {
    theme.set(theme.get().other());
  }

  /** High contrast, or back to light. */
  public void switchContrast() {
    theme.set(theme.get() == Theme.HIGH_CONTRAST ? Theme.LIGHT : Theme.HIGH_CONTRAST);
  }

  /**
   * @param size wanted [px]; kept within what can be read
   */
  public void setTextSize(int size) {
    textSize.set(Math.max(SMALLEST, Math.min(LARGEST, size)));
  }

  /**
   * Larger usual text on a screen of more points, which are smaller.
   *
   * @param height of the screen, as far as the desktop doesn't enlarge everything anyway [px]
   */
  public void suit(double height) {
    int size = STEP * (int) (USUAL_SIZE * height / USUAL_HEIGHT / STEP);
    usual = Math.max(USUAL_SIZE, Math.min(LARGEST, size));
    usualSize();
  }

  public void enlarge() {
    textSize.set(Math.min(LARGEST, textSize.get() + STEP));
  }

  public void shrink() {
    textSize.set(Math.max(SMALLEST, textSize.get() - STEP));
  }

  public void usualSize() {
    textSize.set(usual);
  }

  /** Gives {@code scene} these looks, now and after each change. */
  public void dress(Scene scene) {
    scene.getStylesheets().add(Appearance.class.getResource(Palette.STYLESHEET).toExternalForm());
    theme.addListener((property, before, now) -> paint(scene));
    textSize.addListener((property, before, now) -> size(scene));
    paint(scene);
    size(scene);
  }

  private void paint(Scene scene) {
    Application.setUserAgentStylesheet(theme.get().controlStylesheet());
    for (Theme other : Theme.values()) {
      scene.getRoot().getStyleClass().remove(other.styleClass());
    }
    scene.getRoot().getStyleClass().add(theme.get().styleClass());
  }

  private void size(Scene scene) {
    scene.getRoot().setStyle("-fx-font-size: " + textSize.get() + "px;");
  }
}
