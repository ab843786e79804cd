package holdcurve.ui.window.frame;

import holdcurve.physics.circuit.Circuit;
import holdcurve.ui.scenario.Scenarios;
import holdcurve.ui.window.job.CircuitTemplates;
import holdcurve.ui.window.job.JobEdits;
import holdcurve.ui.window.job.RecentJobs;
import java.nio.file.Files;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.beans.binding.Bindings;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** What stands in the window while no job is open, and where a new one is begun. */
final class EmptyState extends VBox {
  private static final double WIDTH = 1160;

  /** Share of it that jobs to go on with take [-]. */
  private static final double SHARE = 0.42;

  private final Desk desk;
  private final List<Button> circuits = new ArrayList<>();
  private final VBox recent = new VBox();

  /**
   * @param open asks for a job and opens it
   * @param own asks for a circuit and begins a job with it
   * @param giveUp goes back to the open job
   */
  EmptyState(Desk desk, Runnable open, Runnable own, Runnable giveUp) {
    this.desk = desk;
    setId("empty");
    getStyleClass().add("hc-empty");
    Button back = new Button("Back to the job (Esc)");
    back.setId("back-to-job");
    back.setOnAction(event -> giveUp.run());
    back.visibleProperty().bind(desk.jobs().jobProperty().isNotNull());
    back.managedProperty().bind(back.visibleProperty());
    VBox goOn =
        column(
            Texts.large("Go on with a job"),
            words("Drop a job file here, or press Ctrl+O."),
            recent,
            example(),
            others(open));
    VBox anew =
        column(
            Texts.large("Start a job"),
            words("Which circuit comes nearest? Each is invented; put it right afterwards."),
            templates(own),
            back);
    goOn.setPrefWidth(SHARE * WIDTH);
    goOn.setMinWidth(0);
    HBox.setHgrow(anew, Priority.ALWAYS);
    HBox both = new HBox(goOn, anew);
    both.getStyleClass().add("hc-start");
    both.setMaxWidth(WIDTH);
    getChildren().add(both);
    addEventFilter(KeyEvent.KEY_PRESSED, this::key);
    recent.setId("recent-jobs");
    recent.getStyleClass().add("hc-templates");
    desk.jobs()
        .recent()
        .all()
        .addListener((ListChangeListener<RecentJobs.Recent>) change -> list());
    visibleProperty().addListener((property, before, now) -> list());
    list();
  }

  private static VBox column(Node... parts) {
    VBox column = new VBox(parts);
    column.getStyleClass().add("hc-empty-column");
    return column;
  }

  /** Jobs that were open lately, with the car, the day and how far each is. */
  private void list() {
    if (!isVisible()) {
      return;
    }
    recent.getChildren().clear();
    desk.jobs().recent().all().stream()
        .filter(job -> Files.exists(job.file()))
        .forEach(job -> recent.getChildren().add(button(job)));
    if (recent.getChildren().isEmpty()) {
      recent.getChildren().add(words("None was open yet."));
    }
  }

  private Button button(RecentJobs.Recent job) {
    String about = job.date().isEmpty() ? job.state() : job.date() + ", " + job.state();
    return large(job.title(), about, () -> desk.jobs().open(job.file()));
  }

  private static Button large(String title, String about, Runnable what) {
    Label name = new Label(title);
    name.getStyleClass().add("hc-strong");
    Label words = new Label(about);
    words.getStyleClass().addAll("hc-muted", "hc-small");
    Button button = new Button();
    button.setGraphic(new VBox(name, words));
    button.setMinWidth(0);
    button.setAccessibleText(title + ". " + about);
    button.setMaxWidth(Double.MAX_VALUE);
    button.getStyleClass().add("hc-template");
    button.setOnAction(event -> what.run());
    return button;
  }

  /** Shows what an answer looks like; nothing where the program stands alone. */
  private Node example() {
    return Scenarios.first()
        .map(
            file -> {
              Button button =
                  large(
                      "Example, read-only",
                      "A case with its answer. It stays as shipped.",
                      () -> desk.jobs().open(file));
              button.setId("open-example");
              return (Node) button;
            })
        .orElseGet(Region::new);
  }

  private FlowPane others(Runnable open) {
    Button choose = new Button("Open a job …");
    choose.setId("open-job");
    choose.setOnAction(event -> open.run());
    Button practice = new Button("Practise on a car with a hidden fault");
    practice.setId("to-practice");
    practice.setOnAction(event -> desk.page().set("Practice"));
    Button cases = new Button("All jobs of your garage");
    cases.setId("to-cases");
    cases.setOnAction(event -> desk.page().set("Cases"));
    FlowPane others = new FlowPane(choose, cases, practice);
    others.getStyleClass().add("hc-buttons");
    return others;
  }

  private VBox templates(Runnable own) {
    VBox templates = new VBox();
    templates.setId("templates");
    templates.getStyleClass().add("hc-templates");
    CircuitTemplates.all().forEach(template -> circuits.add(button(template)));
    templates.getChildren().addAll(circuits);
    Button ownCircuit = new Button("A circuit file of your own …");
    ownCircuit.setId("own-circuit");
    ownCircuit.setOnAction(event -> own.run());
    templates.getChildren().add(ownCircuit);
    return templates;
  }

  private static Label words(String text) {
    Label words = Texts.words(text, "hc-muted");
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

  /** Up and down go along a list of buttons, Enter presses one. */
  private void key(KeyEvent event) {
    if (!(getScene().getFocusOwner() instanceof Button button)) {
      return;
    }
    int step = event.getCode() == KeyCode.DOWN ? 1 : event.getCode() == KeyCode.UP ? -1 : 0;
    List<Node> list = button.getParent().getChildrenUnmodifiable();
    if (step != 0) {
      list.get(Math.floorMod(list.indexOf(button) + step, list.size())).requestFocus();
      event.consume();
    } else if (event.getCode() == KeyCode.ENTER) {
      button.fire();
      event.consume();
    }
  }

  /** Where the keyboard starts. */
  Node first() {
    return circuits.get(0);
  }
}
