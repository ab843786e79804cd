package holdcurve.ui.window.practice;

import holdcurve.practice.Session;
import holdcurve.practice.Step;
import holdcurve.ui.window.frame.Cautions;
import java.util.Locale;
import java.util.concurrent.Callable;
import javafx.beans.Observable;
import javafx.beans.binding.Bindings;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** What can be done to the car, each with its minutes. */
final class StepsPanel extends VBox {
  private final PracticeModel model;

  StepsPanel(PracticeModel model) {
    this.model = model;
    setId("practice-steps");
    getStyleClass().add("hc-practice-steps");
    model.session().addListener((property, before, now) -> fill(now));
    fill(model.session().get());
  }

  private void fill(Session session) {
    getChildren().clear();
    if (session == null) {
      return;
    }
    Label heading = new Label("What next?");
    heading.getStyleClass().add("hc-heading");
    Label caution = new Label(Cautions.TEST + " " + Cautions.CLAMPS);
    caution.setWrapText(true);
    caution.getStyleClass().addAll("hc-caution", "hc-small");
    getChildren().addAll(heading, caution);
    session.exercise().steps().forEach(step -> getChildren().add(button(step)));
  }

  private Button button(Step step) {
    Button button =
        new Button(String.format(Locale.ROOT, "%s  (%.0f min)", step.words(), step.minutes()));
    button.setId("step-" + step.id());
    button.setWrapText(true);
    button.setMaxWidth(Double.MAX_VALUE);
    button.getStyleClass().add("hc-template");
    button.setOnAction(event -> model.take(step));
    Callable<Boolean> cannot = () -> !model.canTake(step);
    Observable[] when = {
      model.busy(), model.watch(), model.debrief(), model.used(), model.stated(), model.session()
    };
    button.disableProperty().bind(Bindings.createBooleanBinding(cannot, when));
    return button;
  }
}
