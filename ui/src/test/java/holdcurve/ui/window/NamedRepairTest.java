package holdcurve.ui.window;

import static holdcurve.ui.window.ShownWindow.run;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.file.JobReader;
import holdcurve.file.JobWriter;
import holdcurve.record.job.Job;
import java.nio.file.Path;
import java.util.Map;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TabPane;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

/** What is known of parts: which the answer names, which is new, and what was typed about them. */
class NamedRepairTest {
  @TempDir Path folder;

  private final FxRobot robot = new FxRobot();
  private ShownWindow window;

  @BeforeEach
  void open() throws Exception {
    window = ShownWindow.of(BelievedRanking::new);
    run(() -> window.desk().jobs().open(Jobs.TWO_HOLDS));
  }

  @AfterEach
  void close() throws Exception {
    run(window.stage()::close);
  }

  private Job job() {
    WaitForAsyncUtils.waitForFxEvents();
    return window.desk().jobs().jobProperty().get();
  }

  @Test
  void thePartThatTheAnswerNamesIsChosenForTheRepair() throws Exception {
    run(() -> window.desk().page().set("Repair check"));
    ComboBox<?> part = (ComboBox<?>) window.find("#repaired-part");
    assertEquals("check-valve", part.getValue());
    run(((Button) window.find("#note-repair"))::fire);
    assertEquals("check-valve", job().upkeep().repairs().get(0).part());
    assertNull(part.getValue());
  }

  @Test
  void whatThePersonChoseStaysChosen() throws Exception {
    run(() -> window.desk().page().set("Repair check"));
    @SuppressWarnings("unchecked")
    ComboBox<String> part = (ComboBox<String>) window.find("#repaired-part");
    run(() -> part.setValue("regulator"));
    robot.push(KeyCode.F5);
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals("regulator", part.getValue());
  }

  @Test
  void aNewCheckValveIsToldAndKeptInTheFile() throws Exception {
    run(() -> window.desk().page().set("Circuit"));
    WaitForAsyncUtils.waitForFxEvents();
    robot.clickOn(window.find("#part-check-valve"), MouseButton.PRIMARY);
    CheckBox fresh = (CheckBox) window.find("#new-part");
    assertTrue(fresh.isVisible());
    run(fresh::fire);
    assertEquals(Map.of("check-valve-seat", 0.1), job().priors());
    assertTrue(
        window.desk().jobs().ranking().outdatedProperty().get(), "what was ranked before is old");
    Path file = folder.resolve("kept.job.json");
    JobWriter.write(file, job());
    assertEquals(Map.of("check-valve-seat", 0.1), JobReader.read(file).priors());
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    assertEquals(Map.of(), job().priors());
    assertFalse(fresh.isSelected());
    robot.clickOn(window.find("#part-feed-hose"), MouseButton.PRIMARY);
    WaitForAsyncUtils.waitForFxEvents();
    assertFalse(fresh.isVisible(), "its joints are shared with others");
  }

  @Test
  void aTypedBenchSheetIsAskedAboutOnClosing() throws Exception {
    run(() -> window.desk().page().set("Bench sheet"));
    WaitForAsyncUtils.waitForFxEvents();
    robot.write("182").push(KeyCode.ENTER);
    robot.push(KeyCode.CONTROL, KeyCode.Q);
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(window.stage().isShowing());
    Node question = window.find("#question");
    assertTrue(question.isVisible());
    assertTrue(
        ((Label) question.lookup(".label")).getText().contains("bench sheet"),
        "it says what would go");
    robot.push(KeyCode.ESCAPE);
    robot.push(KeyCode.CONTROL, KeyCode.Q);
    WaitForAsyncUtils.waitForFxEvents();
    Button closing =
        question.lookupAll(".button").stream()
            .map(Button.class::cast)
            .filter(button -> button.getText().equals("Close without it"))
            .findFirst()
            .orElseThrow();
    run(closing::fire);
    assertFalse(window.stage().isShowing());
  }

  @Test
  void beforeAndAfterARepairStandInOnePlot() throws Exception {
    run(
        () ->
            window.desk().jobs().open(Path.of("..", "scenarios", "repaired-check-valve.job.json")));
    run(() -> window.desk().page().set("Repair check"));
    TabPane tabs =
        (TabPane)
            window.stage().getScene().getRoot().lookupAll(".tab-pane").stream()
                .filter(
                    node ->
                        ((TabPane) node)
                            .getTabs().stream()
                                .anyMatch(tab -> "before-and-after".equals(tab.getId())))
                .findFirst()
                .orElseThrow();
    run(() -> tabs.getSelectionModel().selectLast());
    Node panel = tabs.getSelectionModel().getSelectedItem().getContent();
    assertTrue(
        panel.lookupAll(".label").stream()
            .map(node -> ((Label) node).getText())
            .anyMatch(text -> text.startsWith("after: ")));
    window.picture("before-and-after", 1280, 720);
    TextField note = (TextField) window.find("#repair-note");
    assertNotNull(note.getAccessibleText());
  }
}
