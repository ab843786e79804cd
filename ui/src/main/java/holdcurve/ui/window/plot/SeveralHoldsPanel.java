package holdcurve.ui.window.plot;

import holdcurve.ui.window.job.PressureFormat;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import javafx.geometry.Point2D;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Line;
import javafx.scene.shape.Path;

/**
 * Several holds in one plot with a strip of residuals below; the reading under the pointer is told
 * above, and the arrow keys go from reading to reading.
 */
public final class SeveralHoldsPanel extends VBox {
  /** A reading farther than this from the pointer isn't meant [px]. */
  private static final double REACH = 40;

  /** Share of the height that the residuals take [-]. */
  private static final double STRIP = 0.36;

  private static final String HOW =
      "Point at a reading, or press \u2190 \u2192. + and \u2212 zoom, 0 shows all.";

  private record Spot(String hold, HoldPlot.Mark mark) {}

  private final SeveralHoldsChart chart = new SeveralHoldsChart(false);
  private final SeveralHoldsChart strip = new SeveralHoldsChart(true);
  private final Label told = new Label(HOW);
  private final FlowPane legend = new FlowPane();
  private final Label off = new Label("below: measured minus expected, 90 % shaded");
  private final Zoom zoom = new Zoom(chart, List.of(chart.time(), strip.time()), chart.up());
  private final List<Spot> spots = new ArrayList<>();
  private SeveralHolds shown;
  private List<String> namesShown = List.of();
  private int at = -1;

  public SeveralHoldsPanel() {
    getStyleClass().add("hc-plot-panel");
    legend.getStyleClass().add("hc-legend");
    told.getStyleClass().addAll("hc-strong", "hc-caption");
    told.setId("read-out");
    off.getStyleClass().addAll("hc-muted", "hc-small");
    chart.setId("several-holds");
    strip.setId("residuals");
    setFocusTraversable(true);
    VBox.setVgrow(chart, Priority.ALWAYS);
    strip.prefHeightProperty().bind(heightProperty().multiply(STRIP));
    strip.setMinHeight(USE_PREF_SIZE);
    strip.managedProperty().bind(strip.visibleProperty());
    told.setMinHeight(USE_PREF_SIZE);
    legend.setMinHeight(USE_PREF_SIZE);
    getChildren().addAll(told, legend, chart, strip);
    chart.addEventHandler(MouseEvent.MOUSE_MOVED, this::pointed);
    addEventHandler(MouseEvent.MOUSE_PRESSED, event -> requestFocus());
    addEventHandler(KeyEvent.KEY_PRESSED, this::key);
  }

  /** Shows other holds; the reading told of is forgotten. */
  public void show(SeveralHolds holds) {
    List<String> names = holds.holds().stream().map(SeveralHolds.Hold::name).toList();
    if (!names.equals(namesShown)) {
      zoom.showAll();
    }
    namesShown = names;
    shown = holds;
    chart.show(holds);
    strip.setVisible(holds.off().isPresent());
    if (strip.isVisible()) {
      strip.show(holds);
    }
    legend.getChildren().clear();
    spots.clear();
    for (int i = 0; i < holds.holds().size(); i++) {
      SeveralHolds.Hold hold = holds.holds().get(i);
      legend.getChildren().add(new Label(hold.name(), sample(i, hold.curve().isPresent())));
      hold.marks().forEach(mark -> spots.add(new Spot(hold.name(), mark)));
    }
    if (strip.isVisible()) {
      legend.getChildren().add(off);
    }
    spots.sort(Comparator.comparingDouble(spot -> spot.mark().time()));
    tell(-1);
  }

  private static HBox sample(int index, boolean withLine) {
    String look = "hc-look-" + index % SeveralHoldsChart.LOOKS;
    Path mark = PathChart.path("hc-many-mark", look);
    Marks.look(mark.getElements(), index % SeveralHoldsChart.LOOKS, 6, 6);
    HBox box = new HBox(mark);
    box.getStyleClass().add("hc-line");
    if (withLine) {
      Line line = new Line(0, 0, 24, 0);
      line.getStyleClass().addAll("hc-many-line", look);
      box.getChildren().add(line);
    }
    return box;
  }

  private void pointed(MouseEvent event) {
    Point2D corner = chart.corner();
    int nearest = -1;
    double least = REACH;
    for (int i = 0; i < spots.size(); i++) {
      HoldPlot.Mark mark = spots.get(i).mark();
      double away =
          Math.hypot(
              event.getX() - corner.getX() - chart.x(mark),
              event.getY() - corner.getY() - chart.y(mark));
      if (away < least) {
        least = away;
        nearest = i;
      }
    }
    if (nearest != at) {
      tell(nearest);
    }
  }

  private void key(KeyEvent event) {
    if (event.isShortcutDown() || event.isAltDown()) {
      return;
    }
    switch (event.getCode()) {
      case LEFT -> go(-1);
      case RIGHT -> go(1);
      case PLUS, ADD, EQUALS -> zoom.nearer(timeAt(), pressureAt());
      case MINUS, SUBTRACT -> zoom.farther(timeAt(), pressureAt());
      case DIGIT0, NUMPAD0, HOME -> zoom.showAll();
      default -> {
        return;
      }
    }
    event.consume();
  }

  private void go(int step) {
    if (!spots.isEmpty()) {
      tell(Math.max(0, Math.min(spots.size() - 1, at + step)));
      zoom.reveal(timeAt(), pressureAt());
    }
  }

  /** Where the reading told of stands, else the middle of the plot. */
  private double timeAt() {
    return at < 0 ? middle(chart.time()) : spots.get(at).mark().time();
  }

  private double pressureAt() {
    return at < 0 ? middle(chart.up()) : spots.get(at).mark().pressure();
  }

  private static double middle(ScaleAxis axis) {
    return (axis.getLowerBound() + axis.getUpperBound()) / 2;
  }

  private void tell(int spot) {
    at = spot;
    chart.ring(spot < 0 ? null : spots.get(spot).mark());
    told.setText(spot < 0 ? HOW : words(spots.get(spot)));
    setAccessibleText(told.getText());
  }

  private String words(Spot spot) {
    HoldPlot.Mark mark = spot.mark();
    double seconds = mark.time() * shown.timeAxis().seconds();
    long whole = Math.round(seconds);
    int decimals = PressureFormat.decimals(shown.unit());
    return String.format(
        Locale.ROOT,
        "%d:%02d   %." + decimals + "f %s   %s%s",
        whole / 60,
        Math.abs(whole % 60),
        mark.pressure(),
        shown.unit().symbol(),
        spot.hold(),
        mark.doubtful() ? ", doubtful" : "");
  }
}
