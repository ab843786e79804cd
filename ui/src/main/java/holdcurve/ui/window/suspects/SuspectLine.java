package holdcurve.ui.window.suspects;

import holdcurve.common.message.PressureUnit;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** One suspect in the ranking: name and percentage, place, bar, leak. */
final class SuspectLine extends VBox {
  private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");
  private static final double BAR_HEIGHT = 11;

  private final SuspectRow row;

  SuspectLine(SuspectRow row, PressureUnit unit) {
    this.row = row;
    getStyleClass().add("hc-suspect");
    setAccessibleRole(AccessibleRole.RADIO_BUTTON);
    setAccessibleText(row.spoken(unit));
    getChildren().add(title());
    if (!row.suspect().where().isEmpty()) {
      getChildren().add(words(row.suspect().where(), "hc-muted", "hc-small"));
    }
    getChildren().add(bar());
    if (!row.size(unit).isEmpty()) {
      getChildren().add(words(row.size(unit), "hc-small"));
    }
  }

  SuspectRow row() {
    return row;
  }

  /** Shows whether this is the chosen one; only that one is reached by the tab key. */
  void choose(boolean chosen) {
    pseudoClassStateChanged(CHOSEN, chosen);
    setFocusTraversable(chosen);
  }

  private HBox title() {
    Label name = words(row.suspect().name(), "hc-strong");
    name.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(name, Priority.ALWAYS);
    Label percent = new Label(row.percent());
    percent.getStyleClass().addAll("hc-strong", "hc-large");
    percent.setMinWidth(USE_PREF_SIZE);
    HBox title = new HBox(10, name, percent);
    title.setAlignment(Pos.TOP_LEFT);
    return title;
  }

  private StackPane bar() {
    Region bar = new Region();
    bar.getStyleClass().add("hc-bar");
    StackPane ground = new StackPane(bar);
    ground.getStyleClass().add("hc-bar-ground");
    ground.setAlignment(Pos.CENTER_LEFT);
    ground.setMinHeight(BAR_HEIGHT);
    bar.maxWidthProperty().bind(ground.widthProperty().multiply(row.share()));
    return ground;
  }

  static Label words(String text, String... styles) {
    Label label = new Label(text);
    label.setWrapText(true);
    label.setMinHeight(USE_PREF_SIZE);
    label.getStyleClass().addAll(styles);
    return label;
  }
}
