package holdcurve.ui.schematic;

import holdcurve.ui.schematic.Mark.Ink;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Collects the strokes of a symbol. */
final class Pen {
  /** How far the leads of a two-ended part reach. */
  static final double REACH = 52;

  private final List<Mark> marks = new ArrayList<>();

  Symbol symbol(double top, double bottom) {
    return new Symbol(List.copyOf(marks), top, bottom);
  }

  /** A stroke moved to the right; the path is all of moves and lines with absolute places. */
  Pen path(Ink ink, String path) {
    marks.add(new Mark(path, ink));
    return this;
  }

  Pen line(double... places) {
    return path(Ink.LINE, way(places));
  }

  Pen outline(double... corners) {
    return path(Ink.LINE, way(corners) + " Z");
  }

  Pen solid(double... corners) {
    return solid(Ink.SOLID, corners);
  }

  Pen solid(Ink ink, double... corners) {
    return path(ink, way(corners) + " Z");
  }

  Pen dashed(double... places) {
    return path(Ink.DASHED, way(places));
  }

  Pen circle(double x, double y, double radius) {
    return path(Ink.LINE, round(x, y, radius));
  }

  Pen dot(double x, double y, double radius) {
    return path(Ink.SOLID, round(x, y, radius));
  }

  /** Both leads of a part that takes {@code half} to each side. */
  Pen leads(double half) {
    return line(-REACH, 0, -half, 0).line(half, 0, REACH, 0);
  }

  /** A rectangle whose corners are rounded. */
  Pen box(Ink ink, double left, double top, double width, double height, double radius) {
    String arc = text("a %s %s 0 0 1 ", radius, radius);
    return path(
        ink,
        text("M %s %s h %s ", left + radius, top, width - 2 * radius)
            + arc
            + text("%s %s v %s ", radius, radius, height - 2 * radius)
            + arc
            + text("%s %s h %s ", -radius, radius, 2 * radius - width)
            + arc
            + text("%s %s v %s ", -radius, -radius, 2 * radius - height)
            + arc
            + text("%s %s Z", radius, -radius));
  }

  private static String round(double x, double y, double radius) {
    return text("M %s %s ", x - radius, y)
        + text("a %s %s 0 1 0 %s 0 ", radius, radius, 2 * radius)
        + text("a %s %s 0 1 0 %s 0 Z", radius, radius, -2 * radius);
  }

  private static String way(double... places) {
    StringBuilder way = new StringBuilder();
    for (int i = 0; i < places.length; i += 2) {
      way.append(i == 0 ? "M" : " L").append(text(" %s %s", places[i], places[i + 1]));
    }
    return way.toString();
  }

  private static String text(String format, Object... numbers) {
    return String.format(Locale.ROOT, format, numbers);
  }
}
