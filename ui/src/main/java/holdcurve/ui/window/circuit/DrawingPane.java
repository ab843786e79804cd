package holdcurve.ui.window.circuit;

import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;

/** The circuit drawn; parts are chosen in it. */
final class DrawingPane extends CircuitPaper {
  private final CircuitModel model;

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
      node.setOnMousePressed(
          event -> {
            model.chosenProperty().set(node.part());
            focus();
          });
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
