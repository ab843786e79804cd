package holdcurve.ui.window.practice;

import holdcurve.training.RepairChoice;
import holdcurve.ui.window.frame.StepCautions;
import holdcurve.ui.window.frame.Texts;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanExpression;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;

/** The fault is named: what is to be done about it? */
final class RepairPanel extends ScrollPane {
  private static final double WIDTH = 820;

  private final PracticeModel model;
  private final Map<RepairChoice.Option, CheckBox> boxes = new LinkedHashMap<>();

  RepairPanel(PracticeModel model, RepairChoice choice) {
    this.model = model;
    setId("practice-repair");
    setFitToWidth(true);
    VBox page = new VBox();
    page.setMaxWidth(WIDTH);
    page.getStyleClass().addAll("hc-practice-debrief", "hc-practice-repairs");
    Label title = new Label("What would you do?");
    title.getStyleClass().addAll("hc-large", "hc-strong");
    page.getChildren()
        .addAll(
            title,
            Texts.words("You named: " + model.named().get() + "."),
            Texts.words(
                "Tick every repair you would make. Each costs the owner money.", "hc-muted"));
    int number = 1;
    for (RepairChoice.Option option : choice.options()) {
      CheckBox box = new CheckBox(option.words());
      box.setId("repair-" + number++);
      box.setWrapText(true);
      box.setMinHeight(USE_PREF_SIZE);
      boxes.put(option, box);
      page.getChildren().add(box);
    }
    page.getChildren().addAll(Texts.caution(StepCautions.REPAIR), done(), waiting(), stop());
    setContent(page);
  }

  private Button done() {
    Button done = new Button("Do it and show the debrief");
    done.setId("practice-repair-done");
    done.setOnAction(event -> model.repair(chosen()));
    BooleanExpression any = null;
    for (CheckBox box : boxes.values()) {
      any = any == null ? box.selectedProperty() : any.or(box.selectedProperty());
    }
    done.disableProperty()
        .bind(any == null ? Bindings.createBooleanBinding(() -> true) : any.not());
    return done;
  }

  /** The debrief takes a ranking for each step; it may not be ready yet. */
  private Label waiting() {
    Label waiting = Texts.aside("");
    waiting
        .textProperty()
        .bind(
            Bindings.when(model.busy())
                .then("The debrief is being prepared meanwhile.")
                .otherwise("The debrief is ready."));
    return waiting;
  }

  private Button stop() {
    Button stop = new Button("Stop, back to the car");
    stop.setId("practice-stop");
    stop.visibleProperty().bind(model.busy());
    stop.setOnAction(event -> model.stopPreparing());
    return stop;
  }

  private List<RepairChoice.Option> chosen() {
    List<RepairChoice.Option> chosen = new ArrayList<>();
    boxes.forEach(
        (option, box) -> {
          if (box.isSelected()) {
            chosen.add(option);
          }
        });
    return chosen;
  }

  void focusFirst() {
    boxes.values().stream().findFirst().ifPresent(CheckBox::requestFocus);
  }
}
