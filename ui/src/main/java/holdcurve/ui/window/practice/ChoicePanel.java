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
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Spinner;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Where a car is chosen, and where results and an instructor's tools are. */
final class ChoicePanel extends VBox {
  private static final double WIDTH = 900;

  private final TabPane tabs = new TabPane();
  private final CoursePanel course;
  private final Button open = new Button("Open an exercise …");

  ChoicePanel(PracticeModel model, ExerciseDraft draft, FileDialogs dialogs) {
    setId("practice-choice");
    getStyleClass().add("hc-practice-choice");
    open.setId("practice-open");
    open.setOnAction(event -> dialogs.chooseExercise(null).ifPresent(model::open));
    course = new CoursePanel(model);
    VBox others =
        new VBox(
            Texts.heading("A car made up for you"),
            madeUp(model),
            Texts.heading("An exercise from your trainer"),
            open);
    others.getStyleClass().add("hc-practice-others");
    tabs.setId("practice-tabs");
    tabs.setTabClosingPolicy(TabPane.TabClosingPolicy.UNAVAILABLE);
    VBox.setVgrow(tabs, Priority.ALWAYS);
    ScrollPane instructor = new ScrollPane(new InstructorPanel(draft, dialogs));
    instructor.setFitToWidth(true);
    tabs.getTabs()
        .addAll(
            new Tab("Course", course),
            new Tab("Other cars", others),
            new Tab("Results", new ResultsPanel(model, dialogs)),
            new Tab("For an instructor", instructor));
    getChildren()
        .addAll(
            Texts.large("Cars with a hidden fault"),
            words("Test the car, say what is wrong and how sure you are, and choose the repair."),
            tabs);
    sceneProperty()
        .addListener(
            (property, before, now) -> {
              if (now != null) {
                model.listLessons();
              }
            });
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
    row.setAlignment(Pos.CENTER_LEFT);
    row.getStyleClass().add("hc-practice-row");
    return row;
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
    course.next().ifPresentOrElse(Button::requestFocus, tabs::requestFocus);
  }
}
