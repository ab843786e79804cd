package holdcurve.ui.window.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BiConsumer;
import javafx.geometry.Point2D;
import javafx.scene.shape.Circle;
import javafx.scene.shape.ClosePath;
import javafx.scene.shape.Line;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.PathElement;

/** Several holds in one plot; each has a colour, a mark and a dash of its own. */
final class SeveralHoldsChart extends PathChart {
  /** Sets of colour, mark and dash; more holds than these begin anew. */
  static final int LOOKS = 6;

  /** Width of the pressure axis, alike in all charts that stand one below the other [px]. */
  private static final double AXIS = 66;

  private static final double RING = 9;

  /** More bands than these over each other can't be told apart. */
  private static final int MOST_BANDS = 2;

  private final ScaleAxis time;
  private final ScaleAxis up;
  private final Line zero = new Line();
  private final Circle ring = new Circle(RING);
  private final List<Path> paths = new ArrayList<>();
  private final boolean residuals;
  private SeveralHolds shown;
  private HoldPlot.Mark ringed;

  /**
   * @param residuals whether measured minus expected shows, instead of pressures
   */
  SeveralHoldsChart(boolean residuals) {
    this(new ScaleAxis(), new ScaleAxis(), residuals);
  }

  private SeveralHoldsChart(ScaleAxis time, ScaleAxis up, boolean residuals) {
    super(time, up);
    this.time = time;
    this.up = up;
    this.residuals = residuals;
    up.setPrefWidth(AXIS);
    zero.getStyleClass().add("hc-clamp-line");
    ring.getStyleClass().add("hc-ring");
    ring.setMouseTransparent(true);
    setMinHeight(0);
  }

  void show(SeveralHolds holds) {
    shown = holds;
    time.show(holds.time());
    boolean lowest = residuals || holds.off().isEmpty();
    time.setLabel(lowest ? holds.timeAxis().shortTitle() : "");
    time.setTickLabelsVisible(lowest);
    if (residuals) {
      holds.off().ifPresent(up::show);
      up.setLabel("Off");
    } else {
      up.show(holds.pressure());
      up.setLabel(holds.unit().symbol());
    }
    setAccessibleText(
        (residuals ? "Measured minus expected over time: " : "Pressure over time: ")
            + String.join(", ", holds.holds().stream().map(SeveralHolds.Hold::name).toList()));
    makePaths();
    requestChartLayout();
  }

  private void makePaths() {
    paths.clear();
    for (int i = 0; i < shown.holds().size(); i++) {
      for (String style : List.of("hc-many-band", "hc-many-line", "hc-many-mark")) {
        paths.add(path(style, "hc-look-" + i % LOOKS));
      }
    }
    getPlotChildren().clear();
    getPlotChildren().add(zero);
    for (int layer = 0; layer < 3; layer++) {
      for (int i = layer; i < paths.size(); i += 3) {
        getPlotChildren().add(paths.get(i));
      }
    }
    getPlotChildren().add(ring);
  }

  /** Draws a ring about a reading; null for none. */
  void ring(HoldPlot.Mark mark) {
    ringed = mark;
    requestChartLayout();
  }

  double x(HoldPlot.Mark mark) {
    return time.getDisplayPosition(mark.time());
  }

  double y(HoldPlot.Mark mark) {
    return up.getDisplayPosition(mark.pressure());
  }

  ScaleAxis time() {
    return time;
  }

  ScaleAxis up() {
    return up;
  }

  /** Left upper corner of the plot, in the chart's own coordinates. */
  Point2D corner() {
    return sceneToLocal(up.localToScene(up.getWidth(), 0));
  }

  @Override
  protected void layoutPlotChildren() {
    zero.setVisible(residuals);
    ring.setVisible(ringed != null && !residuals);
    if (shown == null) {
      return;
    }
    if (residuals) {
      double y = up.getDisplayPosition(0);
      zero.setStartX(0);
      zero.setEndX(time.getWidth());
      zero.setStartY(y);
      zero.setEndY(y);
    }
    if (ring.isVisible()) {
      ring.setCenterX(x(ringed));
      ring.setCenterY(y(ringed));
    }
    for (int i = 0; i < shown.holds().size(); i++) {
      layoutHold(shown.holds().get(i), i);
    }
  }

  private void layoutHold(SeveralHolds.Hold hold, int index) {
    List<PathElement> band = new ArrayList<>();
    List<PathElement> line = new ArrayList<>();
    List<PathElement> marks = new ArrayList<>();
    BiConsumer<Double, Double> mark =
        (when, value) ->
            Marks.look(
                marks, index % LOOKS, time.getDisplayPosition(when), up.getDisplayPosition(value));
    if (residuals) {
      List<SeveralHolds.Residual> all = hold.residuals();
      all.forEach(r -> mark.accept(r.time(), r.off()));
      all.forEach(r -> go(band, r.time(), r.low()));
      for (int i = all.size() - 1; i >= 0; i--) {
        go(band, all.get(i).time(), all.get(i).high());
      }
    } else {
      hold.marks().forEach(m -> mark.accept(m.time(), m.pressure()));
      hold.curve()
          .ifPresent(
              curve -> {
                int last = curve.time().length - 1;
                for (int i = 0; i <= last; i++) {
                  go(line, curve.time()[i], curve.middle()[i]);
                }
                if (shown.holds().size() <= MOST_BANDS) {
                  outline(band, curve, last);
                }
              });
    }
    if (!band.isEmpty()) {
      band.add(new ClosePath());
    }
    paths.get(3 * index).getElements().setAll(band);
    paths.get(3 * index + 1).getElements().setAll(line);
    paths.get(3 * index + 2).getElements().setAll(marks);
  }

  private void outline(List<PathElement> band, HoldPlot.Curve curve, int last) {
    for (int i = 0; i <= last; i++) {
      go(band, curve.time()[i], curve.low()[i]);
    }
    for (int i = last; i >= 0; i--) {
      go(band, curve.time()[i], curve.high()[i]);
    }
  }

  private void go(List<PathElement> path, double when, double value) {
    double x = time.getDisplayPosition(when);
    double y = up.getDisplayPosition(value);
    path.add(path.isEmpty() ? new MoveTo(x, y) : new LineTo(x, y));
  }
}
