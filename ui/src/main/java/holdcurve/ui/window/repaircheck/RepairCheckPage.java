package holdcurve.ui.window.repaircheck;

import holdcurve.ui.window.frame.OutOfDate;
import holdcurve.ui.window.frame.Page;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.BooleanBinding;
import javafx.scene.Node;
import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Does it hold now? The last holds over what they should show, and the list of the refit. */
public final class RepairCheckPage implements Page {
  /** Share of the width that the refit list takes [-]. */
  private static final double LIST_SHARE = 0.36;

  private final RepairCheckModel model;
  private final BorderPane content = new BorderPane();
  private final CheckActions actions;

  /**
   * @param turnToHolds shows where readings are taken
   * @param open shows a file in the program that the desktop has for it
   */
  public RepairCheckPage(RepairCheckModel model, Runnable turnToHolds, Consumer<Path> open) {
    this.model = model;
    actions = new CheckActions(model, open);
    CheckedHolds holds = new CheckedHolds(model);
    VBox.setVgrow(holds, Priority.ALWAYS);
    VBox left = new VBox();
    left.getChildren().addAll(new TimelineStrip(model, left.widthProperty()), holds, actions);
    left.setMinWidth(0);
    left.setPrefWidth(0);
    HBox.setHgrow(left, Priority.ALWAYS);
    RefitPanel refit = new RefitPanel(model);
    refit.prefWidthProperty().bind(content.widthProperty().multiply(LIST_SHARE));
    refit.setMinWidth(0);
    CheckBar verdict =
        new CheckBar(
            model,
            () -> {
              turnToHolds.run();
              model.holdAgain();
            });
    BooleanBinding old =
        model
            .outdatedProperty()
            .and(
                Bindings.createBooleanBinding(
                    () -> model.unproved().isEmpty(), model.jobProperty()));
    content.setTop(new VBox(OutOfDate.of(old, "Check again (F6)", model::check, verdict), verdict));
    OutOfDate.dim(model.outdatedProperty(), holds);
    content.setCenter(new HBox(left, refit));
  }

  @Override
  public String title() {
    return "Repair check";
  }

  @Override
  public Node content() {
    return content;
  }

  @Override
  public List<MenuItem> actions() {
    return List.of(
        action("Check the last holds", new KeyCodeCombination(KeyCode.F6), model::check),
        action(
            "Write the report",
            new KeyCodeCombination(KeyCode.P, KeyCombination.SHORTCUT_DOWN),
            model::report));
  }

  private static MenuItem action(String text, KeyCombination keys, Runnable what) {
    MenuItem item = new MenuItem(text);
    item.setAccelerator(keys);
    item.setOnAction(event -> what.run());
    return item;
  }

  @Override
  public void focus() {
    actions.focusCheck();
  }
}
