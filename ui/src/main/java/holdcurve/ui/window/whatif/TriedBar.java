package holdcurve.ui.window.whatif;

import holdcurve.advice.whatif.Change;
import holdcurve.ui.window.frame.Texts;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** What is tried, in words, with a way to take back what was added. */
final class TriedBar extends VBox {
  private final WhatIfModel model;
  private final Label tried = Texts.words("", "hc-tried");
  private final FlowPane extras = new FlowPane();

  TriedBar(WhatIfModel model) {
    this.model = model;
    extras.getStyleClass().add("hc-buttons");
    extras.managedProperty().bind(extras.visibleProperty());
    extras.setId("extras");
    getStyleClass().add("hc-tried-bar");
    getChildren().addAll(tried, extras);
  }

  void show() {
    if (model.holdsProperty().get() == null) {
      tried.setText("Working out what could be changed …");
      return;
    }
    List<String> what = new ArrayList<>(model.tried().what());
    model.extras().forEach(extra -> what.removeAll(extra.what()));
    boolean nothing = what.isEmpty() && model.extras().isEmpty();
    tried.setText(
        nothing
            ? "Tick a repair or move a slider: the plot and the figures follow."
            : what.isEmpty()
                ? "Tried:"
                : "Tried: " + String.join("; ", what.stream().map(TriedBar::lower).toList()) + ".");
    extras.getChildren().setAll(model.extras().stream().map(this::button).toList());
    extras.setVisible(!model.extras().isEmpty());
  }

  private Button button(Change extra) {
    Button button = new Button("×  " + String.join("; ", extra.what()));
    button.getStyleClass().add("hc-small");
    button.setAccessibleText("Take back: " + String.join("; ", extra.what()));
    button.setOnAction(event -> model.remove(extra));
    return button;
  }

  private static String lower(String words) {
    return words.substring(0, 1).toLowerCase(Locale.ROOT) + words.substring(1);
  }
}
