package holdcurve.ui.window;

import static holdcurve.ui.window.ShownWindow.run;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.ui.window.frame.OutOfDate;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;

/** What was worked out before something it rests on was changed is dimmed, and says so. */
class OutOfDateTest {
  private final TypingRobot robot = new TypingRobot();
  private ShownWindow window;

  @BeforeEach
  void open() throws Exception {
    window = ShownWindow.of(HandMadeRanking::new);
    run(() -> window.desk().jobs().open(Jobs.TWO_HOLDS));
  }

  @AfterEach
  void close() throws Exception {
    run(window.stage()::close);
  }

  private void turn(String page) throws Exception {
    run(() -> window.desk().page().set(page));
  }

  private Node strip() {
    WaitForAsyncUtils.waitForFxEvents();
    return window.find(".hc-outdated-strip");
  }

  private boolean dimmed(String selector) {
    return window.find(selector).getPseudoClassStates().contains(OutOfDate.DIMMED);
  }

  private void assertOutdated(boolean outdated) throws Exception {
    turn("Suspects");
    assertEquals(outdated, strip().isVisible());
    assertEquals(outdated, dimmed("#verdict"));
    turn("What if");
    assertEquals(outdated, strip().isVisible());
    assertEquals(outdated, dimmed("#what-if"));
  }

  @Test
  void aNewHoldMakesTheVerdictOldUntilItIsRanked() throws Exception {
    assertOutdated(false);
    robot.push(KeyCode.CONTROL, KeyCode.DIGIT2).push(KeyCode.CONTROL, KeyCode.T);
    assertOutdated(false);
    turn("Hold tests");
    for (String reading : List.of("0:00 2.1", "1:00 2.0", "2:00 1.9")) {
      robot.write(reading).push(KeyCode.ENTER);
    }
    assertOutdated(true);
    turn("Suspects");
    assertEquals("Out of date. Rank again (F5).", ((Label) strip().lookup(".label")).getText());
    run(
        () ->
            SceneImage.write(
                window.stage().getScene(), Path.of("target", "snapshots", "outdated.png")));
    robot.push(KeyCode.F5);
    assertOutdated(false);
  }

  @Test
  void aChangedClampMakesItOldAndUndoMakesItTrueAgain() throws Exception {
    turn("Hold tests");
    run(() -> ((CheckBox) window.find("#clamp-return-hose")).fire());
    assertOutdated(true);
    turn("Hold tests");
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    assertOutdated(false);
  }

  @Test
  void anotherTitleOrNoteLeavesItTrue() throws Exception {
    run(() -> window.find("#job-title").requestFocus());
    robot.write("x").push(KeyCode.ENTER);
    assertTrue(window.desk().jobs().unsaved().get());
    assertOutdated(false);
  }

  @Test
  @SuppressWarnings("unchecked")
  void aRepairMakesItOldAndAsksForAnotherHold() throws Exception {
    turn("Repair check");
    run(() -> ((ComboBox<String>) window.find("#repaired-part")).setValue("damper"));
    run(() -> ((Button) window.find("#note-repair")).fire());
    assertOutdated(true);
    robot.push(KeyCode.F5);
    assertOutdated(true);
    String problem = window.desk().jobs().problemProperty().get();
    assertTrue(problem.contains("Hold again"), problem);
    turn("Repair check");
    run(() -> ((Button) window.find("#hold-again")).fire());
    assertEquals("Hold tests", window.desk().page().get());
    assertFalse(window.desk().jobs().unproved().isEmpty());
    for (String reading : List.of("0:00 2.1", "1:00 2.09", "2:00 2.08")) {
      robot.write(reading).push(KeyCode.ENTER);
    }
    robot.push(KeyCode.F5);
    assertOutdated(false);
    assertEquals(1, window.desk().jobs().ranking().rankedProperty().get().tests().size());
  }
}
