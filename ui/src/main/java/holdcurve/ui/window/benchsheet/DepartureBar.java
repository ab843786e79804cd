package holdcurve.ui.window.benchsheet;

import holdcurve.bench.flowsheet.BenchLimits;
import holdcurve.common.number.Interval;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;

/**
 * A bar from the middle of the set to where an injector stands, its 90 % range as a thin line, and
 * the limits as dashed ones.
 */
final class DepartureBar extends Region {
  private static final double HEIGHT = 18;

  private final Interval departure;
  private final Optional<Interval> earlier;
  private final Rectangle was = new Rectangle();
  private final double reach;
  private final List<Double> limits;
  private final Rectangle inLine = new Rectangle();
  private final Rectangle bar = new Rectangle();
  private final Line range = new Line();
  private final Line middle = new Line();
  private final List<Line> marks = new ArrayList<>();

  /**
   * @param reach departure at either end of the drawing [-]
   */
  DepartureBar(DepartureLine line, BenchLimits limits, double reach) {
    this.departure = line.departure();
    this.earlier = line.earlier();
    this.reach = reach;
    this.limits =
        List.of(-limits.farOut(), -limits.outOfLine(), limits.outOfLine(), limits.farOut());
    inLine.getStyleClass().add("hc-in-line");
    bar.getStyleClass().add(line.good() ? "hc-departure" : "hc-departure-out");
    range.getStyleClass().add("hc-departure-range");
    middle.getStyleClass().add("hc-departure-middle");
    was.getStyleClass().add("hc-departure-before");
    getChildren().addAll(inLine, bar);
    earlier.ifPresent(interval -> getChildren().add(was));
    for (int i = 0; i < this.limits.size(); i++) {
      Line mark = new Line();
      mark.getStyleClass().add("hc-departure-limit");
      marks.add(mark);
    }
    getChildren().addAll(marks);
    getChildren().addAll(middle, range);
    setMinHeight(HEIGHT);
    setPrefHeight(HEIGHT);
    setMouseTransparent(true);
  }

  private double x(double share) {
    double kept = Math.max(-reach, Math.min(reach, share));
    return Math.rint((0.5 + 0.5 * kept / reach) * getWidth()) + 0.5;
  }

  @Override
  protected void layoutChildren() {
    double height = getHeight();
    place(inLine, x(limits.get(1)), x(limits.get(2)), 0, height);
    double tip = x(departure.middle());
    place(bar, Math.min(tip, x(0)), Math.max(tip, x(0)), 3, height - (earlier.isEmpty() ? 6 : 9));
    earlier.ifPresent(
        before -> {
          double end = x(before.middle());
          place(was, Math.min(end, x(0)), Math.max(end, x(0)), height - 5, 4);
        });
    for (int i = 0; i < marks.size(); i++) {
      line(marks.get(i), x(limits.get(i)), 0, x(limits.get(i)), height);
    }
    line(middle, x(0), 0, x(0), height);
    double level = Math.rint(height / 2);
    line(range, x(departure.low()), level, x(departure.high()), level);
  }

  private static void place(Rectangle box, double from, double to, double top, double height) {
    box.setX(from);
    box.setWidth(to - from);
    box.setY(top);
    box.setHeight(height);
  }

  private static void line(Line line, double x1, double y1, double x2, double y2) {
    line.setStartX(x1);
    line.setStartY(y1);
    line.setEndX(x2);
    line.setEndY(y2);
  }
}
