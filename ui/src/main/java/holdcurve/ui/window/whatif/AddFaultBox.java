package holdcurve.ui.window.whatif;

import holdcurve.advice.whatif.Change;
import holdcurve.ui.window.frame.Named;
import holdcurve.ui.window.frame.Texts;
import java.util.Optional;
import javafx.beans.binding.Bindings;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** Where a fault is added, to see whether it would look like what was read. */
final class AddFaultBox extends VBox {
  private final WhatIfModel model;
  private final ComboBox<AddableFault> fault = new ComboBox<>();
  private final TextField size = new TextField();
  private final Label meaning = Texts.words("", "hc-small");
  private final Label wrong = Texts.caution("Give a number above nothing.");

  AddFaultBox(WhatIfModel model) {
    this.model = model;
    getStyleClass().add("hc-changes");
    fault.setId("added-fault");
    fault.setAccessibleText("Fault to add");
    Named.in(fault, "choose a fault", AddableFault::words);
    fault.setMaxWidth(Double.MAX_VALUE);
    Bindings.bindContent(fault.getItems(), model.addable());
    size.setId("added-size");
    size.setPrefColumnCount(5);
    size.setMinWidth(70);
    size.setOnAction(event -> add());
    meaning.setLabelFor(size);
    Button add = new Button("Add");
    add.setId("add-fault");
    add.setMinWidth(USE_PREF_SIZE);
    add.setOnAction(event -> add());
    HBox line = new HBox(size, add);
    for (var node : new javafx.scene.Node[] {line, meaning}) {
      node.visibleProperty().bind(fault.valueProperty().isNotNull());
      node.managedProperty().bind(node.visibleProperty());
    }
    wrong.setVisible(false);
    wrong.managedProperty().bind(wrong.visibleProperty());
    model
        .jobs()
        .pressures()
        .unitProperty()
        .addListener((property, before, now) -> ask(fault.getValue()));
    fault.valueProperty().addListener((property, before, now) -> ask(now));
    getChildren().addAll(fault, meaning, line, wrong);
  }

  private void ask(AddableFault chosen) {
    wrong.setVisible(false);
    meaning.setText(chosen == null ? "" : chosen.sizeWords(model.jobs().pressures()));
    size.setText(chosen == null ? "" : chosen.usualSize(model.jobs().pressures()));
  }

  private void add() {
    if (fault.getValue() != null) {
      Optional<Change> change = fault.getValue().change(size.getText(), model.jobs().pressures());
      wrong.setVisible(change.isEmpty());
      change.ifPresent(
          added -> {
            model.add(added);
            fault.setValue(null);
          });
    }
  }
}
