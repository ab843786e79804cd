package holdcurve.ui.window;

import static holdcurve.ui.window.ShownWindow.run;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.message.PressureUnit;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.log.Reading;
import holdcurve.ui.window.job.CircuitTemplates;
import holdcurve.ui.window.job.JobEdits;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.DoublePredicate;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.TableRow;
import javafx.scene.control.TableView;
import javafx.scene.input.Clipboard;
import javafx.scene.input.DataFormat;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;

/** The page of hold tests by its own buttons, list and keys. */
class HoldPageControlsTest {
  private final TypingRobot robot = new TypingRobot();
  private ShownWindow window;

  @BeforeEach
  void open() throws Exception {
    window = ShownWindow.of(HandMadeRanking::new);
    run(() -> window.desk().jobs().open(Jobs.TWO_HOLDS));
    robot.push(KeyCode.CONTROL, KeyCode.DIGIT2);
    WaitForAsyncUtils.waitForFxEvents();
  }

  @AfterEach
  void close() throws Exception {
    run(window.stage()::close);
  }

  private Job job() {
    WaitForAsyncUtils.waitForFxEvents();
    return window.desk().jobs().jobProperty().get();
  }

  private HoldTest last() {
    List<HoldTest> tests = job().tests();
    return tests.get(tests.size() - 1);
  }

  @SuppressWarnings("unchecked")
  private TableView<Reading> list() {
    WaitForAsyncUtils.waitForFxEvents();
    return (TableView<Reading>) window.find("#readings");
  }

  private void press(String text) throws Exception {
    Node button =
        window.stage().getScene().getRoot().lookupAll(".button").stream()
            .filter(node -> node instanceof Button one && text.equals(one.getText()))
            .findFirst()
            .orElseThrow();
    run(((Button) button)::fire);
  }

  private void paste(String table) throws Exception {
    run(() -> Clipboard.getSystemClipboard().setContent(Map.of(DataFormat.PLAIN_TEXT, table)));
    robot.push(KeyCode.CONTROL, KeyCode.V);
    WaitForAsyncUtils.waitForFxEvents();
    robot.push(KeyCode.ENTER);
    WaitForAsyncUtils.waitForFxEvents();
  }

  @Test
  void spaceAfterNewHoldIsTheWatch() {
    robot.clickOn(window.find("#add-hold"), MouseButton.PRIMARY);
    assertEquals(3, job().tests().size());
    robot.push(KeyCode.SPACE);
    assertEquals(3, job().tests().size());
    robot.write("2.1").push(KeyCode.ENTER);
    assertEquals(1, last().log().readings().size());
  }

  @Test
  void anImportHasNoClampsOfTheHoldBesideIt() throws Exception {
    assertEquals(Set.of("return-hose"), job().tests().get(0).clamped());
    assertTrue(((CheckBox) window.find("#clamp-return-hose")).isSelected());
    paste("time_s,pressure_bar\n0,2.1\n30,2.0\n60,1.95\n");
    assertEquals(3, job().tests().size());
    assertEquals(3, last().log().readings().size());
    assertEquals(Set.of(), last().clamped());
  }

  @Test
  void aTablePastedWithoutItsUnitIsInTheOneShown() throws Exception {
    run(() -> window.desk().jobs().pressures().unitProperty().set(PressureUnit.PSI));
    for (String table :
        List.of(
            "0:00 30.7\n0:30 28.5\n1:00 27.9\n",
            "0;30,7\n30;28,5\n60;27,9\n",
            "0\t30.7\n30\t28.5\n60\t27.9\n",
            "time pressure\n0 30.7\n30 28.5\n60 27.9\n",
            "0:00 30.7 psi\n0:30 28.5 psi\n1:00 27.9 psi\n",
            "time_s,pressure_bar\n0,2.11669\n30,1.96501\n60,1.92364\n")) {
      int before = job().tests().size();
      paste(table);
      assertEquals("", window.desk().jobs().problemProperty().get(), table);
      assertEquals(before + 1, job().tests().size(), table);
      List<Reading> readings = last().log().readings();
      assertEquals(30.7 * 6894.757, readings.get(0).pressure(), 2, table);
      assertEquals(30, readings.get(1).time(), 1e-9, table);
    }
  }

  @Test
  @SuppressWarnings("unchecked")
  void whatWasFoundIsListedAtOnce() throws Exception {
    int before = window.find("#findings").lookupAll(".hc-flat").size();
    run(() -> ((ComboBox<Object>) window.find("#finding-kind")).getSelectionModel().select(2));
    run(((Button) window.find("#finding-add"))::fire);
    assertEquals(before + 1, job().findings().size());
    assertEquals(before + 1, window.find("#findings").lookupAll(".hc-flat").size());
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    assertEquals(before, job().findings().size());
    assertEquals(before, window.find("#findings").lookupAll(".hc-flat").size());
  }

