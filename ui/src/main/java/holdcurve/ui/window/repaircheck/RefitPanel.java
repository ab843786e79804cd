package holdcurve.ui.window.repaircheck;

import holdcurve.record.refit.RefitStep;
import holdcurve.ui.window.frame.StepCautions;
import holdcurve.ui.window.frame.Texts;
import java.util.List;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The refit list, ticked with initials and today's date. */
final class RefitPanel extends VBox {
  private final RepairCheckModel model;
  private final Label heading = new Label();
  private final TextField initials = new TextField();
  private final Label wanted = new Label("A tick needs your initials.");
  private final VBox steps = new VBox();
  private List<RefitStep> shown = List.of();

  RefitPanel(RepairCheckModel model) {
    this.model = model;
    getStyleClass().add("hc-refit");
    heading.getStyleClass().add("hc-heading");
    initials.setId("initials");
    initials.setAccessibleText("Initials of who ticks");
    initials.setPrefColumnCount(4);
    initials.textProperty().bindBidirectional(model.initialsProperty());
    wanted.getStyleClass().add("hc-caution");
    wanted.setVisible(false);
    wanted.managedProperty().bind(wanted.visibleProperty());
    wanted.setWrapText(true);
    wanted.setMinHeight(USE_PREF_SIZE);
    Label title = new Label("Initials");
    title.setMinWidth(USE_PREF_SIZE);
    initials.setMinWidth(USE_PREF_SIZE);
    initials.textProperty().addListener((property, before, now) -> wanted.setVisible(false));
    HBox row = new HBox(title, initials, wanted);
    row.getStyleClass().add("field-row");
    VBox head = new VBox(heading, Texts.words(StepCautions.REPAIR, "hc-caution", "hc-small"), row);
    head.getStyleClass().add("hc-refit-head");
    steps.getStyleClass().add("hc-refit-steps");
    ScrollPane scroll = new ScrollPane(steps);
    scroll.setFitToWidth(true);
    scroll.setFocusTraversable(false);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().addAll(head, scroll);
    model.jobProperty().addListener((property, before, now) -> update());
    update();
  }

  private void update() {
    List<RefitStep> now = model.steps();
    if (!now.equals(shown)) {
      shown = now;
      long done = now.stream().filter(RefitStep::isDone).count();
      heading.setText("Refit: " + done + " of " + now.size() + " done");
      int focused = focused();
      steps.getChildren().setAll(now.stream().map(this::row).toList());
      if (focused >= 0 && focused < now.size()) {
        box(focused).requestFocus();
      }
    }
  }

  /** Rows are made anew after a tick; the keyboard stays where it was. */
  private int focused() {
    for (int i = 0; i < steps.getChildren().size(); i++) {
      if (box(i).isFocused()) {
        return i;
      }
    }
    return -1;
  }

  private CheckBox box(int row) {
    return (CheckBox) ((VBox) steps.getChildren().get(row)).getChildren().get(1);
  }

  private VBox row(RefitStep step) {
    CheckBox box = new CheckBox(step.text());
    box.setId("step-" + step.id());
    box.setWrapText(true);
    box.setMinHeight(USE_PREF_SIZE);
    box.setSelected(step.isDone());
    box.setOnAction(event -> ticked(step, box));
    VBox words = new VBox();
    words.getStyleClass().add("hc-refit-step-words");
    step.tick()
        .ifPresent(
            tick ->
                words
                    .getChildren()
                    .add(
                        Texts.words(
                            "done " + tick.date() + ", " + tick.by(), "hc-strong", "hc-small")));
    if (!step.caution().isEmpty()) {
      words.getChildren().add(Texts.words(step.caution(), "hc-muted", "hc-small"));
    }
    VBox row = new VBox(words, box);
    row.getStyleClass().add("hc-refit-step");
    return row;
  }

  private void ticked(RefitStep step, CheckBox box) {
    if (!model.tick(step.id(), box.isSelected())) {
      box.setSelected(step.isDone());
      wanted.setVisible(true);
      initials.requestFocus();
    }
  }
}
