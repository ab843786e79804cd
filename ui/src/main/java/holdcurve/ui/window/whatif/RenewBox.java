package holdcurve.ui.window.whatif;

import holdcurve.circuit.Part;
import holdcurve.ui.window.frame.Named;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** Where a part is renewed; choosing it is enough. */
final class RenewBox extends VBox {
  RenewBox(WhatIfModel model) {
    ComboBox<Part> part = new ComboBox<>();
    part.setId("renewed-part");
    part.setPromptText("choose a part");
    part.setConverter(new Named<>(one -> one.id() + " (" + one.kind().title() + ")"));
    part.setMaxWidth(Double.MAX_VALUE);
    part.setOnShowing(event -> part.getItems().setAll(model.renewable()));
    model.levers().addListener((javafx.beans.Observable list) -> fill(model, part));
    fill(model, part);
    part.setOnAction(
        event -> {
          Part chosen = part.getValue();
          if (chosen != null) {
            model.renew(chosen);
            part.setValue(null);
          }
        });
    Label name = new Label("A part as good as new");
    name.setLabelFor(part);
    getChildren().addAll(name, part);
  }

  private static void fill(WhatIfModel model, ComboBox<Part> part) {
    part.getItems().setAll(model.renewable());
  }
}
