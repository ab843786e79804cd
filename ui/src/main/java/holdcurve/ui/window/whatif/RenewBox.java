package holdcurve.ui.window.whatif;

import holdcurve.physics.circuit.Part;
import holdcurve.ui.window.frame.Named;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Where a part is renewed. Going through the list with the keys renews none before the button. */
final class RenewBox extends VBox {
  private final WhatIfModel model;
  private final ComboBox<Part> part = new ComboBox<>();

  RenewBox(WhatIfModel model) {
    this.model = model;
    part.setId("renewed-part");
    Named.in(part, "choose a part", one -> one.id() + " (" + one.kind().title() + ")");
    part.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(part, Priority.ALWAYS);
    model.levers().addListener((javafx.beans.Observable list) -> fill());
    fill();
    Button renew = new Button("Renew");
    renew.setId("renew");
    renew.setMinWidth(USE_PREF_SIZE);
    renew.visibleProperty().bind(part.valueProperty().isNotNull());
    renew.managedProperty().bind(renew.visibleProperty());
    renew.setOnAction(event -> renew());
    Label name = new Label("A part as good as new");
    name.setLabelFor(part);
    HBox line = new HBox(part, renew);
    line.getStyleClass().add("hc-line");
    getChildren().addAll(name, line);
  }

  private void renew() {
    model.renew(part.getValue());
    part.requestFocus();
    part.setValue(null);
  }

  private void fill() {
    part.getItems().setAll(model.renewable());
  }
}
