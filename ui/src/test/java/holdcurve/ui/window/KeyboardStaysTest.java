package holdcurve.ui.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.physics.circuit.Part;
import holdcurve.physics.part.Hose;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;

/**
 * What has the keyboard keeps it when a change builds the page anew; the title of the job never
 * gets it by itself.
 */
class KeyboardStaysTest {
  private final TypingRobot robot = new TypingRobot();
  private ShownWindow window;

  @BeforeEach
  void open() throws Exception {
    window = ShownWindow.of(HandMadeRanking::new);
    ShownWindow.run(() -> window.desk().jobs().open(Jobs.TWO_HOLDS));
  }

  @AfterEach
  void close() throws Exception {
    ShownWindow.run(window.stage()::close);
  }

  private String keyboard() {
    WaitForAsyncUtils.waitForFxEvents();
    Node owner = window.stage().getScene().getFocusOwner();
    assertNotNull(owner);
    return String.valueOf(owner.getId());
  }

  private Part hose() {
    WaitForAsyncUtils.waitForFxEvents();
    return window.desk().jobs().jobProperty().get().circuit().part("return-hose");
  }

  private void chooseHose() {
    robot.push(KeyCode.CONTROL, KeyCode.DIGIT1);
    robot.clickOn(window.find("#part-return-hose"), MouseButton.PRIMARY);
    robot.push(KeyCode.CONTROL, KeyCode.E);
  }

  @Test
  void aValueThatIsLeftIsTakenAndTheNextHasTheKeyboard() {
    String title = window.desk().jobs().jobProperty().get().title();
    chooseHose();
    robot.push(KeyCode.CONTROL, KeyCode.A).write("0,9").push(KeyCode.TAB);
    assertEquals("value-bore", keyboard());
    robot.push(KeyCode.CONTROL, KeyCode.A).write("8.5").push(KeyCode.ENTER);
    assertEquals("value-bore", keyboard());
    assertEquals(0.9, hose().value(Hose.LENGTH), 1e-12);
    assertEquals(8.5e-3, hose().value(Hose.BORE), 1e-12);
    assertEquals(title, window.desk().jobs().jobProperty().get().title());
  }

  @Test
  void aClickOnAnotherPartKeepsWhatWasTyped() {
    chooseHose();
    robot.push(KeyCode.CONTROL, KeyCode.A).write("0.7");
    robot.clickOn(window.find("#part-pump"), MouseButton.PRIMARY);
    assertEquals(0.7, hose().value(Hose.LENGTH), 1e-12);
    assertEquals("part-pump", keyboard());
  }

  @Test
  void aHoseThatWasClampedStaysOneThatCanBe() {
    chooseHose();
    robot.clickOn(window.find("#value-clampable"), MouseButton.PRIMARY);
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(hose().is(Hose.CLAMPABLE));
    assertTrue(((CheckBox) window.find("#value-clampable")).isSelected());
    String said = ((Label) window.find("#part-editor .hc-caution")).getText();
    assertTrue(said.startsWith("return-hose was clamped in hold '"), said);
  }

  @Test
  void aClampIsTakenOffByTheSpaceBarWhichThenNeitherStartsTheWatchNorAHold() throws Exception {
    robot.push(KeyCode.CONTROL, KeyCode.DIGIT2);
    ShownWindow.run(() -> window.find("#clamp-return-hose").requestFocus());
    robot.push(KeyCode.SPACE);
    assertEquals("clamp-return-hose", keyboard());
    assertEquals(Set.of(), clamped(0));
    robot.push(KeyCode.SPACE);
    assertEquals("clamp-return-hose", keyboard());
    assertEquals(Set.of("return-hose"), clamped(0));
    assertEquals(2, window.desk().jobs().jobProperty().get().tests().size());
  }

  @Test
  void theBoxesToTickFollowTheCircuit() throws Exception {
    robot.push(KeyCode.CONTROL, KeyCode.DIGIT2);
    assertNotNull(window.find("#clamp-feed-hose"));
    robot.push(KeyCode.CONTROL, KeyCode.DIGIT1);
    robot.clickOn(window.find("#part-feed-hose"), MouseButton.PRIMARY);
    robot.clickOn(window.find("#value-clampable"), MouseButton.PRIMARY);
    robot.push(KeyCode.CONTROL, KeyCode.DIGIT2);
    assertNull(window.find("#clamp-feed-hose"));
  }

  private Set<String> clamped(int hold) {
    return window.desk().jobs().jobProperty().get().tests().get(hold).clamped();
  }
}
