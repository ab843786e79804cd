package holdcurve.ui.window.suspects;

import holdcurve.advice.plan.Plan;
import holdcurve.advice.plan.PlannedTest;
import holdcurve.common.message.Message;
import holdcurve.ui.window.frame.Scrolled;
import java.util.List;
import java.util.Locale;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;

/** The next test with its steps, cautions and outcomes. */
final class NextTestPane extends VBox {
  private final NextTestModel model;
  private final Label caution = line("", "hc-caution", "hc-small");
  private final Label headline = line("", "hc-heading");
  private final Button doIt = new Button("Do this test");
  private final ComboBox<PlannedTest> choice = new ComboBox<>();
  private final VBox doing = new VBox(4);
  private final VBox meaning = new VBox(4);
  private final PlanTree tree = new PlanTree();

  /**
   * @param turnToHolds shows where readings are taken
   */
  NextTestPane(NextTestModel model, Runnable turnToHolds) {
    this.model = model;
    doIt.setId("do-test");
    doIt.setMinWidth(USE_PREF_SIZE);
    doIt.setOnAction(
        event -> {
          turnToHolds.run();
          model.doChosen();
        });
    doIt.visibleProperty().bind(model.chosenProperty().isNotNull());
    HBox which = new HBox(8, choice, doIt);
    which.managedProperty().bind(doIt.visibleProperty());
    HBox.setHgrow(choice, Priority.ALWAYS);
    setId("next-test");
    getStyleClass().add("hc-drawer");
    choice.setId("planned-tests");
    choice.setAccessibleText("Test");
    choice.setMaxWidth(Double.MAX_VALUE);
    choice.setConverter(new Names());
    choice.valueProperty().bindBidirectional(model.chosenProperty());
    VBox both = new VBox(10, meaning, doing);
    ScrollPane scroll = Scrolled.down(both);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(headline, which, scroll);
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
              Locale.ROOT, "%s – %.0f min", test.procedure().name(), test.procedure().minutes());
    }

    @Override
    public PlannedTest fromString(String text) {
      throw new UnsupportedOperationException("tests are chosen, not typed");
    }
  }

  private void show(Plan plan) {
    boolean worth = model.isAnyWorthIt();
    headline.setText(worth ? "" : model.headline());
    headline.setVisible(!worth);
    headline.setManaged(!worth);
    choice.setVisible(plan != null && !plan.tests().isEmpty());
    choice.setManaged(choice.isVisible());
    choice.getItems().setAll(plan == null ? List.of() : plan.tests());
    choice.setValue(plan == null || plan.tests().isEmpty() ? null : plan.tests().get(0));
  }

  private void show(PlannedTest test) {
    doing.getChildren().clear();
    meaning.getChildren().clear();
    if (test == null) {
      return;
    }
    doing.getChildren().add(caution);
    caution.setText(String.join(" ", test.procedure().cautions()));
    List<Message> steps = test.procedure().steps();
    for (int i = 0; i < steps.size(); i++) {
      doing.getChildren().add(line((i + 1) + ".  " + steps.get(i).in(model.unit().get())));
    }
    if (!test.branches().isEmpty()) {
      tree.show(test, model.unit().get());
      meaning.getChildren().add(tree);
    }
    meaning.getChildren().add(line(test.reason()));
  }

  private static Label line(String text, String... styles) {
    Label label = new Label(text);
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    label.getStyleClass().addAll(styles);
    return label;
  }
}
