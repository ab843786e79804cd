package holdcurve.ui.window.frame;

import holdcurve.common.text.Titles;
import holdcurve.ui.window.job.Autosave;
import holdcurve.ui.window.job.RescueModel;
import javafx.collections.ListChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Offers what an earlier window left unsaved. */
final class RescueStrip extends VBox {
  private final RescueModel model;

  RescueStrip(RescueModel model) {
    this.model = model;
    setId("rescue");
    model.found().addListener((ListChangeListener<Autosave.Kept>) change -> update());
    update();
  }

  private void update() {
    getChildren().setAll(model.found().stream().map(this::row).toList());
  }

  private HBox row(Autosave.Kept kept) {
    int readings = kept.readings();
    Label words =
        new Label(
            "Unsaved work from last time: "
                + Titles.shown(kept.job().title())
                + ", "
                + (readings == 1 ? "1 reading." : readings + " readings."));
    words.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(words, Priority.ALWAYS);
    Button back = button("Bring it back", () -> model.bringBack(kept));
    Button away = button("Throw it away", () -> {});
    away.setOnAction(event -> askFirst(away, back, kept));
    HBox row = new HBox(Sign.QUESTION.node(), words, back, away);
    row.getStyleClass().add("hc-rescue");
    return row;
  }

  /**
   * What is thrown away is gone: the first press only asks, and the key that made it then does no
   * harm.
   */
  private void askFirst(Button away, Button back, Autosave.Kept kept) {
    away.setText("Gone for good: throw it away");
    away.setOnAction(event -> model.throwAway(kept));
    back.requestFocus();
  }

  private static Button button(String text, Runnable what) {
    Button button = new Button(text);
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setOnAction(event -> what.run());
    return button;
  }
}
