package holdcurve.ui.window.repaircheck;

import holdcurve.advice.check.HoldTable;
import holdcurve.common.message.PressureUnit;
import holdcurve.inference.answer.HoldCurve;
import holdcurve.record.job.HoldTest;
import holdcurve.record.log.Reading;
import holdcurve.ui.window.plot.HoldChart;
import holdcurve.ui.window.plot.HoldPlot;
import holdcurve.ui.window.plot.Marks;
import holdcurve.ui.window.plot.Thinning;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Line;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.PathElement;
import javafx.scene.shape.Rectangle;

/** A hold over the band it should lie in, the band of its own history, and an earlier hold. */
final class CheckedHold extends VBox {
  private static final double ARM = 5;

  private final HoldChart chart = new HoldChart();
  private final Label caption = new Label();
  private final FlowPane legend = new FlowPane();
  private final Path history = path("hc-own-history");
  private final Path earlier = path("hc-earlier");
  private HoldPlot plot;
  private Optional<HoldCurve> remembered = Optional.empty();
  private Optional<HoldTest> last = Optional.empty();

  CheckedHold() {
    getStyleClass().add("hc-plot-panel");
    caption.getStyleClass().add("hc-strong");
    caption.setWrapText(true);
    VBox words = new VBox(caption);
    words.getStyleClass().add("hc-caption");
    legend.getStyleClass().add("hc-legend");
    chart.addOwn(history, () -> {});
    chart.addOwn(earlier, this::place);
    chart.setMinHeight(0);
    VBox.setVgrow(chart, Priority.ALWAYS);
    getChildren().addAll(words, legend, chart);
  }

  private static Path path(String style) {
    Path path = new Path();
    path.getStyleClass().add(style);
    path.setMouseTransparent(true);
    return path;
  }

  /** Shows a hold by itself. */
  void show(HoldTest test, PressureUnit unit) {
    show(test, new HoldPlot.Wish(Optional.empty(), List.of(), 1, false, unit));
  }

  /** Shows a hold beside what it should show. */
  void show(HoldTable table, PressureUnit unit) {
    remembered = table.remembered();
    last = table.last();
    List<HoldCurve> curves = new ArrayList<>(remembered.stream().toList());
    curves.add(table.described());
    show(table.test(), new HoldPlot.Wish(Optional.of(table.described()), curves, 1, false, unit));
    legend
        .getChildren()
        .addAll(new Label("a sound circuit of this description, 90 % of readings", bandSample()));
    remembered.ifPresent(
        curve -> legend.getChildren().add(new Label("by its own history", line("hc-own-history"))));
    last.ifPresent(
        test ->
            legend
                .getChildren()
                .add(new Label((test.date() + " " + test.id()).strip(), crossSample())));
  }

  private void show(HoldTest test, HoldPlot.Wish wish) {
    plot = HoldPlot.of(test, wish);
    caption.setText(plot.caption());
    legend.getChildren().setAll(new Label(plot.legend(), Marks.sample(false)));
    chart.show(plot);
  }

  private void place() {
    history.getElements().clear();
    earlier.getElements().clear();
    remembered.ifPresent(
        curve -> {
          edge(curve.time(), curve.low());
          edge(curve.time(), curve.high());
        });
    last.ifPresent(test -> crosses(test.log().hold()));
  }

  private void edge(double[] times, double[] values) {
    for (int i = 0; i < times.length; i++) {
      double x = x(times[i]);
      double y = y(values[i]);
      history.getElements().add(i == 0 ? new MoveTo(x, y) : new LineTo(x, y));
    }
  }

  private void crosses(List<Reading> readings) {
    double[] pressures = readings.stream().mapToDouble(Reading::pressure).toArray();
    List<PathElement> all = new ArrayList<>();
    for (int i : Thinning.keep(pressures, HoldPlot.MOST_MARKS)) {
      cross(all, readings.get(i));
    }
    earlier.getElements().setAll(all);
  }

  private void cross(List<PathElement> path, Reading reading) {
    double x = x(reading.time());
    double y = y(reading.pressure());
    if (plot.timeAxis().in(reading.time()) <= plot.time().high()) {
      addCross(path, x, y);
    }
  }

  private static void addCross(List<PathElement> path, double x, double y) {
    Collections.addAll(
        path,
        new MoveTo(x - ARM, y - ARM),
        new LineTo(x + ARM, y + ARM),
        new MoveTo(x - ARM, y + ARM),
        new LineTo(x + ARM, y - ARM));
  }

  private double x(double seconds) {
    return chart.x(plot.timeAxis().in(seconds));
  }

  private double y(double pascals) {
    return chart.y(plot.unit().fromPascal(pascals));
  }

  private static Node bandSample() {
    Rectangle box = new Rectangle(26, 13);
    box.getStyleClass().add("hc-band");
    return new HBox(box);
  }

  private static Node line(String style) {
    Line line = new Line(0, 0, 30, 0);
    line.getStyleClass().add(style);
    return line;
  }

  private static Node crossSample() {
    Path path = path("hc-earlier");
    addCross(path.getElements(), ARM, ARM);
    return path;
  }
}
