package holdcurve.ui.window.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.file.JobReader;
import holdcurve.ui.window.HandMadeRanking;
import holdcurve.ui.window.Jobs;
import holdcurve.ui.window.TypingRobot;
import holdcurve.ui.window.job.OpenJobModel;
import java.util.List;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;

/** The frame around pages that have nothing to do with any job. */
class WindowViewTest {
  /** A page that is one word. */
  private record WordPage(String title, Label content) implements Page {
    @Override
    public List<MenuItem> actions() {
      return List.of(new MenuItem("Act on " + title));
    }
  }

  private final TypingRobot robot = new TypingRobot();
  private Scene scene;

  @BeforeEach
  void startScreen() throws Exception {
    FxToolkit.registerPrimaryStage();
    FxToolkit.cleanupStages();
  }

  private void show(int pages) {
    robot.interact(
        () -> {
          List<Page> some =
              List.<Page>of(
                      new WordPage("Circuit", new Label("hoses")),
                      new WordPage("Practice", new Label("exercises")))
                  .subList(0, pages);
          OpenJobModel model =
              new OpenJobModel(JobReader::read, HandMadeRanking::new, Runnable::run, Runnable::run);
          scene = new Scene(new WindowView(desk(model), some, () -> {}).root());
          model.open(Jobs.SHORT_HOLD);
          scene.getRoot().applyCss();
        });
  }

  private static Desk desk(OpenJobModel model) {
    return Desk.alone(model);
  }

  private Node find(String selector) {
    return scene.getRoot().lookup(selector);
  }

  private boolean isShown(String word) {
    return scene.getRoot().lookupAll(".label").stream()
        .anyMatch(node -> ((Label) node).getText().equals(word));
  }

  @Test
  void aSinglePageNeedsNoListOfPages() {
    show(1);
    assertFalse(find("#pages").isVisible());
    assertTrue(isShown("hoses"));
  }

  @Test
  void severalPagesAreListedAndOneIsShown() {
    show(2);
    assertTrue(find("#pages").isVisible());
    List<ToggleButton> buttons =
        find("#pages").lookupAll(".toggle-button").stream().map(ToggleButton.class::cast).toList();
    assertEquals(List.of("Circuit", "Practice"), buttons.stream().map(b -> b.getText()).toList());
    assertTrue(buttons.get(0).isSelected() && isShown("hoses") && !isShown("exercises"));
    robot.interact(buttons.get(1)::fire);
    assertTrue(buttons.get(1).isSelected() && isShown("exercises") && !isShown("hoses"));
    robot.interact(buttons.get(1)::fire);
    assertTrue(buttons.get(1).isSelected(), "a page can't be left for none");
  }

  @Test
  void anArrowKeyLeavesThePageAndItsMark() {
    show(2);
    List<ToggleButton> buttons =
        find("#pages").lookupAll(".toggle-button").stream().map(ToggleButton.class::cast).toList();
    robot.interact(
        () ->
            Event.fireEvent(
                buttons.get(0),
                new KeyEvent(
                    KeyEvent.KEY_PRESSED, "", "", KeyCode.DOWN, false, false, false, false)));
    assertTrue(isShown("hoses") && buttons.get(0).isSelected() && !buttons.get(1).isSelected());
  }
}
