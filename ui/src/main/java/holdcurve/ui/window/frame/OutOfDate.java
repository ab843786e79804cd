package holdcurve.ui.window.frame;

import javafx.beans.value.ObservableBooleanValue;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;

/** What was worked out before something it rests on was changed: dimmed, with words for it. */
public final class OutOfDate extends HBox {
  /** In the stylesheet: what is dimmed. */
  public static final PseudoClass DIMMED = PseudoClass.getPseudoClass("outdated");

  private OutOfDate(ObservableBooleanValue outdated, String again, Runnable anew) {
    getStyleClass().add("hc-outdated-strip");
    Label words = new Label("Out of date. " + again + ".");
    words.setMinWidth(USE_PREF_SIZE);
    Button button = new Button("Do it now");
    button.setMinWidth(USE_PREF_SIZE);
    button.getStyleClass().add("accent");
    button.setOnAction(event -> anew.run());
    getChildren().addAll(Sign.WARNING.node(), words, button);
    visibleProperty().bind(outdated);
    managedProperty().bind(visibleProperty());
  }

  /**
   * The words, seen while they are true.
   *
   * @param again what to press, such as "Rank again (F5)"
   * @param anew does that
   * @param dimmed what is out of date then
   */
  public static OutOfDate of(
      ObservableBooleanValue outdated, String again, Runnable anew, Node... dimmed) {
    dim(outdated, dimmed);
    return new OutOfDate(outdated, again, anew);
  }

  /** Dims what is out of date, where the words stand elsewhere. */
  public static void dim(ObservableBooleanValue outdated, Node... dimmed) {
    for (Node node : dimmed) {
      Runnable show = () -> node.pseudoClassStateChanged(DIMMED, outdated.get());
      outdated.addListener((property, before, now) -> show.run());
      show.run();
    }
  }

  /** For what a ranking said. */
  public static OutOfDate ranking(Desk desk, Node... dimmed) {
    return of(
        desk.jobs().ranking().outdatedProperty(), "Rank again (F5)", desk.jobs()::rank, dimmed);
  }
}
