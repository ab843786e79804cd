package holdcurve.ui.window.practice;

import holdcurve.ui.window.job.PressureFormat;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** What has been found out at the car so far. */
final class EntriesPanel extends ScrollPane {
  private final PressureFormat pressures;
  private final VBox list = new VBox();

  EntriesPanel(PracticeModel model, PressureFormat pressures) {
    this.pressures = pressures;
    setId("practice-entries");
    setFitToWidth(true);
    setMinHeight(0);
    setPrefHeight(0);
    list.getStyleClass().add("hc-practice-rows");
    setContent(list);
    model.entries().addListener((ListChangeListener<PracticeModel.Entry>) change -> fill(model));
    pressures.unitProperty().addListener((property, before, now) -> fill(model));
    fill(model);
  }

  private void fill(PracticeModel model) {
    list.getChildren().clear();
    if (model.entries().isEmpty()) {
      Label nothing = new Label("Nothing found out yet. Begin with a hold.");
      nothing.getStyleClass().add("hc-muted");
      list.getChildren().add(nothing);
    }
    model.entries().forEach(entry -> list.getChildren().add(card(entry)));
    layout();
    setVvalue(0);
  }

  private VBox card(PracticeModel.Entry entry) {
    Label step = new Label(entry.step());
    step.setWrapText(true);
    step.getStyleClass().add("hc-strong");
    FlowPane lines = new FlowPane(18, 2);
    for (String line : pressures.texts(entry.came())) {
      Label label = new Label(line);
      label.setWrapText(true);
      lines.getChildren().add(label);
    }
    VBox card = new VBox(step, lines);
    card.getStyleClass().add("hc-practice-card");
    return card;
  }
}
