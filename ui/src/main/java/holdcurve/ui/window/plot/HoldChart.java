package holdcurve.ui.window.plot;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.shape.ClosePath;
import javafx.scene.shape.Line;
import javafx.scene.shape.LineTo;
import javafx.scene.shape.MoveTo;
import javafx.scene.shape.Path;
import javafx.scene.shape.PathElement;
import javafx.scene.text.Text;

/**
 * Readings as marks, the expected curve as a line on its 90 % band, and where clamps went on.
 *
 * <p>Each is one path that is drawn anew, not a series of the chart: a series has a node for each
 * reading, which takes too long where a logger has read thousands.
 */
public final class HoldChart extends PathChart {
  /** Size of the words at the axes at which marks have their usual size [px]. */
  private static final double USUAL_TEXT = 16;

  /** More marks than this are drawn small. */
  private static final int CROWD = 150;

  /** Room that the name of an axis takes, in sizes of the text. */
  private static final double TIME_LETTERS = 15.5;

  private static final double PRESSURE_LETTERS = 9;

  private final ScaleAxis time;
  private final ScaleAxis pressure;
  private final Zoom zoom;
  private final Path band = path("hc-band");
  private final Path expected = path("hc-expected");
  private final Path measured = path("hc-measured");
  private final Path doubtful = path("hc-doubtful");
  private final Line clampLine = new Line();
  private final Text clampWord = new Text("clamps on");
  private HoldPlot plot;
  private Runnable laidOut = () -> {};

  public HoldChart() {
    this(new ScaleAxis(), new ScaleAxis());
  }

  private HoldChart(ScaleAxis time, ScaleAxis pressure) {
    super(time, pressure);
    this.time = time;
    this.pressure = pressure;
    clampLine.getStyleClass().add("hc-clamp-line");
    clampWord.getStyleClass().add("hc-clamp-word");
    time.widthProperty().addListener((property, before, now) -> nameAxes());
    pressure.heightProperty().addListener((property, before, now) -> nameAxes());
    time.tickLabelFontProperty().addListener((property, before, now) -> nameAxes());
    zoom = new Zoom(this, List.of(time), pressure);
    getPlotChildren().addAll(band, clampLine, clampWord, expected, measured, doubtful);
  }

  public void show(HoldPlot shown) {
    if (plot != null && !plot.test().equals(shown.test())) {
      zoom.showAll();
    }
    plot = shown;
    time.show(shown.time());
    nameAxes();
    pressure.show(shown.pressure());
    setAccessibleText("Pressure over time, " + shown.test() + ": " + shown.caption());
    requestChartLayout();
  }

  /** In little room shorter names: the usual ones would be cut off. */
  private void nameAxes() {
    if (plot == null) {
      return;
    }
    double letter = time.getTickLabelFont().getSize();
    boolean narrow = time.getWidth() < TIME_LETTERS * letter;
    time.setLabel(narrow ? plot.timeAxis().shortTitle() : plot.timeAxis().title());
    String unit = plot.unit().symbol();
    boolean low = pressure.getHeight() < PRESSURE_LETTERS * letter;
    pressure.setLabel(low ? unit : "Pressure [" + unit + "]");
  }

  /**
   * Puts something of a page's own into the plot, above the rest.
   *
   * @param place run after each layout; {@link #x} and {@link #height} say where things go
   */
  public void addOwn(Node node, Runnable place) {
    getPlotChildren().add(node);
    Runnable before = laidOut;
    laidOut =
        () -> {
          before.run();
          place.run();
        };
  }

  /**
   * Where a time stands, in the plot's own coordinates.
   *
   * @param when in the unit of the time axis
   */
  public double x(double when) {
    return time.getDisplayPosition(when);
  }

  /**
   * Where a pressure stands, in the plot's own coordinates.
   *
   * @param value in the unit of the pressure axis
   */
  public double y(double value) {
    return pressure.getDisplayPosition(value);
  }

  /** The time at a place of the plot, in the unit of the time axis. */
  public double timeAt(double x) {
    return time.getValueForDisplay(x).doubleValue();
  }

  /** Height of the plot [px]. */
  public double height() {
    return pressure.getHeight();
  }

  @Override
  protected void layoutPlotChildren() {
    List.of(band, expected, measured, doubtful).forEach(path -> path.getElements().clear());
    clampLine.setVisible(plot != null && plot.clampsOn().isPresent());
    clampWord.setVisible(clampLine.isVisible());
    if (plot == null) {
      return;
    }
    layoutMarks();
    plot.curve().filter(curve -> curve.time().length > 0).ifPresent(this::layoutCurve);
    plot.clampsOn().ifPresent(this::layoutClamps);
    laidOut.run();
  }

  /** Each path gets its elements at once: it works out its bounds anew after every change. */
  private void layoutMarks() {
    List<PathElement> sure = new ArrayList<>();
    List<PathElement> unsure = new ArrayList<>();
    boolean crowd = plot.marks().size() > CROWD;
    double grown = Math.max(1, time.getTickLabelFont().getSize() / USUAL_TEXT);
    for (HoldPlot.Mark mark : plot.marks()) {
      double x = time.getDisplayPosition(mark.time());
      double y = pressure.getDisplayPosition(mark.pressure());
      if (mark.doubtful()) {
        Marks.diamond(unsure, x, y, grown);
      } else if (crowd) {
        Marks.dot(sure, x, y);
      } else {
        Marks.disc(sure, x, y, grown);
      }
    }
    measured.getElements().setAll(sure);
    doubtful.getElements().setAll(unsure);
  }

  private void layoutCurve(HoldPlot.Curve curve) {
    List<PathElement> middle = new ArrayList<>();
    List<PathElement> outline = new ArrayList<>();
    int last = curve.time().length - 1;
    for (int i = 0; i <= last; i++) {
      go(middle, curve.time()[i], curve.middle()[i]);
      go(outline, curve.time()[i], curve.low()[i]);
    }
    for (int i = last; i >= 0; i--) {
      go(outline, curve.time()[i], curve.high()[i]);
    }
    outline.add(new ClosePath());
    expected.getElements().setAll(middle);
    band.getElements().setAll(outline);
  }

  private void go(List<PathElement> path, double when, double value) {
    double x = time.getDisplayPosition(when);
    double y = pressure.getDisplayPosition(value);
    path.add(path.isEmpty() ? new MoveTo(x, y) : new LineTo(x, y));
  }

  private void layoutClamps(double when) {
    double x = time.getDisplayPosition(when);
    clampLine.setStartX(x);
    clampLine.setEndX(x);
    clampLine.setStartY(0);
    clampLine.setEndY(pressure.getHeight());
    clampWord.setX(x + 6);
    clampWord.setY(pressure.getHeight() - 8);
  }
}
