package holdcurve.ui.window.circuit;

import holdcurve.ui.window.symbol.SymbolNodes;
import javafx.geometry.Point2D;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;

/** The circuit drawn; parts are chosen in it. */
final class DrawingPane extends CircuitPaper {
  /** A press that moves less than this is a click [px]. */
  private static final double CLICK = 8;

  private final CircuitModel model;
  private ContextMenu menu;
  private Point2D grabbed;
  private boolean dragging;

  DrawingPane(CircuitModel model) {
    super(legend());
    this.model = model;
    setId("drawing");
    setMinSize(200, 160);
    addEventFilter(KeyEvent.KEY_PRESSED, this::key);
    model.drawingProperty().addListener((property, before, now) -> draw());
    model.pressures().unitProperty().addListener((property, before, now) -> draw());
    model.chosenProperty().addListener((property, before, now) -> mark());
    model.litProperty().addListener((property, before, now) -> mark());
    draw();
  }

  private static Label legend() {
    Label legend =
        new Label(
            "a clamp may go here: tick it beside the readings of a hold", SymbolNodes.clampPoint());
    legend.setGraphicTextGap(8);
    return legend;
  }

  private void draw() {
    boolean hadFocus = nodes().stream().anyMatch(PartNode::isFocused);
    draw(model.drawingProperty().get(), model.pressures());
    for (PartNode node : nodes()) {
      node.setOnMousePressed(event -> press(node, event));
      node.setOnMouseDragged(event -> drag(node, event));
      node.setOnMouseReleased(event -> drop(node, event));
      node.focusedProperty()
          .addListener(
              (property, before, now) -> {
                if (now) {
                  model.chosenProperty().set(node.part());
                }
              });
    }
    mark();
    if (hadFocus) {
      focus();
    }
  }

  /** Offers a menu where the right button is pressed on a part. */
  void offer(ContextMenu offered) {
    menu = offered;
  }

  private void press(PartNode node, MouseEvent event) {
    model.chosenProperty().set(node.part());
    focus();
    grabbed = new Point2D(event.getSceneX(), event.getSceneY());
    dragging = false;
    if (event.getButton() == MouseButton.SECONDARY && menu != null) {
      menu.show(node, event.getScreenX(), event.getScreenY());
    } else if (menu != null) {
      menu.hide();
    }
  }

  private void drag(PartNode node, MouseEvent event) {
    dragging |= grabbed.distance(event.getSceneX(), event.getSceneY()) > CLICK;
    if (dragging && event.getButton() == MouseButton.PRIMARY) {
      Point2D from = onPaper(grabbed.getX(), grabbed.getY());
      Point2D to = onPaper(event.getSceneX(), event.getSceneY());
      node.shift(to.getX() - from.getX(), to.getY() - from.getY());
    }
  }

  /** A part let go over another goes to the place after that one. */
  private void drop(PartNode node, MouseEvent event) {
    if (!dragging) {
      return;
    }
    dragging = false;
    node.shift(0, 0);
    nodes().stream()
        .filter(other -> other != node)
        .filter(
            other ->
                other
                    .getBoundsInLocal()
                    .contains(other.sceneToLocal(event.getSceneX(), event.getSceneY())))
        .findFirst()
        .ifPresent(other -> model.moveAfter(node.part(), other.part()));
  }

  private void mark() {
    for (PartNode node : nodes()) {
      node.choose(node.part().equals(model.chosenProperty().get()));
      node.light(model.litProperty().get().contains(node.part()));
    }
  }

  private void key(KeyEvent event) {
    int step =
        switch (event.getCode()) {
          case LEFT, UP -> -1;
          case RIGHT, DOWN -> 1;
          default -> 0;
        };
    if (step != 0 && !event.isAltDown() && !event.isShortcutDown()) {
      model.go(step);
      focus();
      event.consume();
    }
  }

  /** Puts the keyboard on the chosen part, or the first. */
  void focus() {
    if (model.chosenProperty().get().isEmpty()) {
      model.go(1);
    }
    nodes().stream()
        .filter(node -> node.part().equals(model.chosenProperty().get()))
        .findFirst()
        .ifPresent(PartNode::requestFocus);
  }
}
