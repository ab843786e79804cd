package holdcurve.ui.window.plot;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.input.ZoomEvent;

/**
 * Brings a part of a chart nearer: Ctrl with the wheel, or two fingers, about the pointer. Dragging
 * moves what shows, a double click shows all again.
 */
final class Zoom {
  private static final double STEP = 1.25;

  private final List<ScaleAxis> across;
  private final ScaleAxis up;
  private double dragX;
  private double dragY;

  /**
   * @param across time axes, which move together
   * @param up pressure axis of the chart
   */
  Zoom(Node chart, List<ScaleAxis> across, ScaleAxis up) {
    this.across = across;
    this.up = up;
    chart.addEventHandler(ScrollEvent.SCROLL, this::turned);
    chart.addEventHandler(
        ZoomEvent.ZOOM,
        event -> {
          about(event.getSceneX(), event.getSceneY(), event.getZoomFactor());
          event.consume();
        });
    chart.addEventHandler(MouseEvent.MOUSE_PRESSED, this::pressed);
    chart.addEventHandler(MouseEvent.MOUSE_DRAGGED, this::dragged);
  }

  private void turned(ScrollEvent event) {
    if (event.isShortcutDown() && event.getDeltaY() != 0) {
      about(event.getSceneX(), event.getSceneY(), event.getDeltaY() > 0 ? STEP : 1 / STEP);
      event.consume();
    }
  }

  private void about(double x, double y, double factor) {
    ScaleAxis time = across.get(0);
    double right = time.sceneToLocal(x, y).getX() / time.getWidth();
    double below = up.sceneToLocal(x, y).getY() / up.getHeight();
    across.forEach(axis -> axis.zoom(factor, right));
    up.zoom(factor, 1 - below);
  }

  /** A step nearer, about a place in units of the axes. */
  void nearer(double time, double pressure) {
    step(STEP, time, pressure);
  }

  /** A step back. */
  void farther(double time, double pressure) {
    step(1 / STEP, time, pressure);
  }

  private void step(double factor, double time, double pressure) {
    across.forEach(axis -> axis.zoom(factor, axis.share(time)));
    up.zoom(factor, up.share(pressure));
  }

  void showAll() {
    across.forEach(ScaleAxis::showAll);
    up.showAll();
  }

  /** Moves what shows, where this place lies outside it. */
  void reveal(double time, double pressure) {
    across.forEach(axis -> axis.reveal(time));
    up.reveal(pressure);
  }

  private void pressed(MouseEvent event) {
    dragX = event.getSceneX();
    dragY = event.getSceneY();
    if (event.getButton() == MouseButton.PRIMARY && event.getClickCount() == 2) {
      showAll();
    }
  }

  private void dragged(MouseEvent event) {
    if (event.getButton() == MouseButton.PRIMARY && isZoomed()) {
      double right = (event.getSceneX() - dragX) / across.get(0).getWidth();
      double below = (event.getSceneY() - dragY) / up.getHeight();
      across.forEach(axis -> axis.move(-right));
      up.move(below);
      dragX = event.getSceneX();
      dragY = event.getSceneY();
    }
  }

  /** Whether less than all shows. */
  private boolean isZoomed() {
    return across.get(0).isZoomed() || up.isZoomed();
  }
}
