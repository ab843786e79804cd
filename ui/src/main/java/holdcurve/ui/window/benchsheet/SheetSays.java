package holdcurve.ui.window.benchsheet;

import holdcurve.injector.BenchReport;
import holdcurve.ui.window.frame.Sign;
import java.util.List;
import java.util.Locale;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** What the sheet says: a bar for each injector, then sentences. */
final class SheetSays extends VBox {
  /** The drawing reaches at least so far to either side [-]. */
  private static final double LEAST_REACH = 0.12;

  private final BenchSheetModel model;
  private final VBox lines = new VBox();
  private final VBox sentences = new VBox();
  private final Label heading = new Label();

  SheetSays(BenchSheetModel model) {
    this.model = model;
    getStyleClass().add("hc-sheet-says");
    lines.setId("bench-bars");
    lines.getStyleClass().add("hc-departures");
    sentences.getStyleClass().add("hc-departures");
    heading.getStyleClass().add("hc-heading");
    heading.setWrapText(true);
    heading.setMinHeight(USE_PREF_SIZE);
    VBox all = new VBox(heading, lines, sentences);
    all.getStyleClass().add("hc-departures");
    ScrollPane scroll = new ScrollPane(all);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().add(scroll);
    model.reportProperty().addListener((property, before, now) -> show(now));
    show(model.reportProperty().get());
  }

  private void show(BenchReport report) {
    setVisible(report != null);
    lines.getChildren().clear();
    sentences.getChildren().clear();
    if (report == null) {
      return;
    }
    heading.setText(heading(report));
    List<DepartureLine> all = report.injectors().stream().map(DepartureLine::of).toList();
    double reach =
        all.stream()
            .mapToDouble(
                line ->
                    1.1
                        * Math.max(
                            Math.abs(line.departure().low()), Math.abs(line.departure().high())))
            .reduce(LEAST_REACH, Math::max);
    all.forEach(line -> lines.getChildren().add(line(line, reach)));
    lines.getChildren().add(scale(reach));
    report.verdict().stream().skip(1).forEach(said -> add(said, false));
    report.notes().forEach(note -> add(note, true));
  }

  private static String heading(BenchReport report) {
    return String.format(
        Locale.ROOT,
        "Out of line %s service, at %.1f bar with %s%s",
        report.latest().word(),
        report.point().pressure() / 1e5,
        report.point().fluid().name(),
        report
            .set(report.latest())
            .map(
                set -> String.format(Locale.ROOT, ": mean %.0f mL/min", set.mean().middle() * 60e6))
            .orElse(""));
  }

  private VBox line(DepartureLine line, double reach) {
    Label id = new Label(line.id());
    id.getStyleClass().add("hc-strong");
    id.setMinWidth(USE_PREF_SIZE);
    Label words = new Label(line.words());
    words.setMinWidth(USE_PREF_SIZE);
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    HBox title = new HBox(id, gap, words);
    title.setAlignment(Pos.BASELINE_LEFT);
    VBox box = new VBox(title, new DepartureBar(line, model.limits(), reach));
    if (!line.more().isEmpty()) {
      Label more = new Label(line.more(), Sign.WARNING.node());
      more.setWrapText(true);
      more.getStyleClass().add("hc-small");
      box.getChildren().add(more);
    }
    box.setAccessibleText("Injector " + line.id() + ", " + line.words() + " " + line.more());
    return box;
  }

  private HBox scale(double reach) {
    Label low = new Label(String.format(Locale.ROOT, "%.0f %% low", 100 * reach));
    Label middle =
        new Label(
            String.format(
                Locale.ROOT,
                "limits %.0f and %.0f %%",
                100 * model.limits().outOfLine(),
                100 * model.limits().farOut()));
    Label high = new Label(String.format(Locale.ROOT, "%.0f %% high", 100 * reach));
    Region left = new Region();
    Region right = new Region();
    HBox.setHgrow(left, Priority.ALWAYS);
    HBox.setHgrow(right, Priority.ALWAYS);
    HBox scale = new HBox(low, left, middle, right, high);
    for (Label label : List.of(low, middle, high)) {
      label.getStyleClass().addAll("hc-muted", "hc-small");
    }
    return scale;
  }

  private void add(String said, boolean muted) {
    Label label = new Label(said);
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    if (muted) {
      label.getStyleClass().addAll("hc-muted", "hc-small");
    }
    sentences.getChildren().add(label);
  }
}
