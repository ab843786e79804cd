package holdcurve.ui.report;

import holdcurve.ui.schematic.Mark;
import holdcurve.ui.schematic.Symbol;
import holdcurve.ui.theme.Role;
import java.util.Locale;

/** Symbols of parts as SVG, in the colours of paper. */
public final class SymbolDrawing {
  private SymbolDrawing() {}

  /** A drawing of one symbol, as wide as twice its reach [px]. */
  public static String svg(Symbol symbol, double reach) {
    double top = symbol.top() - 4;
    double height = symbol.bottom() + 4 - top;
    return String.format(
        Locale.ROOT,
        "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%.0f\" height=\"%.0f\""
            + " viewBox=\"%.1f %.1f %.1f %.1f\">%s</svg>",
        2 * reach,
        height,
        -reach,
        top,
        2 * reach,
        height,
        marks(symbol));
  }

  static String marks(Symbol symbol) {
    StringBuilder code = new StringBuilder();
    for (Mark mark : symbol.marks()) {
      code.append("<path d=\"" + mark.path() + "\" " + style(mark.ink()) + "/>");
    }
    return code.toString();
  }

  static String style(Mark.Ink ink) {
    String line = "stroke=\"" + Colours.of(Role.TEXT) + "\" stroke-width=\"1.6\"";
    return switch (ink) {
      case LINE -> "fill=\"none\" " + line;
      case DASHED -> "fill=\"none\" stroke-dasharray=\"4 3\" " + line;
      case FILLED -> "fill=\"" + Colours.of(Role.PAPER) + "\" " + line;
      case SOLID -> "fill=\"" + Colours.of(Role.TEXT) + "\"";
      case CLAMP -> "fill=\"" + Colours.of(Role.MEASURED) + "\"";
    };
  }
}
