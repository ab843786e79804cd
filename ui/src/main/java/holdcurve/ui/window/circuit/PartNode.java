package holdcurve.ui.window.circuit;

import holdcurve.ui.schematic.Drawing.Placed;
import holdcurve.ui.schematic.PartLabel;
import holdcurve.ui.window.frame.Sign;
import holdcurve.ui.window.job.PressureFormat;
import holdcurve.ui.window.symbol.SymbolNodes;
import java.util.List;
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

  /** Of the tint where a fault is certain; the words above it stay readable [-]. */
  private static final double STRONGEST = 0.55;

  /** Below this nothing is tinted or written, as in the list of suspects [-]. */
  private static final double NEGLIGIBLE = 0.01;

  /** No ranking is surer than this [%]. */
  private static final long SUREST = 99;

  /** Width and height of the words for a chance [px at scale 1]. */
  private static final double CHANCE = 60;

  private static final double LETTERS = 14;

  private final Rectangle halo = new Rectangle();
  private final Rectangle tint = new Rectangle();
  private final Text chance = new Text();
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
    tint.getStyleClass().add("hc-tint");
    tint.setVisible(false);
    chance.getStyleClass().add("hc-chance");
    chance.setVisible(false);
    getChildren().addAll(halo, tint, content, drop, chance);
    setTranslateX(placed.x());
    setTranslateY(placed.y());
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.BUTTON);
    setAccessibleText(PartWords.title(placed.part()) + " " + figure);
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
    for (Rectangle around : List.of(halo, tint)) {
      around.setX(bounds.getMinX() - ROOM);
      around.setY(bounds.getMinY() - ROOM);
      around.setWidth(bounds.getWidth() + 2 * ROOM);
      around.setHeight(bounds.getHeight() + 2 * ROOM);
      around.setArcWidth(10);
      around.setArcHeight(10);
    }
    chance.setWrappingWidth(CHANCE);
    chance.setTextAlignment(TextAlignment.CENTER);
    chance.setX((bounds.getMinX() + bounds.getMaxX() - CHANCE) / 2);
    switch (placed.stand()) {
      case BELOW -> chance.setY(bounds.getMaxY() + ROOM + LETTERS);
      case ALONG -> {
        chance.setX(bounds.getMinX());
        chance.setY(bounds.getMinY() - ROOM);
      }
      default -> chance.setY(bounds.getMinY() - ROOM - 3);
    }
    drop.setLayoutX(bounds.getMaxX() - 12);
    drop.setLayoutY(bounds.getMinY() - 3);
  }

  /** Moves it from its place while it is dragged. */
  void shift(double right, double down) {
    setTranslateX(placed.x() + right);
    setTranslateY(placed.y() + down);
    setViewOrder(right == 0 && down == 0 ? 0 : -1);
  }

  /** Id of its part. */
  String part() {
    return placed.part().id();
  }

  /** How strong the tint for a probability is [-]. */
  static double tint(double probability) {
    return STRONGEST * Math.sqrt(probability);
  }

  /** Shows how likely a fault is here [-]. */
  void tinted(double probability) {
    boolean worth = probability >= NEGLIGIBLE;
    tint.setVisible(worth);
    chance.setVisible(worth);
    if (worth) {
      tint.setOpacity(tint(probability));
      chance.setText(Math.min(SUREST, Math.round(100 * probability)) + " %");
      setAccessibleText(getAccessibleText() + ", " + chance.getText());
    }
  }

  void choose(boolean chosen) {
    pseudoClassStateChanged(CHOSEN, chosen);
  }

  void light(boolean lit) {
    pseudoClassStateChanged(LIT, lit);
    drop.setVisible(lit);
  }
}
