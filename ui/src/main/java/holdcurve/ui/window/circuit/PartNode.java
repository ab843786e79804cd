package holdcurve.ui.window.circuit;

import holdcurve.part.Hose;
import holdcurve.ui.window.circuit.Drawing.Placed;
import holdcurve.ui.window.frame.Sign;
import holdcurve.ui.window.job.Pressures;
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
  private static final double LINE = 15;
  private static final double LETTER = 7.2;

  private final Placed placed;
  private final Group symbol;
  private final Rectangle halo = new Rectangle();
  private final Node drop = Sign.DROP.node();

  PartNode(Placed placed, Pressures pressures) {
    this.placed = placed;
    symbol = Symbols.of(placed);
    String figure = PartWords.figure(placed.part(), pressures);
    double width = Math.max(74, placed.width() - 8);
    String id = PartWords.wrapped(placed.part().id(), (int) (width / LETTER));
    Text name = label(figure.isEmpty() ? id : id + "\n" + figure, width);
    Group content = new Group(symbol, name);
    place(name);
    surround(content.getBoundsInLocal());
    drop.setVisible(false);
    getStyleClass().add("hc-part");
    getChildren().addAll(halo, content, drop);
    setTranslateX(placed.x());
    setTranslateY(placed.y());
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.BUTTON);
    setAccessibleText(placed.part().kind().title() + " " + placed.part().id() + " " + figure);
  }

  private static Text label(String words, double width) {
    Text text = new Text(words);
    text.getStyleClass().add("hc-part-name");
    text.setWrappingWidth(width);
    text.setTextAlignment(TextAlignment.CENTER);
    return text;
  }

  private void place(Text name) {
    name.setX(-name.getWrappingWidth() / 2);
    Bounds shape = symbol.getBoundsInLocal();
    boolean clampable = placed.part().kind() == Hose.KIND;
    switch (placed.stand()) {
      case ABOVE -> name.setY(shape.getMinY() - 6 - (name.getText().lines().count() - 1) * LINE);
      case ALONG -> name.setVisible(false);
      case BELOW -> name.setY(shape.getMaxY() + 14);
      default -> name.setY(clampable ? 50 : Math.max(shape.getMaxY(), 6) + 14);
    }
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
