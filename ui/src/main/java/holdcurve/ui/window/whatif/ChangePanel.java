package holdcurve.ui.window.whatif;

import holdcurve.ui.window.frame.Cautions;
import javafx.collections.ListChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Slider;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** What can be put right or changed. */
final class ChangePanel extends VBox {
  private final WhatIfModel model;
  private final VBox repairs = new VBox();
  private final VBox sliders = new VBox();
  private final Button reset = new Button("Back to as it is");

  ChangePanel(WhatIfModel model) {
    this.model = model;
    getStyleClass().add("hc-ranking");
    setMinWidth(350);
    setMaxWidth(560);
    repairs.setId("repairs");
    sliders.setId("sliders");
    repairs.getStyleClass().add("hc-changes");
    sliders.getStyleClass().add("hc-changes");
    reset.setId("reset");
    reset.setOnAction(event -> model.reset());
    VBox list =
        new VBox(
            heading("Put right what is suspected", "with the chance that the hold then passes"),
            repairs,
            heading("Change", ""),
            sliders,
            reset,
            caution());
    list.getStyleClass().add("hc-change-list");
    ScrollPane scroll = new ScrollPane(list);
    scroll.setFitToWidth(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().add(scroll);
    model.remedies().addListener((ListChangeListener<Remedy>) change -> fillRepairs());
    model.levers().addListener((ListChangeListener<Lever>) change -> fillSliders());
    fillRepairs();
    fillSliders();
  }

  private static Node heading(String text, String explained) {
    Label title = new Label(text);
    title.getStyleClass().add("hc-heading");
    Label words = new Label(explained);
    words.getStyleClass().addAll("hc-muted", "hc-small");
    words.setManaged(!explained.isEmpty());
    return new VBox(title, words);
  }

  private static Label caution() {
    Label caution = new Label(Cautions.REPAIR);
    caution.setWrapText(true);
    caution.setMinHeight(USE_PREF_SIZE);
    caution.getStyleClass().addAll("hc-caution", "hc-small");
    return caution;
  }

  private void fillRepairs() {
    repairs.getChildren().clear();
    model.remedies().forEach(remedy -> repairs.getChildren().add(row(remedy)));
    if (model.remedies().isEmpty()) {
      Label none = new Label("Nothing is suspected, or the job is not ranked yet (F5).");
      none.setWrapText(true);
      none.getStyleClass().add("hc-muted");
      repairs.getChildren().add(none);
    }
  }

  private static Node row(Remedy remedy) {
    CheckBox box = new CheckBox(remedy.offer().name());
    box.setWrapText(true);
    box.selectedProperty().bindBidirectional(remedy.triedProperty());
    box.setMaxWidth(Double.MAX_VALUE);
    box.setMinHeight(USE_PREF_SIZE);
    HBox.setHgrow(box, Priority.ALWAYS);
    Label chance = new Label(ComparisonTable.chance(remedy.chance()));
    chance.setMinWidth(Region.USE_PREF_SIZE);
    return new HBox(box, chance);
  }

  private void fillSliders() {
    sliders.getChildren().clear();
    model.levers().forEach(lever -> sliders.getChildren().add(row(lever)));
  }

  private static Node row(Lever lever) {
    Label name = new Label(lever.name());
    Label value = new Label(lever.text());
    value.setMinWidth(Region.USE_PREF_SIZE);
    name.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(name, Priority.ALWAYS);
    lever.valueProperty().addListener((property, before, now) -> value.setText(lever.text()));
    Slider slider = new Slider(lever.least(), lever.most(), lever.valueProperty().get());
    slider.setBlockIncrement((lever.most() - lever.least()) / 20);
    slider.setAccessibleText(lever.name());
    slider.valueProperty().bindBidirectional(lever.valueProperty());
    return new VBox(new HBox(name, value), slider);
  }

  /** Puts the keyboard on the first thing that can be tried. */
  void focusFirst() {
    (repairs.lookup(".check-box") instanceof CheckBox box ? box : reset).requestFocus();
  }
}
