package holdcurve.ui.window.plot;

import javafx.collections.FXCollections;
import javafx.scene.chart.XYChart;
import javafx.scene.shape.Path;

/** Axes and grid for a chart that draws paths of its own, without the series of a chart. */
abstract class PathChart extends XYChart<Number, Number> {
  PathChart(ScaleAxis across, ScaleAxis up) {
    super(across, up);
    setData(FXCollections.observableArrayList());
    setAnimated(false);
    setLegendVisible(false);
    setVerticalZeroLineVisible(false);
    setHorizontalZeroLineVisible(false);
  }

  static Path path(String... styles) {
    Path path = new Path();
    path.getStyleClass().addAll(styles);
    path.setMouseTransparent(true);
    return path;
  }

  @Override
  protected void dataItemAdded(
      Series<Number, Number> series, int index, Data<Number, Number> item) {
    refuse();
  }

  @Override
  protected void dataItemRemoved(Data<Number, Number> item, Series<Number, Number> series) {
    refuse();
  }

  @Override
  protected void dataItemChanged(Data<Number, Number> item) {
    refuse();
  }

  @Override
  protected void seriesAdded(Series<Number, Number> series, int index) {
    refuse();
  }

  @Override
  protected void seriesRemoved(Series<Number, Number> series) {
    refuse();
  }

  private static void refuse() {
    throw new UnsupportedOperationException("this chart draws paths, not series");
  }
}
