package holdcurve.ui.window.circuit;

import holdcurve.ui.schematic.Drawing;
import holdcurve.ui.window.job.PressureFormat;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Point2D;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Pane;
import javafx.scene.shape.Line;
import javafx.scene.transform.Scale;

/** A circuit drawn as large as there is room, with a line of words in the corner. */
class CircuitPaper extends Pane {
  /** Largest scale for each pixel of the text: large text goes with a large drawing. */
  private static final double LARGEST = 0.13;

  /** Room for the words in the corner [sizes of the text]. */
  private static final double WORDS = 1.6;

  private final Group paper = new Group();
  private final Scale scale = new Scale(1, 1);
  private final Label legend;
  private final List<PartNode> nodes = new ArrayList<>();
  private Drawing drawing;

  CircuitPaper(Label legend) {
    this.legend = legend;
    getStyleClass().add("hc-drawing");
    legend.getStyleClass().addAll("hc-muted", "hc-small");
    paper.getTransforms().add(scale);
    paper.setManaged(false);
    getChildren().addAll(paper, legend);
  }

  /**
   * @param drawingOrNull null for an empty paper
   */
  void draw(Drawing drawingOrNull, PressureFormat pressures) {
    drawing = drawingOrNull;
    nodes.clear();
    paper.getChildren().clear();
    requestLayout();
    if (drawing == null) {
      return;
    }
    for (Drawing.Wire wire : drawing.wires()) {
      Line line = new Line(wire.fromX(), wire.fromY(), wire.toX(), wire.toY());
      line.getStyleClass().add("hc-sym");
      paper.getChildren().add(line);
    }
    for (Drawing.Placed placed : drawing.parts()) {
      PartNode node = new PartNode(placed, pressures);
      nodes.add(node);
      paper.getChildren().add(node);
    }
  }

  /** The parts, in circuit order. */
  List<PartNode> nodes() {
    return nodes;
  }

  /** Puts something on the paper, above the parts. */
  void put(Node node) {
    paper.getChildren().add(node);
  }

  /** Where something on the screen lies on the paper. */
  Point2D onPaper(double sceneX, double sceneY) {
    return paper.sceneToLocal(sceneX, sceneY);
  }

  @Override
  protected void layoutChildren() {
    super.layoutChildren();
    legend.relocate(14, 8);
    if (drawing != null) {
      double letter = legend.getFont().getSize();
      double top = WORDS * letter;
      double fit =
          Math.min(
              LARGEST * letter,
              Math.min(getWidth() / drawing.width(), (getHeight() - top) / drawing.height()));
      scale.setX(fit);
      scale.setY(fit);
      paper.setLayoutX((getWidth() - fit * drawing.width()) / 2);
      paper.setLayoutY(top + (getHeight() - top - fit * drawing.height()) / 2);
    }
  }
}
