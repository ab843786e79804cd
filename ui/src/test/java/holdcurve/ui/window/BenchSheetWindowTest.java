package holdcurve.ui.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.file.JobReader;
import holdcurve.ui.theme.Appearance;
import holdcurve.ui.theme.Theme;
import holdcurve.ui.window.frame.Desk;
import holdcurve.ui.window.frame.FileDialogs;
import holdcurve.ui.window.frame.FileKind;
import holdcurve.ui.window.job.OpenJobModel;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import javafx.stage.StageStyle;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** The bench sheet filled in and read by keys, on a screen that is not there; with pictures. */
class BenchSheetWindowTest {
  private static final Path FOLDER = Path.of("target", "snapshots");
  private static final Path SCENARIOS = Path.of("..", "scenarios");

  private final Appearance looks = new Appearance();
  private final TypingRobot robot = new TypingRobot();
  private Path sheet;
  private OpenJobModel model;
  private Stage stage;
  private Desk desk;

  private final FileDialogs dialogs =
      new FileDialogs() {
        @Override
        public Optional<Path> chooseJob(Path near) {
          return Optional.empty();
        }

        @Override
        public Optional<Path> chooseBenchSheet(Path near) {
          return Optional.of(sheet);
        }

        @Override
        public Optional<Path> choose(FileKind kind, Path near) {
          return Optional.of(sheet);
        }
      };

  @BeforeEach
  void openWindow() throws Exception {
    FxToolkit.registerPrimaryStage();
    FxToolkit.cleanupStages();
    run(
        () -> {
          model =
              new OpenJobModel(JobReader::read, HandMadeRanking::new, Runnable::run, Runnable::run);
          stage = new Stage(StageStyle.UNDECORATED);
          desk = Desk.alone(model, looks, dialogs);
          HoldcurveWindow.fill(stage, desk);
          stage.show();
          model.open(SCENARIOS.resolve("rail-loss.job.json"));
          desk.page().set("Bench sheet");
        });
  }

  private static void run(Runnable work) throws Exception {
    FxToolkit.setupFixture(work::run);
    WaitForAsyncUtils.waitForFxEvents();
  }

  private Set<String> words() {
    return stage.getScene().getRoot().lookupAll(".label").stream()
        .map(node -> ((Labeled) node).getText())
        .collect(Collectors.toSet());
  }

  private boolean says(String part) {
    return words().stream().anyMatch(words -> words != null && words.contains(part));
  }

  private void read(String name) {
    sheet = SCENARIOS.resolve("bench").resolve(name);
    robot.push(KeyCode.CONTROL, KeyCode.B);
    WaitForAsyncUtils.waitForFxEvents();
  }

  private void picture(String name, int width, int height) throws Exception {
    SceneImage.write(
        stage, FOLDER.resolve(name + "-" + width + "x" + height + ".png"), width, height);
  }

  /** From an empty sheet to a verdict: one flow a line, the tab key in between. */
  @Test
  void aSheetIsTypedAndJudged() throws Exception {
    assertTrue(says("Type what the bench showed"), words()::toString);
    picture("bench-sheet-empty", 1280, 720);
    run(
        () -> {
          stage.toFront();
          stage.requestFocus();
          stage.getScene().lookup("#bench-before-1").requestFocus();
        });
    for (String flow : List.of("180", "181", "150", "179", "182", "180")) {
      robot.write(flow);
      for (int i = 0; i < 11; i++) {
        robot.type(KeyCode.TAB);
      }
    }
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(says("One of six is out of line: 3 (17 % low)"), words()::toString);
    assertTrue(says("Out of line"), words()::toString);
  }

  @Test
  void enterGoesDownTheColumnAndTypesOverWhatStandsThere() throws Exception {
    run(() -> cell("before", 1).requestFocus());
    for (String flow : List.of("180", "181", "150", "179", "182", "178")) {
      robot.write(flow).type(KeyCode.ENTER);
    }
    assertEquals("180", cell("before", 1).getText());
    assertEquals("178", cell("before", 6).getText());
    assertEquals("bench-after-1", stage.getScene().getFocusOwner().getId());
    run(() -> cell("before", 5).requestFocus());
    robot.type(KeyCode.ENTER).write("181");
    assertEquals("181", cell("before", 6).getText());
  }

  private TextField cell(String column, int line) {
    WaitForAsyncUtils.waitForFxEvents();
    return (TextField) stage.getScene().lookup("#bench-" + column + "-" + line);
  }

  @Test
  void aTypedSheetIsReplacedOnlyIfToldSo() throws Exception {
    run(() -> cell("before", 1).requestFocus());
    robot.write("180").type(KeyCode.ENTER).write("170");
    read("six-before-and-after.csv");
    assertEquals("180", cell("before", 1).getText());
    assertTrue(stage.getScene().lookup("#question").isVisible());
    robot.type(KeyCode.SPACE);
    WaitForAsyncUtils.waitForFxEvents();
    assertFalse(stage.getScene().lookup("#question").isVisible());
    assertEquals("180", cell("before", 1).getText(), "the key at hand changes nothing");
    read("six-before-and-after.csv");
    run(((Button) stage.getScene().lookup("#question .button"))::fire);
    assertEquals("171", cell("before", 1).getText());
    read("six-as-they-came.bench.json");
    assertFalse(stage.getScene().lookup("#question").isVisible(), "that stands in a file");
  }

