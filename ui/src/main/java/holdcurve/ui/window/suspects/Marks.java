package holdcurve.ui.window.suspects;

import javafx.scene.shape.ArcTo;
import javafx.scene.shape.ClosePath;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;

/** Shapes of readings in a plot. */
final class Marks {
  private static final double RADIUS = 5;
  private static final double HALF_DIAGONAL = 6;

  private Marks() {}

  /** Adds a disc around a point. */
  static void disc(Path path, double x, double y) {
    path.getElements()
        .addAll(
            new MoveTo(x - RADIUS, y),
            new ArcTo(RADIUS, RADIUS, 0, x + RADIUS, y, false, true),
            new ArcTo(RADIUS, RADIUS, 0, x - RADIUS, y, false, true),
            new ClosePath());
  }

  /** Adds a square that stands on a corner. */
  static void diamond(Path path, double x, double y) {
    path.getElements()
        .addAll(
            new MoveTo(x - HALF_DIAGONAL, y),
            new LineTo(x, y - HALF_DIAGONAL),
            new LineTo(x + HALF_DIAGONAL, y),
            new LineTo(x, y + HALF_DIAGONAL),
            new ClosePath());
  }

  /** A single mark, for a legend. */
  static Path sample(boolean doubtful) {
    Path path = new Path();
    path.getStyleClass().add(doubtful ? "hc-doubtful" : "hc-measured");
    if (doubtful) {
      diamond(path, HALF_DIAGONAL, HALF_DIAGONAL);
    } else {
      disc(path, RADIUS, RADIUS);
    }
    return path;
  }
}
