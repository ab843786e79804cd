package holdcurve.ui.window.practice;

import holdcurve.ui.window.frame.FileDialogs;
import holdcurve.ui.window.frame.Named;
import holdcurve.ui.window.frame.Texts;
import holdcurve.ui.window.job.CircuitTemplates;
import java.util.Random;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Spinner;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Where a car is chosen. */
final class ChoicePanel extends VBox {
  private static final double WIDTH = 640;
  private static final double INSTRUCTOR_WIDTH = 860;

  private final Button open = new Button("Open an exercise …");

  ChoicePanel(PracticeModel model, ExerciseDraft draft, FileDialogs dialogs) {
    setId("practice-choice");
    getStyleClass().addAll("hc-empty", "hc-practice-choice");
    open.setId("practice-open");
    open.setOnAction(event -> dialogs.chooseExercise(null).ifPresent(model::open));
    getChildren()
        .addAll(
            Texts.large("A car with a hidden fault"),
            words(
                "You prime it, watch the needle, clamp hoses, lift injectors, look for wet joints."
                    + " Each step costs minutes. Then you say what is wrong and how sure you are,"
                    + " and are told what it was and what your findings could have told you."),
            open,
            Texts.large("Or one made up for you"),
            madeUp(model),
            instructor(draft, dialogs));
  }

  private static HBox madeUp(PracticeModel model) {
    ComboBox<CircuitTemplates.Template> circuit = new ComboBox<>();
    circuit.getItems().setAll(CircuitTemplates.all());
    circuit.setConverter(new Named<>(CircuitTemplates.Template::title));
    circuit.setAccessibleText("Circuit of the car");
    circuit.getSelectionModel().select(0);
    Spinner<Integer> level = new Spinner<>(1, 5, 2);
    level.setId("practice-level");
    level.setPrefWidth(90);
    Spinner<Integer> number = new Spinner<>(1, 99_999, 1 + new Random().nextInt(9_999));
    number.setId("practice-number");
    number.setEditable(true);
    number.setPrefWidth(120);
    Button begin = new Button("Begin");
    begin.setId("practice-begin");
    begin.setOnAction(
        event -> {
          CircuitTemplates.Template chosen = circuit.getValue();
          model.makeUp(() -> CircuitTemplates.circuit(chosen), level.getValue(), number.getValue());
        });
    HBox row = new HBox(circuit, named("Level", level), named("Car no.", number), begin);
    row.setAlignment(Pos.CENTER);
    row.getStyleClass().add("hc-practice-row");
    return row;
  }

  private static TitledPane instructor(ExerciseDraft draft, FileDialogs dialogs) {
    TitledPane pane = new TitledPane("For an instructor", new InstructorPanel(draft, dialogs));
    pane.setId("practice-instructor");
    pane.setExpanded(false);
    pane.setMaxWidth(INSTRUCTOR_WIDTH);
    return pane;
  }

  private static HBox named(String name, Spinner<Integer> spinner) {
    Label label = new Label(name);
    label.setLabelFor(spinner);
    HBox both = new HBox(label, spinner);
    both.setAlignment(Pos.CENTER_LEFT);
    both.getStyleClass().add("hc-practice-row");
    return both;
  }

  private static Label words(String text) {
    Label label = Texts.words(text);
    label.setMaxWidth(WIDTH);
    return label;
  }

  /** Where the keyboard starts. */
  void focusFirst() {
    open.requestFocus();
  }
}
