package holdcurve.ui.window.frame;

import holdcurve.circuit.Circuit;
import holdcurve.ui.window.job.CircuitTemplates;
import holdcurve.ui.window.job.JobEdits;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** What stands in the window while no job is open, and where a new one is begun. */
final class EmptyState extends VBox {
  private static final double WIDTH = 760;

  private final Desk desk;
  private final List<Button> circuits = new ArrayList<>();

  /**
   * @param open asks for a job and opens it
   * @param own asks for a circuit and begins a job with it
   * @param giveUp goes back to the open job
   */
  EmptyState(Desk desk, Runnable open, Runnable own, Runnable giveUp) {
    this.desk = desk;
    setId("empty");
    getStyleClass().add("hc-empty");
    Button choose = new Button("Open a job …");
    choose.setOnAction(event -> open.run());
    Button practice = new Button("Practise on a car with a hidden fault");
    practice.setId("to-practice");
    practice.setOnAction(event -> desk.page().set("Practice"));
    VBox templates = new VBox();
    templates.getStyleClass().add("hc-templates");
    templates.setMaxWidth(WIDTH);
    CircuitTemplates.all().forEach(template -> circuits.add(button(template)));
    templates.getChildren().addAll(circuits);
    Button ownCircuit = new Button("A circuit file of your own …");
    ownCircuit.setId("own-circuit");
    ownCircuit.setOnAction(event -> own.run());
    templates.getChildren().add(ownCircuit);
    templates.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
    Button back = new Button("Back to the job (Esc)");
    back.setId("back-to-job");
    back.setOnAction(event -> giveUp.run());
    back.visibleProperty().bind(desk.jobs().jobProperty().isNotNull());
    back.managedProperty().bind(back.visibleProperty());
    HBox others = new HBox(choose, practice, back);
    others.getStyleClass().add("hc-line");
    VBox column =
        new VBox(
            Texts.large("Start a job: which circuit comes nearest?"),
            words("Each is invented. Lengths and settings can be put right afterwards, or left."),
            templates,
            Texts.large("Or go on with one"),
            words("A job is a file whose name ends in .job.json. Drop it here, or press Ctrl+O."),
            others);
    column.setMaxWidth(WIDTH);
    column.getStyleClass().add("hc-empty-column");
    getChildren().add(column);
  }

  private static Label words(String text) {
    Label words = Texts.words(text, "hc-muted");
    words.setMaxWidth(WIDTH);
    return words;
  }

  private Button button(CircuitTemplates.Template template) {
    Label title = new Label(template.title());
    title.getStyleClass().add("hc-strong");
    Label what = new Label();
    what.textProperty()
        .bind(
            Bindings.createStringBinding(
                () -> template.what().in(desk.jobs().pressures().unit()),
                desk.jobs().pressures().unitProperty()));
    what.getStyleClass().addAll("hc-muted", "hc-small");
    what.setMinWidth(USE_PREF_SIZE);
    Button button = new Button();
    button.setGraphic(new VBox(title, what));
    button
        .accessibleTextProperty()
        .bind(Bindings.concat(template.title(), ". ", what.textProperty()));
    button.setMaxWidth(Double.MAX_VALUE);
    button.getStyleClass().add("hc-template");
    button.setOnAction(event -> begin(template));
    return button;
  }

  private void begin(CircuitTemplates.Template template) {
    desk.jobs()
        .work()
        .start(
            "Reading the circuit",
            progress -> CircuitTemplates.circuit(template),
            circuit -> begin(desk, circuit));
  }

  /** A new job about a circuit, named after the day. */
  static void begin(Desk desk, Circuit circuit) {
    String day = LocalDate.now().format(DateTimeFormatter.ofPattern("d MMMM uuuu", Locale.UK));
    desk.jobs().begin(JobEdits.blank("New job, " + day, circuit), null);
  }

  private void key(KeyEvent event) {
    int now = circuits.indexOf(getScene().getFocusOwner());
    int step = event.getCode() == KeyCode.DOWN ? 1 : event.getCode() == KeyCode.UP ? -1 : 0;
    if (now >= 0 && step != 0) {
      circuits.get(Math.floorMod(now + step, circuits.size())).requestFocus();
      event.consume();
    } else if (now >= 0 && event.getCode() == KeyCode.ENTER) {
      circuits.get(now).fire();
      event.consume();
    }
  }

  /** Where the keyboard starts. */
  Node first() {
    return circuits.get(0);
  }
}
