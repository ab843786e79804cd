package holdcurve.ui.window.help;

import holdcurve.file.JobWriter;
import holdcurve.ui.problem.ProblemFile;
import holdcurve.ui.theme.Appearance;
import holdcurve.ui.window.job.OpenJobModel;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;

/** Shows what a report of a problem would hold, and writes it once that was looked over. */
public final class ProblemWindow {
  private static final String HAPPENED = "Reported from the window. It was not ranked again.";

  private final OpenJobModel model;
  private final Appearance looks;
  private final Function<String, Optional<Path>> target;

  /**
   * @param target asks where to write; given the name that is proposed
   */
  public ProblemWindow(
      OpenJobModel model, Appearance looks, Function<String, Optional<Path>> target) {
    this.model = model;
    this.looks = looks;
    this.target = target;
  }

  /** Gathers the job as it stands in its file, and shows what came together. */
  public void show() {
    Path job = model.fileProperty().get();
    if (job == null) {
      model.report("Save the job first: a report of a problem holds it as it stands in its file.");
      return;
    }
    model
        .work()
        .start(
            "Gathering what belongs to the job",
            progress -> ProblemFile.of(job, HAPPENED),
            problem -> show(job, problem));
  }

  private void show(Path job, ProblemFile problem) {
    Label heading = words("This goes into the zip. Nothing is sent.");
    heading.getStyleClass().add("hc-heading");
    VBox page = new VBox(heading, entries(problem));
    problem.missing().forEach(one -> page.getChildren().add(words("Not in it: " + one)));
    page.getChildren()
        .add(words("Look it over, write it, then send it with a sentence on what went wrong."));
    page.getStyleClass().add("hc-guide");
    ScrollPane scroll = new ScrollPane(page);
    scroll.setFitToWidth(true);
    Button write = new Button("Write the zip …");
    write.setId("write-problem");
    write.setDefaultButton(true);
    Button leave = new Button("Leave it (Esc)");
    FlowPane buttons = new FlowPane(write, leave);
    buttons.getStyleClass().addAll("hc-buttons", "hc-guide-buttons");
    BorderPane root = new BorderPane(scroll);
    root.setId("problem");
    root.setBottom(buttons);
    Stage stage = SideWindow.of("Report a problem", root, looks, 720, 480);
    leave.setOnAction(event -> stage.close());
    write.setOnAction(
        event ->
            target
                .apply(proposed(job))
                .ifPresent(
                    file -> {
                      stage.close();
                      write(problem, file);
                    }));
    stage.show();
  }

  private void write(ProblemFile problem, Path file) {
    model
        .work()
        .start(
            "Writing the report of the problem",
            progress -> {
              problem.write(file);
              return file;
            },
            written -> model.report("Written to " + written + ". Nothing was sent."));
  }

  private static String proposed(Path job) {
    return job.getFileName().toString().replace(JobWriter.ENDING, "") + ProblemFile.ENDING;
  }

  private static GridPane entries(ProblemFile problem) {
    GridPane grid = new GridPane();
    grid.getStyleClass().add("hc-guide-table");
    int line = 0;
    for (ProblemFile.Entry entry : problem.entries()) {
      Label what = words(entry.what());
      what.getStyleClass().add("hc-muted");
      grid.addRow(line++, words(entry.name()), words(entry.size()), what);
    }
    return grid;
  }

  private static Label words(String text) {
    Label words = new Label(text);
    words.setWrapText(true);
    return words;
  }
}
