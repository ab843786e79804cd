package holdcurve.ui.window.circuit;

import holdcurve.ui.schematic.Drawing;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Line;
import javafx.scene.transform.Scale;

/** The circuit drawn as large as there is room. */
final class DrawingPane extends Pane {
  /** Largest scale for each pixel of the text: large text goes with a large drawing. */
  private static final double LARGEST = 0.13;

  private final CircuitModel model;
  private final Group paper = new Group();
  private final Scale scale = new Scale(1, 1);
  private final Label legend = legend();
  private final List<PartNode> nodes = new ArrayList<>();

  DrawingPane(CircuitModel model) {
    this.model = model;
    setId("drawing");
    getStyleClass().add("hc-drawing");
    paper.getTransforms().add(scale);
    paper.setManaged(false);
    getChildren().add(paper);
    getChildren().add(legend);
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
    legend.getStyleClass().addAll("hc-muted", "hc-small");
    legend.setGraphicTextGap(8);
    return legend;
  }

  private void draw() {
    boolean hadFocus = nodes.stream().anyMatch(PartNode::isFocused);
    nodes.clear();
    paper.getChildren().clear();
    Drawing drawing = model.drawingProperty().get();
    if (drawing == null) {
      return;
    }
    for (Drawing.Wire wire : drawing.wires()) {
      Line line = new Line(wire.fromX(), wire.fromY(), wire.toX(), wire.toY());
      line.getStyleClass().add("hc-sym");
      paper.getChildren().add(line);
    }
    for (Drawing.Placed placed : drawing.parts()) {
      PartNode node = new PartNode(placed, model.pressures());
      node.setOnMousePressed(
          event -> {
            model.chosenProperty().set(placed.part().id());
            focus();
          });
      node.focusedProperty()
          .addListener(
              (property, before, now) -> {
                if (now) {
                  model.chosenProperty().set(placed.part().id());
                }
              });
      nodes.add(node);
      paper.getChildren().add(node);
    }
    mark();
    if (hadFocus) {
      focus();
    }
    requestLayout();
  }

  private void mark() {
    for (PartNode node : nodes) {
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
    nodes.stream()
        .filter(node -> node.part().equals(model.chosenProperty().get()))
        .findFirst()
        .ifPresent(PartNode::requestFocus);
  }

  @Override
  protected void layoutChildren() {
    super.layoutChildren();
    legend.relocate(14, 8);
    Drawing drawing = model.drawingProperty().get();
    if (drawing != null) {
      double largest = LARGEST * legend.getFont().getSize();
      double fit =
          Math.min(largest, Math.min(getWidth() / drawing.width(), getHeight() / drawing.height()));
      scale.setX(fit);
      scale.setY(fit);
      paper.setLayoutX((getWidth() - fit * drawing.width()) / 2);
      paper.setLayoutY((getHeight() - fit * drawing.height()) / 2);
    }
  }
}
