package holdcurve.ui.window;

import static holdcurve.ui.window.ShownWindow.run;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.record.log.Reading;
import holdcurve.ui.theme.Theme;
import holdcurve.ui.window.job.CircuitTemplates;
import holdcurve.ui.window.job.JobEdits;
import holdcurve.ui.window.plot.Dial;
import java.util.List;
import javafx.geometry.Point2D;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

/** A hold read from two metres away, by tapping, arrows, digits and the space bar. */
class BenchScreenTest {
  private final FxRobot robot = new FxRobot();
  private volatile double now;
  private ShownWindow window;

  @BeforeEach
  void open() throws Exception {
    window = ShownWindow.of(HandMadeRanking::new, () -> now);
    run(
        () ->
            window
                .desk()
                .jobs()
                .begin(
                    JobEdits.blank("New", CircuitTemplates.circuit(CircuitTemplates.all().get(0))),
                    null));
    run(() -> window.desk().page().set("Hold tests"));
    robot.push(KeyCode.F11);
    WaitForAsyncUtils.waitForFxEvents();
  }

  @AfterEach
  void close() throws Exception {
    run(window.stage()::close);
  }

  private List<Reading> readings() {
    WaitForAsyncUtils.waitForFxEvents();
    return window.desk().jobs().jobProperty().get().tests().get(0).log().readings();
  }

  private String text(String id) {
    WaitForAsyncUtils.waitForFxEvents();
    return ((Label) window.find(id)).getText();
  }

  @Test
  void readingsAreTappedSteppedAndTyped() throws Exception {
    robot.push(KeyCode.SPACE);
    now = 1;
    Dial dial = (Dial) window.find("#bench-dial");
    double[] half = new double[2];
    run(
        () -> {
          Point2D upright = dial.localToScreen(dial.getWidth() / 2, dial.getHeight() / 4);
          half[0] = upright.getX();
          half[1] = upright.getY();
        });
    robot.moveTo(half[0], half[1]).press(MouseButton.PRIMARY).release(MouseButton.PRIMARY);
    now = 4;
    robot.push(KeyCode.UP).push(KeyCode.UP).push(KeyCode.DOWN);
    assertEquals("2.02 bar", text("#bench-value"), "half way round a gauge to 4 bar, a step more");
    robot.push(KeyCode.ENTER);
    assertEquals(1, readings().size());
    assertEquals(2.02e5, readings().get(0).pressure(), 1);
    assertEquals(1, readings().get(0).time(), 0.01, "of the moment of the tap");
    now = 30;
    robot.push(KeyCode.SPACE);
    now = 33;
    robot.push(KeyCode.DIGIT1).push(KeyCode.PERIOD).push(KeyCode.DIGIT9);
    assertEquals("1.9 bar", text("#bench-value"));
    robot.push(KeyCode.ENTER);
    assertEquals(1.9e5, readings().get(1).pressure(), 1);
    assertEquals(30, readings().get(1).time(), 0.01, "Space marked the moment");
    robot.push(KeyCode.ESCAPE);
    WaitForAsyncUtils.waitForFxEvents();
    assertNull(window.find("#bench"));
    assertEquals(2, readings().size());
  }

  @Test
  void theNextReadingIsCountedDown() throws Exception {
    String before = text("#bench-caution");
    assertTrue(before.contains("pump"), before);
    robot.push(KeyCode.SPACE);
    now = 12;
    robot.push(KeyCode.UP);
    assertEquals("0:12", text("#bench-watch"));
    assertEquals("Next in 0:18", text("#bench-next"));
    now = 125;
    robot.push(KeyCode.UP);
    assertEquals("Next in 0:55", text("#bench-next"), "each minute from two minutes on");
  }

  /**
   * Characters of 20 to 22 minutes of arc are read with ease (ISO 9241-303, from memory): at two
   * metres 13 mm. The smallest usual screen, 14 inches of 16 to 9, is 174 mm high.
   */
  @Test
  void digitsAreReadFromTwoMetres() throws Exception {
    double least = 13.0 / 174;
    for (int[] size : new int[][] {{1280, 720}, {1920, 1080}}) {
      for (Theme theme : Theme.values()) {
        run(() -> window.desk().looks().themeProperty().set(theme));
        window.picture("bench-" + theme.styleClass(), size[0], size[1]);
      }
      for (String id : List.of("#bench-watch", "#bench-value")) {
        Label label = (Label) window.find(id);
        assertNotNull(label, id);
        double digit = 0.7 * label.getFont().getSize();
        assertTrue(digit / size[1] >= least, id + " " + digit + " of " + size[1]);
        double end = label.localToScene(label.getWidth(), 0).getX();
        assertTrue(end <= size[0], id + " ends at " + end);
      }
    }
  }
}
