package holdcurve.ui.window.practice;

import holdcurve.common.text.Titles;
import holdcurve.training.Debrief;
import holdcurve.training.Exercise;
import holdcurve.training.TrainingSession;
import holdcurve.ui.window.frame.FileDialogs;
import holdcurve.ui.window.frame.FileKind;
import holdcurve.ui.window.frame.Page;
import holdcurve.ui.window.job.PressureFormat;
import java.util.Locale;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.StringBinding;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** Learning on a car with a hidden fault. */
public final class PracticePage implements Page {
  private static final double SIDE = 330;
  private static final double GAUGE = 290;

  private final PracticeModel model;
  private final FileDialogs dialogs;
  private final PressureFormat pressures;
  private final StackPane content = new StackPane();
  private final ChoicePanel choice;
  private final BorderPane bay = new BorderPane();
  private final StepsPanel steps;
  private final WatchPanel watch;

  public PracticePage(
      PracticeModel model, ExerciseDraft draft, FileDialogs dialogs, PressureFormat pressures) {
    this.pressures = pressures;
    this.model = model;
    this.dialogs = dialogs;
    choice = new ChoicePanel(model, draft, dialogs);
    GaugePanel gauge = new GaugePanel(model, pressures);
    gauge.setPrefWidth(GAUGE);
    gauge.setMinWidth(GAUGE);
    EntriesPanel entries = new EntriesPanel(model, pressures);
    VBox.setVgrow(entries, Priority.ALWAYS);
    BeliefPanel belief = new BeliefPanel(model);
    belief.setPrefWidth(SIDE);
    belief.setMinWidth(SIDE);
    bay.setTop(head());
    bay.setLeft(gauge);
    steps = new StepsPanel(model);
    watch = new WatchPanel(model, pressures);
    showWatch(false);
    bay.setCenter(new VBox(steps, watch, entries));
    model.watch().addListener((property, before, now) -> watching(before != null, now != null));
    bay.setRight(belief);
    content.getChildren().add(choice);
    pressures.unitProperty().addListener((property, before, now) -> tellAgain());
    model.session().addListener((property, before, now) -> turn());
    model.debrief().addListener((property, before, now) -> turn());
    model.repairs().addListener((property, before, now) -> turn());
  }

  /** While a needle moves, its curve stands where the steps stood. */
  private void showWatch(boolean now) {
    watch.setVisible(now);
    watch.setManaged(now);
    steps.setVisible(!now);
    steps.setManaged(!now);
  }

  private void watching(boolean before, boolean now) {
    showWatch(now);
    if (now) {
      watch.focusFirst();
    } else if (before) {
      steps.requestFocus();
      steps.back();
    }
  }

  private Node head() {
    Label title = new Label();
    title.getStyleClass().add("hc-large");
    Label story = new Label();
    story.setWrapText(true);
    ProgressBar time = new ProgressBar(0);
    time.setId("practice-time");
    Label minutes = new Label();
    minutes.setMinWidth(Region.USE_PREF_SIZE);
    time.setPrefWidth(150);
    Button leave = new Button("Leave this car");
    leave.setMinWidth(Region.USE_PREF_SIZE);
    leave.setOnAction(event -> model.leave());
    model
        .session()
        .addListener(
            (property, before, now) -> {
              if (now != null) {
                Exercise exercise = now.exercise();
                title.setText(
                    Titles.shown(exercise.title()) + "  ·  level " + exercise.level() + " of 5");
                story.setText(exercise.story());
                time.progressProperty().bind(model.used().divide(exercise.minutes()));
                minutes.textProperty().bind(spent(exercise));
              }
            });
    VBox words = new VBox(title, story);
    HBox.setHgrow(words, Priority.ALWAYS);
    HBox head = new HBox(words, new VBox(time, minutes), leave);
    head.getStyleClass().add("hc-practice-head");
    return head;
  }

  private StringBinding spent(Exercise exercise) {
    return Bindings.createStringBinding(
        () ->
            String.format(
                Locale.ROOT, "%.0f of %.0f minutes", model.used().get(), exercise.minutes()),
        model.used());
  }

  private void turn() {
    TrainingSession session = model.session().get();
    Debrief debrief = model.debrief().get();
    if (session == null) {
      content.getChildren().setAll(choice);
    } else if (debrief != null) {
      DebriefPanel told = new DebriefPanel(debrief, model, pressures.unit(), this::saveScore);
      content.getChildren().setAll(told);
      told.requestFocus();
    } else if (model.repairs().get() != null) {
      RepairPanel repair = new RepairPanel(model, model.repairs().get());
      content.getChildren().setAll(repair);
      repair.focusFirst();
    } else {
      content.getChildren().setAll(bay);
      steps.focusFirst();
    }
  }

  private void tellAgain() {
    if (model.debrief().get() != null) {
      turn();
    }
  }

  private void saveScore() {
    dialogs.save(FileKind.SCORES, null, "scores.csv").ifPresent(model::saveScore);
  }

  @Override
  public String title() {
    return "Practice";
  }

  @Override
  public Node content() {
    return content;
  }

  @Override
  public boolean needsJob() {
    return false;
  }

  @Override
  public void focus() {
    if (model.session().get() == null) {
      choice.focusFirst();
    } else if (bay.getParent() == null) {
      content.requestFocus();
    } else {
      steps.focusFirst();
    }
  }
}
