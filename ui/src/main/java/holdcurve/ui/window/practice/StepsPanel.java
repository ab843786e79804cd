package holdcurve.ui.window.practice;

import holdcurve.training.Step;
import holdcurve.training.TrainingSession;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import javafx.application.Platform;
import javafx.beans.Observable;
import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;

/** What can be done to the car, each with its minutes, in two columns. */
final class StepsPanel extends GridPane {
  private static final int COLUMNS = 2;

  private final PracticeModel model;
  private Button taken;

  StepsPanel(PracticeModel model) {
    this.model = model;
    setId("practice-steps");
    getStyleClass().add("hc-practice-steps");
    for (int i = 0; i < COLUMNS; i++) {
      ColumnConstraints column = new ColumnConstraints();
      column.setPercentWidth(100.0 / COLUMNS);
      getColumnConstraints().add(column);
    }
    model.session().addListener((property, before, now) -> fill(now));
    fill(model.session().get());
  }

  private void fill(TrainingSession session) {
    getChildren().clear();
    if (session == null) {
      return;
    }
    Label heading = new Label("What next?");
    heading.getStyleClass().add("hc-heading");
    add(heading, 0, 0, COLUMNS, 1);
    List<Step> steps = session.exercise().steps();
    for (int i = 0; i < steps.size(); i++) {
      add(button(steps.get(i)), i % COLUMNS, 1 + i / COLUMNS);
    }
  }

  /** Puts the keyboard on the first step that can be taken. */
  void focusFirst() {
    getChildren().stream()
        .filter(node -> node instanceof Button && !node.isDisabled())
        .findFirst()
        .ifPresent(Node::requestFocus);
  }

  /** While a step goes on none can be taken; the keyboard waits here instead of going astray. */
  private void take(Step step, Button button) {
    taken = button;
    model.take(step);
    if (button.isDisabled()) {
      requestFocus();
    }
  }

  void back() {
    if (isFocused() && taken != null && !taken.isDisabled()) {
      taken.requestFocus();
    } else if (isFocused()) {
      focusFirst();
    }
  }

  private Button button(Step step) {
    Button button =
        new Button(String.format(Locale.ROOT, "%s  (%.0f min)", step.words(), step.minutes()));
    button.setId("step-" + step.id());
    button.setWrapText(true);
    button.setMinHeight(USE_PREF_SIZE);
    button.setMaxSize(Double.MAX_VALUE, Double.MAX_VALUE);
    button.getStyleClass().add("hc-template");
    button.setOnAction(event -> take(step, button));
    Callable<Boolean> cannot = () -> !model.canTake(step);
    Observable[] when = {
      model.busy(),
      model.watch(),
      model.debrief(),
      model.repairs(),
      model.used(),
      model.stated(),
      model.session()
    };
    button.disableProperty().bind(Bindings.createBooleanBinding(cannot, when));
    button.disabledProperty().addListener((property, before, now) -> Platform.runLater(this::back));
    return button;
  }
}
