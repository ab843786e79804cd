package holdcurve.ui.window.holdtests;

import holdcurve.ui.window.plot.HoldChart;
import holdcurve.ui.window.plot.HoldPlot;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.Group;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.shape.Line;
import javafx.scene.shape.Polygon;

/** The mark of the pump stop in the plot: it is dragged, or moved with the arrow keys. */
final class StopMark extends Group {
  private static final double HALF = 8;
  private static final double GRIP = 12;

  private final HoldTestsModel model;
  private final HoldChart chart;
  private final Line line = new Line();
  private final Polygon grip = new Polygon(-HALF, 0, HALF, 0, 0, 2 * HALF);
  private double moved;

  StopMark(HoldTestsModel model, HoldChart chart) {
    this.model = model;
    this.chart = chart;
    setId("stop-mark");
    getStyleClass().add("hc-stop-mark");
    line.getStyleClass().add("hc-stop-line");
    grip.getStyleClass().add("hc-stop-grip");
    Line wide = new Line();
    wide.startXProperty().bind(line.startXProperty());
    wide.endXProperty().bind(line.endXProperty());
    wide.endYProperty().bind(line.endYProperty());
    wide.setStrokeWidth(GRIP);
    wide.setOpacity(0);
    getChildren().addAll(wide, line, grip);
    setCursor(Cursor.H_RESIZE);
    setFocusTraversable(true);
    setAccessibleRole(AccessibleRole.SLIDER);
    setAccessibleText("Pump stop: left and right arrow move it by a second");
    setOnMousePressed(event -> requestFocus());
    setOnMouseDragged(event -> drag(chart.sceneToLocal(event.getSceneX(), 0).getX()));
    setOnMouseReleased(event -> drop());
    setOnKeyPressed(this::key);
    chart.addOwn(this, this::place);
  }

  private void place() {
    HoldPlot plot = model.plotProperty().get();
    boolean any = plot != null && (!plot.marks().isEmpty() || plot.buildUp() > 0);
    setVisible(any);
    if (any) {
      stand(chart.x(0));
    }
  }

  private void stand(double x) {
    line.setStartX(x);
    line.setEndX(x);
    line.setEndY(chart.height());
    grip.setTranslateX(x);
  }

  /**
   * @param x in the chart's own coordinates
   */
  private void drag(double x) {
    double inPlot = getParent().sceneToLocal(chart.localToScene(x, 0)).getX();
    double seconds = seconds(chart.timeAt(inPlot));
    moved = Math.rint(seconds);
    stand(chart.x(moved / seconds(1)));
  }

  private double seconds(double shown) {
    return shown / model.plotProperty().get().timeAxis().in(1);
  }

  private void drop() {
    double by = moved;
    moved = 0;
    model.edits().movePumpStop(by);
  }

  private void key(KeyEvent event) {
    if (event.getCode() == KeyCode.LEFT || event.getCode() == KeyCode.RIGHT) {
      model.edits().movePumpStop(event.getCode() == KeyCode.LEFT ? -1 : 1);
      event.consume();
    }
  }
}
