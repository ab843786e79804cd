package holdcurve.ui.window.symbol;

import holdcurve.ui.schematic.Drawing.Placed;
import holdcurve.ui.schematic.Drawing.Stand;
import holdcurve.ui.schematic.Mark;
import holdcurve.ui.schematic.Symbol;
import holdcurve.ui.schematic.Symbols;
import javafx.scene.Group;
import javafx.scene.shape.SVGPath;

/** Symbols as nodes, coloured by the stylesheet. */
public final class SymbolNodes {
  private SymbolNodes() {}

  public static Group of(Placed placed) {
    Group symbol = group(Symbols.of(placed));
    if (placed.stand() == Stand.LEFT) {
      symbol.setScaleX(-1);
    }
    return symbol;
  }

  public static Group clampPoint() {
    return group(Symbols.clampPoint());
  }

  /** A symbol by itself. */
  public static Group group(Symbol symbol) {
    Group group = new Group();
    symbol.marks().forEach(mark -> group.getChildren().add(node(mark)));
    return group;
  }

  private static SVGPath node(Mark mark) {
    SVGPath path = new SVGPath();
    path.setContent(mark.path());
    path.getStyleClass()
        .add(
            switch (mark.ink()) {
              case LINE, DASHED -> "hc-sym";
              case FILLED -> "hc-sym-filled";
              case SOLID -> "hc-sym-solid";
              case CLAMP -> "hc-sym-clamp";
            });
    if (mark.ink() == Mark.Ink.DASHED) {
      path.getStrokeDashArray().setAll(4.0, 3.0);
    }
    return path;
  }
}
