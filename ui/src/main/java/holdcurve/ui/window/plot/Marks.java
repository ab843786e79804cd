package holdcurve.ui.window.plot;

import java.util.List;
import javafx.scene.shape.ArcTo;
import javafx.scene.shape.ClosePath;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.PathElement;

/** Shapes of readings in a plot. */
public final class Marks {
  private static final double RADIUS = 5;
  private static final double HALF_DIAGONAL = 6;
  private static final double DOT = 2.2;

  private Marks() {}

  /**
   * Adds a disc around a point.
   *
   * @param grown against the usual size [-]
   */
  public static void disc(List<PathElement> path, double x, double y, double grown) {
    double r = grown * RADIUS;
    path.addAll(
        List.of(
            new MoveTo(x - r, y),
            new ArcTo(r, r, 0, x + r, y, false, true),
            new ArcTo(r, r, 0, x - r, y, false, true),
            new ClosePath()));
  }

  /** Adds a small square around a point, quick to draw. */
  public static void dot(List<PathElement> path, double x, double y) {
    path.addAll(
        List.of(
            new MoveTo(x - DOT, y - DOT),
            new LineTo(x + DOT, y - DOT),
            new LineTo(x + DOT, y + DOT),
            new LineTo(x - DOT, y + DOT),
            new ClosePath()));
  }

  /**
   * Adds a square that stands on a corner.
   *
   * @param grown against the usual size [-]
   */
  public static void diamond(List<PathElement> path, double x, double y, double grown) {
    double half = grown * HALF_DIAGONAL;
    path.addAll(
        List.of(
            new MoveTo(x - half, y),
            new LineTo(x, y - half),
            new LineTo(x + half, y),
            new LineTo(x, y + half),
            new ClosePath()));
  }

  /**
   * Adds the mark of one of several holds.
   *
   * @param look counted from 0: disc, diamond, square, triangle up, triangle down, cross
   */
  static void look(List<PathElement> path, int look, double x, double y) {
    double r = RADIUS;
    switch (look) {
      case 0 -> disc(path, x, y, 1);
      case 1 -> diamond(path, x, y, 1);
      case 2 -> outline(path, x - r, y - r, x + r, y - r, x + r, y + r, x - r, y + r);
      case 3 -> outline(path, x, y - r, x + r, y + r, x - r, y + r);
      case 4 -> outline(path, x, y + r, x + r, y - r, x - r, y - r);
      default ->
          outline(
              path, x - r, y - 2, x - 2, y - 2, x - 2, y - r, x + 2, y - r, x + 2, y - 2, x + r,
              y - 2, x + r, y + 2, x + 2, y + 2, x + 2, y + r, x - 2, y + r, x - 2, y + 2, x - r,
              y + 2);
    }
  }

  private static void outline(List<PathElement> path, double... corners) {
    path.add(new MoveTo(corners[0], corners[1]));
    for (int i = 2; i < corners.length; i += 2) {
      path.add(new LineTo(corners[i], corners[i + 1]));
    }
    path.add(new ClosePath());
  }

  /** A single mark, for a legend. */
  public static Path sample(boolean doubtful) {
    Path path = new Path();
    path.getStyleClass().add(doubtful ? "hc-doubtful" : "hc-measured");
    if (doubtful) {
      diamond(path.getElements(), HALF_DIAGONAL, HALF_DIAGONAL, 1);
    } else {
      disc(path.getElements(), RADIUS, RADIUS, 1);
    }
    return path;
  }
}