  @Test
  void theHeadlineSaysWhatTheSheetSays() throws Exception {
    read("six-before-and-after.csv");
    String word = ((Labeled) stage.getScene().lookup("#bench-verdict .hc-word")).getText();
    String said = ((Labeled) stage.getScene().lookup("#bench-verdict .hc-sentence")).getText();
    assertEquals("Not all fit", word);
    assertTrue(said.contains("drips: 3 drops in 2 min"), said);
    assertFalse(said.contains("in line"), said);
    assertFalse(words().stream().anyMatch(w -> w != null && w.startsWith("Out of line")));
  }

  @Test
  void aSheetIsReadAndItsDropsGoIntoTheJob() throws Exception {
    read("six-before-and-after.csv");
    assertTrue(says("After the service five of six are surely in line"), words()::toString);
    assertTrue(says("drips: 3 drops in 2 min"), words()::toString);
    picture("bench-sheet-after", 1280, 720);
    int before = model.jobProperty().get().findings().size();
    robot.push(KeyCode.CONTROL, KeyCode.J);
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(before + 6, model.jobProperty().get().findings().size());
  }

  @Test
  void picturesInEveryLook() throws Exception {
    System.gc();
    read("six-as-they-came.bench.json");
    TextField first = (TextField) stage.getScene().lookup("#bench-before-1");
    assertEquals("243", first.getText(), "the table shows what was read");
    for (Theme theme : Theme.values()) {
      run(() -> looks.themeProperty().set(theme));
      picture("bench-sheet-" + theme.styleClass(), 1280, 720);
      picture("bench-sheet-" + theme.styleClass(), 1920, 1080);
    }
    run(looks::enlarge);
    run(looks::enlarge);
    picture("bench-sheet-larger-text", 1280, 720);
  }

  @Test
  void injectorsAreSortedIntoMatchedSets() throws Exception {
    read("thirteen-to-match.csv");
    robot.push(KeyCode.CONTROL, KeyCode.T);
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(says("B7,  A3,  B2,  B6"), words()::toString);
    assertTrue(says("Not fit to refit: B3."), words()::toString);
    picture("matched-sets", 1280, 720);
    robot.type(KeyCode.UP);
    robot.type(KeyCode.UP);
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(says("Set 2"), words()::toString);
    assertFalse(says("Set 3"), "twelve make two sets of six");
  }

  @Test
  void earlierSheetsAreShownAsAHistory() throws Exception {
    read("six-before-and-after.csv");
    robot.push(KeyCode.CONTROL, KeyCode.T);
    robot.push(KeyCode.CONTROL, KeyCode.T);
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(says("No earlier sheet yet."), words()::toString);
    sheet = SCENARIOS.resolve("bench/six-a-year-before.csv");
    robot.type(KeyCode.SPACE);
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(says("3: passes less than it did"), words()::toString);
    assertTrue(says("2025-10-14"), words()::toString);
    for (Theme theme : Theme.values()) {
      run(() -> looks.themeProperty().set(theme));
      picture("bench-history-" + theme.styleClass(), 1280, 720);
    }
  }

  @Test
  void theResultOfADropTestGoesIntoTheJob() throws Exception {
    for (int i = 0; i < 3; i++) {
      robot.push(KeyCode.CONTROL, KeyCode.T);
    }
    read("drops-with-a-third-reading.csv");
    assertTrue(says("Injector 5 doesn't shut"), words()::toString);
    assertTrue(says("Not all fit"), words()::toString);
    picture("drop-test-stays-open", 1280, 720);
    int before = model.jobProperty().get().findings().size();
    Button into =
        stage.getScene().getRoot().lookupAll(".button").stream()
            .map(Button.class::cast)
            .filter(button -> button.getText().equals("Result into the job"))
            .findFirst()
            .orElseThrow();
    run(into::fire);
    assertEquals(before + 1, model.jobProperty().get().findings().size());
  }

  /** Read by keys, then one line typed over. */
  @Test
  void aDropTestIsReadTypedOverAndJudged() throws Exception {
    for (int i = 0; i < 3; i++) {
      robot.push(KeyCode.CONTROL, KeyCode.T);
    }
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(says("Type the gauge before and after each firing"), words()::toString);
    picture("drop-test-empty", 1280, 720);
    read("drops-six-times.csv");
    assertTrue(says("Injector 3 is low: -1"), words()::toString);
    for (Theme theme : Theme.values()) {
      run(() -> looks.themeProperty().set(theme));
      picture("drop-test-" + theme.styleClass(), 1280, 720);
      picture("drop-test-" + theme.styleClass(), 1920, 1080);
    }
    run(() -> ((TextField) stage.getScene().lookup("#drop-after-1")).requestFocus());
    robot.push(KeyCode.CONTROL, KeyCode.A);
    robot.write("2.4");
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(says("Can't be read"), words()::toString);
  }
}
