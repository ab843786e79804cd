package holdcurve.ui.window.frame;

import holdcurve.casebook.JobPath;
import holdcurve.ui.window.job.OpenJobModel;
import holdcurve.ui.window.job.OpenJobPath;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** How far the job is: each step with a tick once it is done, the next one in bold. */
final class PathList extends VBox {
  private static final PseudoClass NEXT = PseudoClass.getPseudoClass("next");

  private final OpenJobModel model;
  private final Map<JobPath.Step, Button> steps = new EnumMap<>(JobPath.Step.class);
  private Set<JobPath.Step> shown;

  /**
   * @param go turns to the page with a title
   */
  PathList(OpenJobModel model, Consumer<String> go) {
    this.model = model;
    setId("path");
    getStyleClass().add("hc-path");
    Label title = new Label("The job");
    title.getStyleClass().addAll("hc-muted", "hc-small");
    getChildren().add(title);
    for (JobPath.Step step : JobPath.Step.values()) {
      Button button = new Button(step.words());
      button.setId("path-" + step.words().toLowerCase(java.util.Locale.ROOT));
      button.getStyleClass().addAll("hc-flat", "hc-small");
      button.setMinWidth(USE_PREF_SIZE);
      button.setFocusTraversable(false);
      button.setOnAction(event -> go.accept(page(step)));
      steps.put(step, button);
      getChildren().add(button);
    }
    visibleProperty().bind(model.jobProperty().isNotNull());
    model.jobProperty().addListener((property, before, now) -> show());
    model.ranking().resultProperty().addListener((property, before, now) -> show());
    model.ranking().outdatedProperty().addListener((property, before, now) -> show());
    model.check().valueProperty().addListener((property, before, now) -> show());
    model.check().outdatedProperty().addListener((property, before, now) -> show());
    show();
  }

  private void show() {
    Set<JobPath.Step> done = OpenJobPath.done(model);
    if (done.equals(shown)) {
      return;
    }
    shown = done;
    boolean nextFound = false;
    for (Map.Entry<JobPath.Step, Button> entry : steps.entrySet()) {
      boolean isDone = done.contains(entry.getKey());
      Button button = entry.getValue();
      button.setGraphic(isDone ? Sign.TICK.node() : open());
      button.setAccessibleText(entry.getKey().words() + (isDone ? ": done" : ": to do"));
      button.pseudoClassStateChanged(NEXT, !isDone && !nextFound);
      nextFound = nextFound || !isDone;
    }
  }

  /** Title of the page where a step is done. */
  private static String page(JobPath.Step step) {
    return switch (step) {
      case DESCRIBED -> "Circuit";
      case HELD -> "Hold tests";
      case JUDGED, SETTLED -> "Suspects";
      case REPAIRED, PROVED -> "Repair check";
    };
  }

  /** Stands where the tick will be. */
  private static Node open() {
    Region open = new Region();
    open.getStyleClass().add("hc-path-open");
    return open;
  }
}
