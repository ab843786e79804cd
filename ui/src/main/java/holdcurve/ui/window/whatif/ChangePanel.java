package holdcurve.ui.window.whatif;

import holdcurve.common.number.Chance;
import holdcurve.ui.window.frame.Named;
import holdcurve.ui.window.frame.Scrolled;
import holdcurve.ui.window.frame.StepCautions;
import holdcurve.ui.window.frame.Texts;
import java.util.List;
import javafx.collections.ListChangeListener;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Slider;
import javafx.scene.control.TitledPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** What can be put right or changed. */
final class ChangePanel extends VBox {
  private final WhatIfModel model;
  private final VBox repairs = rows("repairs");
  private final VBox sliders = rows("sliders");
  private final VBox swaps = rows("swaps");
  private final Button reset = new Button("Back to as it is");

  ChangePanel(WhatIfModel model) {
    this.model = model;
    getStyleClass().add("hc-ranking");
    setMinWidth(0);
    reset.setId("reset");
    reset.setOnAction(event -> model.reset());
    VBox list =
        new VBox(
            section(
                "Repairs", true, Texts.aside("with the chance that the hold then passes"), repairs),
            section("Lengths, pressures, temperatures", true, sliders),
            section("Another hose, fuel or part", false, swaps, new RenewBox(model)),
            section("Add a fault", false, new AddFaultBox(model)),
            foot());
    list.getStyleClass().add("hc-change-list");
    list.setMinWidth(0);
    ScrollPane scroll = Scrolled.down(list);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren().add(scroll);
    follow(model.remedies(), repairs, ChangePanel::row);
    follow(model.levers(), sliders, this::row);
    follow(model.swaps(), swaps, ChangePanel::row);
    model.remedies().addListener((ListChangeListener<Remedy>) change -> sayNone());
    sayNone();
  }

  private static VBox rows(String id) {
    VBox rows = new VBox();
    rows.setId(id);
    rows.getStyleClass().add("hc-changes");
    return rows;
  }

  private static TitledPane section(String title, boolean open, Node... content) {
    VBox box = new VBox(content);
    box.getStyleClass().add("hc-changes");
    box.setMinWidth(0);
    TitledPane pane = new TitledPane(title, box);
    pane.getStyleClass().add("hc-section");
    pane.setMinWidth(0);
    pane.setAnimated(false);
    pane.setExpanded(open);
    return pane;
  }

  private VBox foot() {
    VBox foot = new VBox(reset, Texts.caution(StepCautions.REPAIR));
    foot.getStyleClass().add("hc-changes");
    return foot;
  }

  private static <T> void follow(
      ObservableList<T> things, VBox rows, java.util.function.Function<T, Node> row) {
    Runnable fill = () -> rows.getChildren().setAll(things.stream().map(row).toList());
    things.addListener((ListChangeListener<T>) change -> fill.run());
    fill.run();
  }

  private void sayNone() {
    if (model.remedies().isEmpty()) {
      repairs
          .getChildren()
          .setAll(
              List.of(
                  Texts.words(
                      "Nothing is suspected, or the job is not ranked yet (F5).", "hc-muted")));
    }
  }

  private static Node row(Remedy remedy) {
    CheckBox box = new CheckBox(remedy.offer().name());
    box.setWrapText(true);
    box.selectedProperty().bindBidirectional(remedy.triedProperty());
    box.setMaxWidth(Double.MAX_VALUE);
    box.setMinSize(0, USE_PREF_SIZE);
    HBox.setHgrow(box, Priority.ALWAYS);
    Label chance = new Label(Chance.words(remedy.chance()));
    chance.setMinWidth(Region.USE_PREF_SIZE);
    return new HBox(box, chance);
  }

  private Node row(Lever lever) {
    Label name = new Label(lever.name());
    name.setMinWidth(0);
    Label value = new Label();
    value.setMinWidth(Region.USE_PREF_SIZE);
    name.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(name, Priority.ALWAYS);
    value
        .textProperty()
        .bind(
            javafx.beans.binding.Bindings.createStringBinding(
                () -> lever.text(model.jobs().pressures()),
                lever.valueProperty(),
                model.jobs().pressures().unitProperty()));
    Slider slider = new Slider(lever.least(), lever.most(), lever.valueProperty().get());
    slider.setBlockIncrement((lever.most() - lever.least()) / 20);
    slider.setAccessibleText(lever.name());
    slider.valueProperty().bindBidirectional(lever.valueProperty());
    return new VBox(new HBox(name, value), slider);
  }

  private static Node row(Swap swap) {
    ComboBox<Swap.Choice> kinds = new ComboBox<>();
    kinds.getItems().setAll(swap.choices());
    kinds.setConverter(new Named<>(Swap.Choice::words));
    kinds.valueProperty().bindBidirectional(swap.chosenProperty());
    kinds.setMaxWidth(Double.MAX_VALUE);
    kinds.setAccessibleText(swap.name());
    Label name = new Label(swap.name());
    name.setLabelFor(kinds);
    return new VBox(name, kinds);
  }

  /** Puts the keyboard on the first thing that can be tried. */
  void focusFirst() {
    (repairs.lookup(".check-box") instanceof CheckBox box ? box : reset).requestFocus();
  }
}
