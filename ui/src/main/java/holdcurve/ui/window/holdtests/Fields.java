package holdcurve.ui.window.holdtests;

import java.util.function.Consumer;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;

/** Fields beside the readings. */
final class Fields {
  private Fields() {}

  /**
   * @param units what stands behind the field
   */
  static HBox labelled(String text, TextField field, Label... units) {
    Label label = new Label(text);
    label.setLabelFor(field);
    label.setMinWidth(Region.USE_PREF_SIZE);
    field.setMinWidth(Region.USE_PREF_SIZE);
    HBox line = new HBox(label, field);
    for (Label unit : units) {
      unit.setMinWidth(Region.USE_PREF_SIZE);
      line.getChildren().add(unit);
    }
    line.getStyleClass().add("hc-line");
    return line;
  }

  /** What was typed is taken with Enter, and when the field is left. */
  static void committing(TextInputControl field, Consumer<String> commit) {
    field
        .focusedProperty()
        .addListener(
            (property, before, now) -> {
              if (!now) {
                commit.accept(field.getText());
              }
            });
    if (field instanceof TextField line) {
      line.setOnAction(event -> commit.accept(field.getText()));
    }
  }
}
