package holdcurve.ui.window.plot;

import javafx.beans.property.BooleanProperty;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Line;
import javafx.scene.shape.Rectangle;

/** One hold test: how it was done, what the marks mean, and the plot. */
public final class PlotPanel extends VBox {
  private final Label caption = new Label();
  private final Label measured = new Label("measured", Marks.sample(false));
  private final Label doubtful = new Label("marked as doubtful", Marks.sample(true));
  private final Label expected = new Label("expected", expectedSample());
  private final Label band = new Label("90 % of readings", bandSample());
  private final FlowPane legend = new FlowPane(Orientation.HORIZONTAL);
  private final HoldChart chart = new HoldChart();

  private final CheckBox buildUp = new CheckBox();

  /**
   * @param showBuildUp whether readings before the pump stop are shown, for all plots of a page
   */
  public PlotPanel(BooleanProperty showBuildUp) {
    buildUp.selectedProperty().bindBidirectional(showBuildUp);
    getStyleClass().add("hc-plot-panel");
    caption.getStyleClass().add("hc-strong");
    caption.setWrapText(true);
    caption.setMinHeight(USE_PREF_SIZE);
    VBox words = new VBox(caption);
    words.getStyleClass().add("hc-caption");
    legend.getStyleClass().add("hc-legend");
    VBox.setVgrow(chart, Priority.ALWAYS);
    chart.setMinHeight(0);
    getChildren().addAll(words, legend, chart);
  }

  /** The plot itself, for what a page adds to it. */
  public HoldChart chart() {
    return chart;
  }

  /** Without the words above it, where the page has its own. */
  public PlotPanel withoutWords() {
    getChildren().remove(0);
    return this;
  }

  /**
   * @param suspect what the expected curve stands for
   */
  public void show(HoldPlot plot, String suspect) {
    caption.setText(plot.caption());
    measured.setText(plot.legend());
    expected.setText("expected: " + suspect);
    legend.getChildren().setAll(measured);
    if (plot.marks().stream().anyMatch(HoldPlot.Mark::doubtful)) {
      legend.getChildren().add(doubtful);
    }
    if (plot.curve().isPresent()) {
      legend.getChildren().addAll(expected, band);
    }
    if (plot.buildUp() > 0) {
      buildUp.setText("build-up (" + plot.buildUp() + " readings)");
      legend.getChildren().add(buildUp);
    }
    chart.show(plot);
  }

  private static Node expectedSample() {
    Line line = new Line(0, 0, 26, 0);
    line.getStyleClass().add("hc-expected");
    return line;
  }

  private static Node bandSample() {
    Rectangle box = new Rectangle(26, 13);
    box.getStyleClass().add("hc-band");
    return new HBox(box);
  }
}
