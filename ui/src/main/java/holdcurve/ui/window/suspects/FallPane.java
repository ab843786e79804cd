package holdcurve.ui.window.suspects;

import holdcurve.physics.balance.Amount;
import holdcurve.physics.balance.FallReport;
import holdcurve.physics.balance.FallShare;
import holdcurve.physics.circuit.Unit;
import holdcurve.ui.window.frame.Scrolled;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** What part of the fall of the hold shown is leak, stretch, temperature and so on. */
final class FallPane extends VBox {
  /** Parts that never reach this are left out [Pa]. */
  private static final double SHOWN = 500;

  private static final double BAR_HEIGHT = 11;

  private final SuspectsModel model;
  private final Label heading = SuspectLine.words("", "hc-heading");
  private final GridPane rows = new GridPane();

  FallPane(SuspectsModel model) {
    this.model = model;
    setId("fall");
    getStyleClass().add("hc-drawer");
    rows.getStyleClass().add("hc-fall");
    for (Priority grow : List.of(Priority.NEVER, Priority.ALWAYS, Priority.NEVER, Priority.NEVER)) {
      ColumnConstraints column = new ColumnConstraints();
      column.setHgrow(grow);
      rows.getColumnConstraints().add(column);
    }
    ScrollPane scroll = Scrolled.down(rows);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(heading, scroll);
    model.ranking().addListener((property, before, now) -> show());
    model.shownTestProperty().addListener((property, before, now) -> show());
    model.unit().addListener((property, before, now) -> show());
    show();
  }

  private void show() {
    Optional<FallReport> fall = model.fall();
    rows.getChildren().clear();
    heading.setText(fall.map(this::heading).orElse("Not worked out: rank the suspects (F5)."));
    fall.ifPresent(this::fill);
  }

  private String heading(FallReport fall) {
    return String.format(
        Locale.ROOT,
        "%s: %s to %s in %.0f min, a fall of %s",
        fall.test(),
        model.pressure(fall.first()),
        model.pressure(fall.last()),
        (fall.to() - fall.from()) / 60,
        model.pressure(fall.fall(model.unit().getValue())));
  }

  private void fill(FallReport fall) {
    List<FallReport.Shown> shown = fall.shown(SHOWN, model.unit().getValue());
    double longest = shown.stream().mapToDouble(part -> Math.abs(part.mean())).max().orElse(1);
    for (int i = 0; i < shown.size(); i++) {
      add(shown.get(i), i, longest);
    }
    rows.add(
        SuspectLine.words(
            "In brackets: the 90 % range. A minus held the needle up.", "hc-muted", "hc-small"),
        0,
        shown.size(),
        4,
        1);
  }

  private void add(FallReport.Shown part, int row, double longest) {
    FallShare share = part.share();
    Amount pressure = share.pressure();
    String title = part.title();
    Label name = new Label(Character.toUpperCase(title.charAt(0)) + title.substring(1));
    name.setMinWidth(USE_PREF_SIZE);
    Label amount =
        new Label(
            model.pressure(part.mean())
                + " ("
                + model.pressureNumber(pressure.low())
                + " to "
                + model.pressureNumber(pressure.high())
                + ")");
    amount.setMinWidth(USE_PREF_SIZE);
    Label volume = new Label(volume(share.volume()));
    volume.setMinWidth(USE_PREF_SIZE);
    volume.getStyleClass().add("hc-muted");
    rows.addRow(row, name, bar(part.mean(), longest), amount, volume);
  }

  private static String volume(Amount volume) {
    return volume.low() == 0 && volume.high() == 0
        ? ""
        : String.format(Locale.ROOT, "%.2f mL", Unit.MILLILITRE.fromSi(volume.mean()) + 0.0);
  }

  private static StackPane bar(double mean, double longest) {
    Region bar = new Region();
    bar.getStyleClass().add(mean < 0 ? "hc-bar-against" : "hc-bar");
    StackPane ground = new StackPane(bar);
    ground.setAlignment(Pos.CENTER_LEFT);
    ground.setMinSize(40, BAR_HEIGHT);
    bar.setMaxHeight(BAR_HEIGHT);
    bar.maxWidthProperty().bind(ground.widthProperty().multiply(Math.abs(mean) / longest));
    return ground;
  }
}
