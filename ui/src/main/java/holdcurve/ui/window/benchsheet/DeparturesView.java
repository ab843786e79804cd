package holdcurve.ui.window.benchsheet;

import holdcurve.bench.flowsheet.BenchLimits;
import holdcurve.ui.window.frame.Scrolled;
import holdcurve.ui.window.frame.Sign;
import holdcurve.ui.window.frame.Texts;
import java.util.List;
import java.util.Locale;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A bar for each injector about the middle of the set, then sentences. */
final class DeparturesView extends VBox {
  /** The drawing reaches at least so far to either side [-]. */
  private static final double LEAST_REACH = 0.12;

  private final BenchLimits limits;
  private final VBox lines = new VBox();
  private final VBox sentences = new VBox();
  private final Label heading = Texts.heading("");

  /**
   * @param id of the bars in the scene
   */
  DeparturesView(BenchLimits limits, String id) {
    this.limits = limits;
    getStyleClass().add("hc-sheet-says");
    lines.setId(id);
    lines.getStyleClass().add("hc-departures");
    sentences.getStyleClass().add("hc-departures");
    VBox all = new VBox(heading, lines, sentences);
    all.getStyleClass().add("hc-departures");
    ScrollPane scroll = Scrolled.down(all);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().add(scroll);
  }

  /** There is nothing to show yet. */
  void showNothing(String why) {
    heading.setText("");
    lines.getChildren().clear();
    sentences.getChildren().setAll(Texts.words(why, "hc-muted"));
  }

  /**
   * @param said sentences that count
   * @param notes what was understood and assumed
   */
  void show(String title, List<DepartureLine> all, List<String> said, List<String> notes) {
    heading.setText(title);
    double reach = all.stream().mapToDouble(DeparturesView::end).reduce(LEAST_REACH, Math::max);
    lines.getChildren().setAll(all.stream().map(line -> line(line, reach)).toList());
    lines.getChildren().add(scale(reach));
    if (all.stream().anyMatch(line -> line.earlier().isPresent())) {
      lines.getChildren().add(Texts.aside("Thin bar below: before cleaning."));
    }
    sentences.getChildren().setAll(said.stream().map(one -> Texts.words(one)).toList());
    notes.forEach(note -> sentences.getChildren().add(Texts.aside(note)));
  }

  private static double end(DepartureLine line) {
    double was = line.earlier().map(before -> Math.abs(before.middle())).orElse(0.0);
    return 1.1
        * Math.max(
            was, Math.max(Math.abs(line.departure().low()), Math.abs(line.departure().high())));
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
    VBox box = new VBox(title, new DepartureBar(line, limits, reach));
    if (!line.more().isEmpty()) {
      Label more = Texts.words(line.more(), "hc-small");
      more.setGraphic(line.good() ? null : Sign.WARNING.node());
      box.getChildren().add(more);
    }
    box.setAccessibleText(line.id() + ", " + line.words() + " " + line.more());
    return box;
  }

  private HBox scale(double reach) {
    Label low = Texts.aside(String.format(Locale.ROOT, "%.0f %% low", 100 * reach));
    Label middle =
        Texts.aside(
            String.format(
                Locale.ROOT,
                "limits %.0f and %.0f %%",
                100 * limits.outOfLine(),
                100 * limits.farOut()));
    Label high = Texts.aside(String.format(Locale.ROOT, "%.0f %% high", 100 * reach));
    Region left = new Region();
    Region right = new Region();
    HBox.setHgrow(left, Priority.ALWAYS);
    HBox.setHgrow(right, Priority.ALWAYS);
    return new HBox(low, left, middle, right, high);
  }
}
