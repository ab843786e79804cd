package holdcurve.ui.window.suspects;

import holdcurve.plan.Branch;
import holdcurve.plan.Plan;
import holdcurve.plan.PlannedTest;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** The next test with its steps, cautions and outcomes; folded until asked for. */
final class NextTestStrip extends TitledPane {
  private static final double NAMED = 0.05;
  private static final int MOST_NAMED = 3;

  private final NextTestModel model;
  private final ComboBox<PlannedTest> choice = new ComboBox<>();
  private final VBox doing = new VBox(4);
  private final VBox meaning = new VBox(4);

  NextTestStrip(NextTestModel model) {
    this.model = model;
    setId("next-test");
    getStyleClass().add("hc-notes");
    setExpanded(false);
    setAnimated(false);
    choice.setId("planned-tests");
    choice.setMaxWidth(Double.MAX_VALUE);
    choice.setConverter(new Names());
    choice.valueProperty().bindBidirectional(model.chosenProperty());
    HBox both = new HBox(24, doing, meaning);
    for (VBox half : List.of(doing, meaning)) {
      half.setPrefWidth(100);
      HBox.setHgrow(half, Priority.ALWAYS);
    }
    ScrollPane scroll = new ScrollPane(both);
    scroll.setFitToWidth(true);
    scroll.setPrefViewportHeight(250);
    setContent(new VBox(6, choice, scroll));
    model.planProperty().addListener((property, before, now) -> show(now));
    model.chosenProperty().addListener((property, before, now) -> show(now));
    model.unit().addListener((property, before, now) -> show(model.chosenProperty().get()));
    show(model.planProperty().get());
  }

  /** Tests with what they are worth. */
  private static final class Names extends StringConverter<PlannedTest> {
    @Override
    public String toString(PlannedTest test) {
      return test == null
          ? ""
          : String.format(
              Locale.ROOT,
              "%s – %.0f min, worth %.2f bits",
              test.procedure().name(),
              test.procedure().minutes(),
              test.information().bits());
    }

    @Override
    public PlannedTest fromString(String text) {
      throw new UnsupportedOperationException("tests are chosen, not typed");
    }
  }

  private void show(Plan plan) {
    setText(model.headline());
    setVisible(plan != null);
    setManaged(plan != null);
    choice.getItems().setAll(plan == null ? List.of() : plan.tests());
    choice.setValue(plan == null || plan.tests().isEmpty() ? null : plan.tests().get(0));
  }

  private void show(PlannedTest test) {
    doing.getChildren().clear();
    meaning.getChildren().clear();
    if (test == null) {
      return;
    }
    String cautions = String.join(" ", test.procedure().cautions());
    doing.getChildren().add(line(cautions, "hc-caution", "hc-small"));
    List<String> steps = test.procedure().steps();
    for (int i = 0; i < steps.size(); i++) {
      doing.getChildren().add(line((i + 1) + ".  " + steps.get(i)));
    }
    meaning.getChildren().add(line(test.reason()));
    test.branches().forEach(branch -> meaning.getChildren().addAll(lines(branch)));
  }

  private List<Node> lines(Branch branch) {
    List<Node> lines = new ArrayList<>();
    lines.add(
        line(
            "If it shows "
                + branch.said().in(model.unit().get())
                + " ("
                + Figures.percent(branch.probability(), 0)
                + "):",
            "hc-strong"));
    branch.believed().stream()
        .filter(share -> share.probability() > NAMED)
        .limit(MOST_NAMED)
        .forEach(
            share ->
                lines.add(
                    line("    " + Figures.percent(share.probability(), 0) + "  " + share.name())));
    return lines;
  }

  private static Label line(String text, String... styles) {
    Label label = new Label(text);
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    label.getStyleClass().addAll(styles);
    return label;
  }
}
