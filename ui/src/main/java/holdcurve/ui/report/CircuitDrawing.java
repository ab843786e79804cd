package holdcurve.ui.report;

import holdcurve.common.message.PressureUnit;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Ports;
import holdcurve.ui.schematic.CircuitLayout;
import holdcurve.ui.schematic.Drawing;
import holdcurve.ui.schematic.Drawing.Placed;
import holdcurve.ui.schematic.Drawing.Stand;
import holdcurve.ui.schematic.Drawing.Wire;
import holdcurve.ui.schematic.Mark;
import holdcurve.ui.schematic.PartLabel;
import holdcurve.ui.schematic.Symbols;
import holdcurve.ui.theme.Role;
import java.util.List;
import java.util.Locale;

/** The circuit as an SVG drawing, its words laid over it. */
final class CircuitDrawing {
  private static final double LETTERS = 12.5;
  private static final double LARGEST = 1.2;

  private static final String DROP =
      "M0 -18 C0 -18 -6 -10 -6 -6 A6 6 0 0 0 6 -6 C6 -10 0 -18 0 -18 Z";

  private final Drawing drawing;
  private final List<String> places;
  private final double scale;
  private final PressureUnit unit;
  private final StringBuilder code = new StringBuilder();
  private final StringBuilder words = new StringBuilder();

  private CircuitDrawing(Drawing drawing, List<String> places, double scale, PressureUnit unit) {
    this.unit = unit;
    this.places = places;
    this.drawing = drawing;
    this.scale = scale;
  }

  /**
   * @param places ids of the parts that get a drop
   * @param width that it may take at most [px]
   */
  static Html of(Circuit circuit, List<String> places, double width, PressureUnit unit) {
    Drawing drawing = CircuitLayout.of(circuit);
    return new CircuitDrawing(drawing, places, Math.min(LARGEST, width / drawing.width()), unit)
        .html();
  }

  private Html html() {
    drawing.wires().forEach(this::wire);
    drawing.parts().forEach(this::part);
    double width = scale * drawing.width();
    double height = scale * drawing.height();
    return new Html(
        text(
            "<div class=\"plot circuit\" style=\"width:%.0fpx;font-size:%.1fpx\"><svg"
                + " xmlns=\"http://www.w3.org/2000/svg\" width=\"%.0f\" height=\"%.0f\""
                + " viewBox=\"0 0 %.0f %.0f\">%n%s</svg>%n%s</div>%n",
            width, scale * LETTERS, width, height, drawing.width(), drawing.height(), code, words));
  }

  private void wire(Wire wire) {
    code.append(
        text(
            "<line x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\" %s/>%n",
            wire.fromX(),
            wire.fromY(),
            wire.toX(),
            wire.toY(),
            SymbolDrawing.style(Mark.Ink.LINE)));
  }

  private void part(Placed placed) {
    String mirror = placed.stand() == Stand.LEFT ? " scale(-1 1)" : "";
    code.append(text("<g transform=\"translate(%.1f %.1f)%s\">", placed.x(), placed.y(), mirror));
    code.append(SymbolDrawing.marks(Symbols.of(placed)));
    code.append(text("</g>%n"));
    if (places.contains(placed.part().id())) {
      drop(placed);
    }
    PartLabel label = PartLabel.of(placed, figure(placed.part()));
    if (label.shown()) {
      label(placed, label);
    }
  }

  /** Beside the symbol, where neither words nor lines run. */
  private void drop(Placed placed) {
    boolean below = placed.stand() == Stand.BELOW;
    double side = placed.part().kind().ports() == Ports.TWO ? 30 : placed.width() / 2 - 8;
    code.append(
        text(
            "<g transform=\"translate(%.1f %.1f)\"><path d=\"%s\" fill=\"%s\"/></g>%n",
            placed.x() + side, placed.y() + (below ? 34 : -10), DROP, Colours.of(Role.ALERT)));
  }

  private String figure(Part part) {
    return PartLabel.telling(part)
        .map(property -> ReportFigures.value(property, part.value(property), unit))
        .orElse("");
  }

  private void label(Placed placed, PartLabel label) {
    double top = placed.y() + label.base() - PartLabel.LINE * 0.8;
    List<String> lines = label.lines();
    for (int i = 0; i < lines.size(); i++) {
      words.append(
          text(
              "<span"
                  + " style=\"left:%.1fpx;top:%.1fpx;width:%.1fpx;text-align:center;line-height:%.1fpx\">%s</span>%n",
              scale * (placed.x() - label.width() / 2),
              scale * (top + i * PartLabel.LINE),
              scale * label.width(),
              scale * PartLabel.LINE,
              Html.text(lines.get(i)).code()));
    }
  }

  private static String text(String format, Object... values) {
    return String.format(Locale.ROOT, format, values);
  }
}
