package holdcurve.ui.window.practice;

import holdcurve.physics.circuit.Circuit;
import holdcurve.training.Exercise;
import holdcurve.training.PossibleAnswers.Suspicion;
import holdcurve.ui.window.frame.FileDialogs;
import holdcurve.ui.window.frame.Named;
import holdcurve.ui.window.job.CircuitTemplates;
import java.util.List;
import java.util.Optional;
import javafx.collections.FXCollections;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Spinner;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Where an instructor writes an exercise, or has a set of them written for a class. */
final class InstructorPanel extends VBox {
  private static final double WIDE = 560;

  private final ExerciseDraft draft;
  private final FileDialogs dialogs;
  private final ComboBox<CircuitTemplates.Template> circuit;
  private final TextField title = new TextField();
  private final TextArea story = new TextArea();
  private final Spinner<Integer> level = new Spinner<>(1, 5, 2);
  private final Spinner<Integer> minutes = new Spinner<>(20, 300, 70, 5);
  private final List<FaultRow> faults = List.of(new FaultRow(1), new FaultRow(2));
  private final Spinner<Integer> count = new Spinner<>(1, 500, 12);
  private final Label told = new Label();

  /** One hidden fault, or none. */
  private static final class FaultRow {
    private final ComboBox<Suspicion> which = new ComboBox<>();
    private final TextField size = new TextField();

    FaultRow(int number) {
      which.setId("instructor-fault-" + number);
      which.setAccessibleText("Fault " + number);
      which.setConverter(new Named<>(Suspicion::words));
      which.setMaxWidth(WIDE - 110);
      size.setId("instructor-size-" + number);
      size.setAccessibleText("Size of fault " + number);
      size.setPromptText("usual size");
      size.setPrefWidth(110);
    }
  }

  InstructorPanel(ExerciseDraft draft, FileDialogs dialogs) {
    this.draft = draft;
    this.dialogs = dialogs;
    setId("instructor");
    getStyleClass().add("hc-practice-rows");
    circuit = new ComboBox<>(FXCollections.observableArrayList(CircuitTemplates.all()));
    circuit.setConverter(new Named<>(CircuitTemplates.Template::title));
    circuit.valueProperty().addListener((property, before, now) -> offerFaults(now));
    title.setId("instructor-title");
    story.setId("instructor-story");
    story.setPrefRowCount(2);
    story.setWrapText(true);
    level.setAccessibleText("Level");
    minutes.setAccessibleText("Minutes");
    count.setAccessibleText("How many cars");
    told.setId("instructor-told");
    told.setWrapText(true);
    Button one = new Button("Save it sealed …");
    one.setId("instructor-save");
    one.setOnAction(event -> saveOne());
    Button many = new Button("Save a class set …");
    many.setId("instructor-save-set");
    many.setOnAction(event -> saveSet());
    getChildren().addAll(form(), row(one, new Label("or made-up cars:"), count, many), told);
    circuit.getSelectionModel().select(0);
  }

  private GridPane form() {
    GridPane form = new GridPane();
    form.getStyleClass().add("hc-practice-form");
    addRow(form, "Circuit", circuit);
    addRow(form, "Title (gives nothing away)", title);
    addRow(form, "What the owner says", story);
    addRow(form, "Level and minutes", row(level, minutes));
    for (FaultRow fault : faults) {
      addRow(form, "Hidden fault, and its size", row(fault.which, fault.size));
    }
    return form;
  }

  private static HBox row(Node... nodes) {
    HBox row = new HBox(nodes);
    row.setAlignment(Pos.CENTER_LEFT);
    row.getStyleClass().add("hc-practice-row");
    return row;
  }

  private static void addRow(GridPane form, String name, Node field) {
    Label label = new Label(name);
    label.setLabelFor(field);
    label.setMinWidth(USE_PREF_SIZE);
    form.addRow(form.getRowCount(), label, field);
  }

  private void offerFaults(CircuitTemplates.Template template) {
    draft.offer(
        () -> CircuitTemplates.circuit(template),
        answers ->
            faults.forEach(
                fault -> {
                  fault.which.getItems().setAll(answers);
                  fault.which.getSelectionModel().select(0);
                }));
  }

  private void saveOne() {
    told.setText("");
    Circuit on = CircuitTemplates.circuit(circuit.getValue());
    Optional<Exercise> exercise =
        draft.exercise(
            on,
            title.getText(),
            story.getText(),
            level.getValue(),
            minutes.getValue(),
            faults.stream()
                .map(f -> new ExerciseDraft.Hidden(f.which.getValue(), f.size.getText()))
                .toList(),
            told::setText);
    exercise.ifPresent(
        ready ->
            dialogs
                .chooseExerciseFolder()
                .ifPresent(folder -> draft.save(folder, List.of(ready), told::setText)));
  }

  private void saveSet() {
    told.setText("");
    Circuit on = CircuitTemplates.circuit(circuit.getValue());
    dialogs
        .chooseExerciseFolder()
        .ifPresent(
            folder -> draft.saveSet(folder, on, level.getValue(), count.getValue(), told::setText));
  }
}
