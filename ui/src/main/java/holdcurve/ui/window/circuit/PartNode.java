package holdcurve.ui.window.circuit;

import holdcurve.ui.schematic.Drawing.Placed;
import holdcurve.ui.schematic.PartLabel;
import holdcurve.ui.window.frame.Sign;
import holdcurve.ui.window.job.PressureFormat;
import javafx.css.PseudoClass;
import javafx.geometry.Bounds;
import javafx.scene.AccessibleRole;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;

/** One part in the drawing: symbol, name and figure; can be chosen, and lights up. */
final class PartNode extends Group {
  private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");
  private static final PseudoClass LIT = PseudoClass.getPseudoClass("lit");
  private static final double ROOM = 5;

  private final Placed placed;
  private final Rectangle halo = new Rectangle();
  private final Node drop = Sign.DROP.node();

  PartNode(Placed placed, PressureFormat pressures) {
    this.placed = placed;
    Group symbol = SymbolNodes.of(placed);
    String figure = PartWords.figure(placed.part(), pressures);
    Text name = label(PartLabel.of(placed, figure));
    Group content = new Group(symbol, name);
    surround(content.getBoundsInLocal());
    drop.setVisible(false);
    setId("part-" + placed.part().id());
    getStyleClass().add("hc-part");
    getChildren().addAll(halo, content, drop);
    setTranslateX(placed.x());
    setTranslateY(placed.y());
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.BUTTON);
    setAccessibleText(placed.part().kind().title() + " " + placed.part().id() + " " + figure);
  }

  private static Text label(PartLabel label) {
    Text text = new Text(String.join("\n", label.lines()));
    text.getStyleClass().add("hc-part-name");
    text.setWrappingWidth(label.width());
    text.setTextAlignment(TextAlignment.CENTER);
    text.setX(-label.width() / 2);
    text.setY(label.base());
    text.setVisible(label.shown());
    return text;
  }

  private void surround(Bounds bounds) {
    halo.getStyleClass().add("hc-halo");
    halo.setX(bounds.getMinX() - ROOM);
    halo.setY(bounds.getMinY() - ROOM);
    halo.setWidth(bounds.getWidth() + 2 * ROOM);
    halo.setHeight(bounds.getHeight() + 2 * ROOM);
    halo.setArcWidth(10);
    halo.setArcHeight(10);
    drop.setLayoutX(bounds.getMaxX() - 12);
    drop.setLayoutY(bounds.getMinY() - 3);
  }

  /** Id of its part. */
  String part() {
    return placed.part().id();
  }

  void choose(boolean chosen) {
    pseudoClassStateChanged(CHOSEN, chosen);
  }

  void light(boolean lit) {
    pseudoClassStateChanged(LIT, lit);
    drop.setVisible(lit);
  }
}