  @Test
  void aDoubtfulReadingStaysChosenAndIsTheOneDeleted() throws Exception {
    Reading third = list().getItems().get(2);
    int all = list().getItems().size();
    run(() -> list().getSelectionModel().clearAndSelect(2));
    press("Doubtful (D)");
    assertEquals(2, list().getSelectionModel().getSelectedIndex());
    assertTrue(list().getSelectionModel().getSelectedItem().doubtful());
    press("Delete");
    assertEquals(all - 1, list().getItems().size());
    assertTrue(list().getItems().stream().noneMatch(one -> one.time() == third.time()));
  }

  @Test
  void theReadingJustTypedIsInViewAndChosen() throws Exception {
    run(() -> window.stage().setHeight(720));
    for (int i = 0; i < 30; i++) {
      robot.write((20 + i) + ":00 1.0").push(KeyCode.ENTER);
    }
    assertSeen(49 * 60);
    robot.write("0:40 1.9").push(KeyCode.ENTER);
    assertSeen(40);
    robot.write("51:00 1.0").push(KeyCode.ENTER);
    assertSeen(51 * 60);
  }

  @Test
  void largeTextLeavesFiveReadingsInView() throws Exception {
    run(
        () -> {
          window.stage().setWidth(1280);
          window.stage().setHeight(720);
          window.desk().looks().enlarge();
          window.desk().looks().enlarge();
        });
    robot.push(KeyCode.CONTROL, KeyCode.T).push(KeyCode.SPACE);
    for (int i = 0; i < 10; i++) {
      robot.write(i + ":00 1.9").push(KeyCode.ENTER);
    }
    assertSeen(9 * 60);
    window.picture("hold-tests-largest-text", 1280, 720);
    assertTrue(seen(time -> true) >= 5, seen(time -> true) + " in view");
  }

  private void assertSeen(double time) {
    assertEquals(time, list().getSelectionModel().getSelectedItem().time(), 1e-9);
    assertEquals(1, seen(one -> one == time), "the reading at " + time + " s is out of view");
  }

  /** How many readings are wholly in view. */
  private long seen(DoublePredicate time) {
    WaitForAsyncUtils.waitForFxEvents();
    Bounds box = list().localToScene(list().getBoundsInLocal());
    return list().lookupAll(".table-row-cell").stream()
        .map(TableRow.class::cast)
        .filter(row -> row.isVisible() && row.getItem() instanceof Reading)
        .filter(row -> time.test(((Reading) row.getItem()).time()))
        .map(row -> row.localToScene(row.getBoundsInLocal()))
        .filter(b -> b.getMinY() >= box.getMinY() && b.getMaxY() <= box.getMaxY() + 1)
        .count();
  }

  @Test
  void undoTurnsToWhereItWasDoneBeforeItTakesItBack() {
    int before = readings();
    robot.write("9:59 1.11").push(KeyCode.ENTER);
    assertEquals(before + 1, readings());
    robot.push(KeyCode.CONTROL, KeyCode.DIGIT1).push(KeyCode.CONTROL, KeyCode.Z);
    assertEquals(before + 1, readings());
    assertEquals("Hold tests", window.desk().page().get());
    assertEquals(
        "This was done here: reading. Press again to undo it.",
        window.desk().jobs().problemProperty().get());
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    assertEquals(before, readings());
    assertEquals("", window.desk().jobs().problemProperty().get());
    robot.push(KeyCode.CONTROL, KeyCode.DIGIT1).push(KeyCode.CONTROL, KeyCode.Y);
    assertEquals(before, readings());
    robot.push(KeyCode.CONTROL, KeyCode.Y);
    assertEquals(before + 1, readings());
  }

  private int readings() {
    return job().tests().stream().mapToInt(test -> test.log().readings().size()).sum();
  }

  @Test
  void itIsNotTooEarlyOnceALongHoldWasRead() throws Exception {
    assertFalse(judgement().equals("Too early to say"), judgement());
    run(
        () ->
            window
                .desk()
                .jobs()
                .begin(
                    JobEdits.blank("New", CircuitTemplates.circuit(CircuitTemplates.all().get(0))),
                    null));
    assertEquals("Too early to say", judgement());
    String sentence = ((Labeled) window.find("#judgement").lookup(".label")).getText();
    assertFalse(sentence.isEmpty());
    for (int i = 0; i < 21; i++) {
      robot.write(i + ":00 " + (2.0 - 0.02 * i)).push(KeyCode.ENTER);
    }
    assertFalse(judgement().equals("Too early to say"), judgement());
  }

  private String judgement() {
    WaitForAsyncUtils.waitForFxEvents();
    return ((Label) window.find("#judgement .hc-word")).getText();
  }
}
