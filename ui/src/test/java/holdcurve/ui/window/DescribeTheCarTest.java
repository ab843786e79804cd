package holdcurve.ui.window;

import static holdcurve.ui.window.ShownWindow.run;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.physics.circuit.Circuit;
import holdcurve.ui.window.job.CircuitTemplates;
import holdcurve.ui.window.job.JobEdits;
import java.util.List;
import java.util.Set;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

/** Parts added, removed, moved and named on the drawing, by mouse and by keyboard. */
class DescribeTheCarTest {
  private final FxRobot robot = new FxRobot();
  private ShownWindow window;

  @BeforeEach
  void open() throws Exception {
    window = ShownWindow.of(HandMadeRanking::new);
    run(
        () ->
            window
                .desk()
                .jobs()
                .begin(
                    JobEdits.blank(
                        "New",
                        CircuitTemplates.circuit(
                            CircuitTemplates.all().stream()
                                .filter(one -> one.file().contains("return-line"))
                                .findFirst()
                                .orElseThrow())),
                    null));
    run(() -> window.desk().page().set("Circuit"));
  }

  @AfterEach
  void close() throws Exception {
    run(window.stage()::close);
  }

  private Circuit circuit() {
    WaitForAsyncUtils.waitForFxEvents();
    return window.desk().jobs().jobProperty().get().circuit();
  }

  private Node drawn(String part) {
    WaitForAsyncUtils.waitForFxEvents();
    return window.find("#part-" + part);
  }

  private void choose(String part) {
    robot.clickOn(drawn(part), MouseButton.PRIMARY);
    WaitForAsyncUtils.waitForFxEvents();
  }

  private void add(String kind) throws Exception {
    MenuButton menu = (MenuButton) window.find("#add-part");
    run(
        () ->
            menu.getItems().stream()
                .filter(item -> item.getId().equals("add-" + kind))
                .findFirst()
                .orElseThrow()
                .fire());
  }

  private String problem() {
    return ((Label) window.find("#part-editor .hc-caution")).getText();
  }

  @Test
  void aHoseIsAddedAfterAPartAndDrawnAtOnce() throws Exception {
    Circuit before = circuit();
    choose("filter");
    add("hose");
    assertEquals(circuit().part("filter").to(), circuit().part("hose").from());
    assertEquals(before.part("filter").to(), circuit().part("hose").to());
    assertNotNull(drawn("hose"));
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    assertEquals(before, circuit());
    assertNull(drawn("hose"));
  }

  @Test
  void deleteTakesAPartOutAndJoinsItsEnds() {
    Circuit before = circuit();
    choose("filter");
    robot.push(KeyCode.DELETE);
    assertEquals(before.parts().size() - 1, circuit().parts().size());
    assertEquals(circuit().part("feed-pipe").to(), circuit().part("feed-hose").from());
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    assertEquals(before, circuit());
  }

  @Test
  void withoutItsGaugeNothingCouldBeReadSoItStays() {
    Circuit before = circuit();
    choose("gauge-tee");
    robot.push(KeyCode.DELETE);
    assertEquals(before, circuit());
    assertTrue(problem().contains("no gauge"), problem());
  }

  @Test
  void keysMoveAPartAlongTheLine() {
    choose("filter");
    robot.push(KeyCode.ALT, KeyCode.RIGHT);
    assertEquals(circuit().part("feed-hose").to(), circuit().part("filter").from());
    assertEquals("rail", circuit().part("filter").to());
    robot.push(KeyCode.ALT, KeyCode.LEFT);
    assertEquals(circuit().part("feed-pipe").to(), circuit().part("filter").from());
  }

  @Test
  void aPartIsDraggedToThePlaceAfterAnother() {
    Node hose = drawn("feed-hose");
    robot.moveTo(middle(drawn("filter")));
    robot.press(MouseButton.PRIMARY);
    robot.moveTo(middle(hose).midpoint(middle(drawn("filter")))).moveTo(middle(hose));
    robot.release(MouseButton.PRIMARY);
    assertEquals(circuit().part("feed-hose").to(), circuit().part("filter").from());
    assertEquals("moving filter", window.desk().jobs().undoNameProperty().get());
  }

  private static Point2D middle(Node node) {
    Bounds at = node.localToScreen(node.getBoundsInLocal());
    return new Point2D(at.getCenterX(), at.getCenterY());
  }

  @Test
  void aNameIsTypedAsPeopleSayIt() throws Exception {
    choose("filter");
    TextField name = (TextField) window.find("#part-name");
    run(
        () -> {
          name.requestFocus();
          name.setText("Fine filter");
        });
    robot.push(KeyCode.ENTER);
    assertNotNull(circuit().part("fine-filter"));
    run(() -> name.setText("pump"));
    robot.push(KeyCode.ENTER);
    assertTrue(problem().contains("Another part is called 'pump'"), problem());
    run(() -> name.setText("coarse filter"));
    choose("pump");
    assertNotNull(circuit().part("coarse-filter"), "what was typed isn't lost");
    assertEquals("pump", name.getText());
  }

  @Test
  void whatAHoldNamesCanNotBeRemoved() throws Exception {
    run(() -> window.desk().jobs().beginHold("clamped", Set.of("feed-hose")));
    run(() -> window.desk().page().set("Circuit"));
    choose("feed-hose");
    robot.push(KeyCode.DELETE);
    assertNotNull(circuit().part("feed-hose"));
    assertTrue(problem().contains("was clamped in hold 'clamped'"), problem());
  }

  @Test
  void valuesSeldomSetStandBehindMore() throws Exception {
    choose("feed-hose");
    assertNotNull(window.find("#value-length"));
    assertNull(window.find("#value-slow_creep"));
    run(((Button) window.find("#more-values"))::fire);
    assertNotNull(window.find("#value-slow_creep"));
    run(((Button) window.find("#more-values"))::fire);
    assertNull(window.find("#value-slow_creep"));
  }

  @Test
  void everyKindCanBePutInAndTakenOutAgain() throws Exception {
    Circuit before = circuit();
    MenuButton menu = (MenuButton) window.find("#add-part");
    List<String> kinds = menu.getItems().stream().map(item -> item.getId().substring(4)).toList();
    assertFalse(kinds.contains("tank"));
    for (String kind : List.of("pipe", "filter", "joint", "damper", "accumulator")) {
      choose("feed-pipe");
      add(kind);
      assertEquals(before.parts().size() + 1, circuit().parts().size(), kind + problem());
      run(((Button) window.find("#remove-part"))::fire);
      assertEquals(before.parts().size(), circuit().parts().size(), kind + problem());
    }
  }
}
