package holdcurve.ui.window.suspects;

import java.util.List;
import javafx.scene.chart.LineChart;
import javafx.scene.layout.Region;
import javafx.scene.shape.ClosePath;
import javafx.scene.shape.Line;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.text.Text;

/** Readings as marks, the expected curve as a line on its 90 % band, and where clamps went on. */
final class HoldChart extends LineChart<Number, Number> {
  private final ScaleAxis time;
  private final ScaleAxis pressure;
  private final Path band = new Path();
  private final Line clampLine = new Line();
  private final Text clampWord = new Text("clamps on");
  private HoldPlot plot;

  HoldChart() {
    this(new ScaleAxis(), new ScaleAxis());
  }

  private HoldChart(ScaleAxis time, ScaleAxis pressure) {
    super(time, pressure);
    this.time = time;
    this.pressure = pressure;
    setAnimated(false);
    setCreateSymbols(false);
    setLegendVisible(false);
    setAxisSortingPolicy(SortingPolicy.NONE);
    setVerticalZeroLineVisible(false);
    setHorizontalZeroLineVisible(false);
    pressure.setLabel("Pressure [bar]");
    band.getStyleClass().add("hc-band");
    clampLine.getStyleClass().add("hc-clamp-line");
    clampWord.getStyleClass().add("hc-clamp-word");
    getPlotChildren().addAll(0, List.of(band, clampLine, clampWord));
  }

  void show(HoldPlot shown) {
    plot = shown;
    time.setLabel(shown.timeAxis().title());
    time.show(shown.time());
    pressure.show(shown.pressure());
    getData().setAll(List.of(expected(shown), measured(shown)));
    dress(shown);
    setAccessibleText("Pressure over time, " + shown.test() + ": " + shown.caption());
    requestChartLayout();
  }

  /** A chart resets the styles of what it is given, so ours are added afterwards. */
  private void dress(HoldPlot shown) {
    getData().get(0).getNode().getStyleClass().add("hc-expected");
    getData().get(1).getNode().setVisible(false);
    List<Data<Number, Number>> points = getData().get(1).getData();
    for (int i = 0; i < points.size(); i++) {
      points.get(i).getNode().getStyleClass().add(style(shown.marks().get(i).doubtful()));
    }
  }

  private static String style(boolean doubtful) {
    return doubtful ? "hc-doubtful" : "hc-measured";
  }

  private static Series<Number, Number> expected(HoldPlot plot) {
    Series<Number, Number> series = new Series<>();
    plot.curve()
        .ifPresent(
            curve -> {
              for (int i = 0; i < curve.time().length; i++) {
                series.getData().add(new Data<>(curve.time()[i], curve.middle()[i]));
              }
            });
    return series;
  }

  private static Series<Number, Number> measured(HoldPlot plot) {
    Series<Number, Number> series = new Series<>();
    for (HoldPlot.Mark mark : plot.marks()) {
      Data<Number, Number> data = new Data<>(mark.time(), mark.pressure());
      data.setNode(new Region());
      series.getData().add(data);
    }
    return series;
  }

  /** The mark of a reading, for the legend. */
  static Region symbol(boolean doubtful) {
    Region symbol = new Region();
    symbol.getStyleClass().add(style(doubtful));
    return symbol;
  }

  @Override
  protected void layoutPlotChildren() {
    super.layoutPlotChildren();
    if (plot == null) {
      return;
    }
    band.getElements().clear();
    plot.curve().ifPresent(this::layoutBand);
    clampLine.setVisible(plot.clampsOn().isPresent());
    clampWord.setVisible(plot.clampsOn().isPresent());
    plot.clampsOn().ifPresent(this::layoutClamps);
  }

  private void layoutBand(HoldPlot.Curve curve) {
    int points = curve.time().length;
    if (points == 0) {
      return;
    }
    band.getElements().add(new MoveTo(x(curve.time()[0]), y(curve.low()[0])));
    for (int i = 1; i < points; i++) {
      band.getElements().add(new LineTo(x(curve.time()[i]), y(curve.low()[i])));
    }
    for (int i = points - 1; i >= 0; i--) {
      band.getElements().add(new LineTo(x(curve.time()[i]), y(curve.high()[i])));
    }
    band.getElements().add(new ClosePath());
  }

  private void layoutClamps(double when) {
    clampLine.setStartX(x(when));
    clampLine.setEndX(x(when));
    clampLine.setStartY(0);
    clampLine.setEndY(pressure.getHeight());
    clampWord.setX(x(when) + 6);
    clampWord.setY(pressure.getHeight() - 8);
  }

  private double x(double value) {
    return time.getDisplayPosition(value);
  }

  private double y(double value) {
    return pressure.getDisplayPosition(value);
  }
}
