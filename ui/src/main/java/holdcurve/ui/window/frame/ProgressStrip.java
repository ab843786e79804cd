package holdcurve.ui.window.frame;

import holdcurve.ui.window.job.OpenJobModel;
import holdcurve.ui.window.job.WorkModel;
import java.util.HashMap;
import java.util.Map;
import javafx.animation.PauseTransition;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableValue;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

/** How far the ranking and other work in the background is, and a way to stop each. */
final class ProgressStrip extends VBox {
  /** Work that is done sooner is not worth a flicker. */
  private static final Duration PATIENCE = Duration.millis(300);

  /** Share at which a bar looks full [-]. */
  private static final double FULL = 0.99;

  private final Map<WorkModel.Item, HBox> rows = new HashMap<>();

  ProgressStrip(OpenJobModel model) {
    HBox ranking =
        row(
            model.ranking().progressProperty(),
            model.ranking().stepProperty(),
            () -> model.ranking().cancel());
    ranking.setId("progress");
    ranking.visibleProperty().bind(model.ranking().busyProperty());
    ranking.managedProperty().bind(ranking.visibleProperty());
    getChildren().add(ranking);
    model.work().running().addListener(this::changed);
  }

  private void changed(ListChangeListener.Change<? extends WorkModel.Item> change) {
    while (change.next()) {
      change.getRemoved().forEach(item -> getChildren().remove(rows.remove(item)));
      change.getAddedSubList().forEach(this::add);
    }
  }

  private void add(WorkModel.Item item) {
    HBox row = row(item.shareProperty(), item.stepProperty(), item::cancel);
    row.setVisible(false);
    row.setManaged(false);
    rows.put(item, row);
    getChildren().add(row);
    PauseTransition wait = new PauseTransition(PATIENCE);
    wait.setOnFinished(
        event -> {
          row.setVisible(true);
          row.setManaged(true);
        });
    wait.play();
  }

  /** A full bar beside work that goes on would be untrue: how long that takes is not known. */
  private static double shown(double share) {
    return share >= FULL ? ProgressBar.INDETERMINATE_PROGRESS : share;
  }

  private static HBox row(
      ObservableValue<Number> share, ObservableValue<String> what, Runnable cancel) {
    ProgressBar bar = new ProgressBar();
    bar.progressProperty()
        .bind(Bindings.createDoubleBinding(() -> shown(share.getValue().doubleValue()), share));
    bar.setPrefWidth(320);
    bar.setMinWidth(160);
    Label step = new Label();
    step.textProperty().bind(what);
    step.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(step, Priority.ALWAYS);
    Button stop = new Button("Stop (Esc)");
    stop.setMinWidth(Region.USE_PREF_SIZE);
    stop.setOnAction(event -> cancel.run());
    HBox row = new HBox(bar, step, stop);
    row.getStyleClass().add("hc-progress");
    return row;
  }
}
