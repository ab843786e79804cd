package holdcurve.ui.window.frame;

import holdcurve.ui.window.job.OpenJobModel;
import java.util.List;
import javafx.beans.property.StringProperty;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/**
 * Says that the open job is a shipped example, which stays as it is, and shows a newcomer round it
 * in three steps that can be skipped.
 */
final class ExampleStrip extends HBox {
  private static final String WORDS = "Example. Try anything: it stays as shipped.";

  /**
   * @param page that is turned to
   * @param words what is to be seen there
   */
  private record Step(String page, String words) {}

  private static final List<Step> STEPS =
      List.of(
          new Step(
              "Hold tests",
              "1 of 3: the readings. The pump stopped at 0:00, and the needle fell for ten minutes."
                  + " In the blue band it would be sound."),
          new Step(
              "Suspects",
              "2 of 3: the answer stands at the top. At the right stand the likely causes, with"
                  + " their chances."),
          new Step(
              "Suspects",
              "3 of 3: the button at the top leads to the next test. F1 opens the guide at any"
                  + " page."));

  private final StringProperty page;
  private final Label words = Texts.words(WORDS);
  private final Button next = button("Show me round");
  private final Button skip = button("Skip");
  private int taken;

  /**
   * @param page title of the page on view
   */
  ExampleStrip(OpenJobModel model, StringProperty page, Runnable saveAs) {
    this.page = page;
    setId("example");
    getStyleClass().add("hc-rescue");
    words.setMaxWidth(Double.MAX_VALUE);
    HBox.setHgrow(words, Priority.ALWAYS);
    next.setId("example-next");
    next.setOnAction(event -> step());
    skip.setId("example-skip");
    skip.setOnAction(event -> end());
    Button save = button("Save as a job of your own …");
    save.setOnAction(event -> saveAs.run());
    getChildren().addAll(words, next, skip, save);
    visibleProperty().bind(model.exampleProperty());
    managedProperty().bind(visibleProperty());
  }

  private static Button button(String words) {
    Button button = new Button(words);
    button.setMinWidth(USE_PREF_SIZE);
    return button;
  }

  private void step() {
    if (taken == STEPS.size()) {
      end();
      return;
    }
    Step step = STEPS.get(taken++);
    words.setText(step.words());
    boolean last = taken == STEPS.size();
    next.setText(last ? "Done" : "Next");
    skip.setVisible(!last);
    skip.setManaged(!last);
    page.set(step.page());
    next.requestFocus();
  }

  private void end() {
    words.setText(WORDS);
    getChildren().removeAll(next, skip);
  }
}
