package holdcurve.ui.window.holdtests;

import holdcurve.ui.window.frame.Texts;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** What was understood of a pasted or imported log, before it is taken. */
final class ImportCard extends VBox {
  private final HoldTestsModel model;
  private final VBox understood = new VBox();
  private final VBox sample = new VBox();
  private final Button take = new Button("Take these readings (Enter)");

  ImportCard(HoldTestsModel model) {
    this.model = model;
    setId("import");
    getStyleClass().add("hc-card");
    setMaxSize(760, 480);
    take.setDefaultButton(true);
    take.getStyleClass().add("accent");
    take.setOnAction(event -> model.intake().take());
    Button drop = new Button("Leave it (Esc)");
    drop.setCancelButton(true);
    drop.setOnAction(event -> model.intake().drop());
    ScrollPane scroll = new ScrollPane(understood);
    scroll.setFitToWidth(true);
    HBox.setHgrow(scroll, Priority.ALWAYS);
    VBox readings = new VBox(Texts.words("Readings", "hc-strong"), sample);
    readings.setMinWidth(190);
    HBox middle = new HBox(scroll, readings);
    middle.getStyleClass().add("hc-card-middle");
    setVgrow(middle, Priority.ALWAYS);
    HBox buttons = new HBox(take, drop);
    buttons.getStyleClass().add("hc-line");
    getChildren()
        .addAll(Texts.words("This is how it was understood", "hc-heading"), middle, buttons);
    visibleProperty().bind(model.intake().previewProperty().isNotNull());
    managedProperty().bind(visibleProperty());
    model.intake().previewProperty().addListener((property, before, now) -> show(now));
    model
        .pressures()
        .unitProperty()
        .addListener((property, before, now) -> show(model.intake().previewProperty().get()));
  }

  private void show(Preview preview) {
    if (preview != null) {
      understood
          .getChildren()
          .setAll(
              preview.understood(model.pressures()).stream()
                  .map(s -> Texts.words("–  " + s))
                  .toList());
      sample
          .getChildren()
          .setAll(preview.sample(model.pressures()).stream().map(s -> Texts.words(s)).toList());
      take.requestFocus();
    }
  }
}
