package holdcurve.ui.window;

import static holdcurve.ui.window.ShownWindow.run;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.file.JobReader;
import holdcurve.file.JobWriter;
import holdcurve.record.job.Job;
import holdcurve.ui.theme.Appearance;
import holdcurve.ui.window.frame.Desk;
import holdcurve.ui.window.frame.FileDialogs;
import holdcurve.ui.window.job.Autosave;
import holdcurve.ui.window.job.JobEdits;
import holdcurve.ui.window.job.OpenJobModel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import javafx.stage.StageStyle;
import javafx.stage.WindowEvent;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** Whatever leaves the open job asks first where something of it is unsaved, and leads back. */
class NothingIsLostTest {
  @TempDir Path folder;
  @TempDir Path home;

  private final TypingRobot robot = new TypingRobot();
  private Autosave autosave;
  private Path file;
  private Path place;
  private OpenJobModel jobs;
  private Desk desk;
  private Stage stage;

  private final class Dialogs implements FileDialogs {
    @Override
    public Optional<Path> chooseJob(Path near) {
      return Optional.of(Jobs.SHORT_HOLD);
    }

    @Override
    public Optional<Path> saveJob(Path near, String name) {
      assertNull(near, "an example's own folder is no place to save to");
      return Optional.ofNullable(place);
    }
  }

  @BeforeEach
  void show() throws Exception {
    file = folder.resolve("car.job.json");
    JobWriter.write(file, Jobs.twoHolds());
    FxToolkit.registerPrimaryStage();
    FxToolkit.cleanupStages();
    autosave = Autosave.in(home);
    run(
        () -> {
          stage = new Stage(StageStyle.UNDECORATED);
          jobs =
              new OpenJobModel(
                  JobReader::readUnfinished,
                  HandMadeRanking::new,
                  Runnable::run,
                  Runnable::run,
                  autosave);
          jobs.examplesAre(Jobs.TWO_HOLDS::equals);
          desk = Desk.alone(jobs, new Appearance(), new Dialogs());
          HoldcurveWindow.fill(stage, desk);
          stage.show();
        });
  }

  @AfterEach
  void close() throws Exception {
    run(stage::close);
    autosave.close();
  }

  private void openAndType() throws Exception {
    run(() -> jobs.open(file));
    typeAReading();
  }

  private void typeAReading() {
    robot.push(KeyCode.CONTROL, KeyCode.DIGIT2);
    robot.write("9:59 1.11").push(KeyCode.ENTER);
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(jobs.unsaved().get());
  }

  private int readings() {
    WaitForAsyncUtils.waitForFxEvents();
    return readings(jobs.jobProperty().get());
  }

  private static int readings(Job job) {
    return job.tests().stream().mapToInt(test -> test.log().readings().size()).sum();
  }

  private Node question() {
    WaitForAsyncUtils.waitForFxEvents();
    return stage.getScene().lookup("#question");
  }

  private void answer(String words) throws Exception {
    Button button =
        question().lookupAll(".button").stream()
            .map(Button.class::cast)
            .filter(one -> one.getText().startsWith(words))
            .findFirst()
            .orElseThrow();
    run(button::fire);
  }

  private void beginFromATemplate() throws Exception {
    robot.push(KeyCode.CONTROL, KeyCode.N);
    run(() -> ((Button) stage.getScene().lookup("#templates .hc-template")).fire());
  }

  @Test
  void aNewJobAsksAndUndoLeadsBackToTheHold() throws Exception {
    openAndType();
    int typed = readings();
    beginFromATemplate();
    assertTrue(question().isVisible());
    assertEquals(typed, readings());
    answer("Leave it unsaved");
    assertFalse(question().isVisible());
    assertEquals(0, readings());
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    assertEquals(typed, readings());
    assertEquals(file, jobs.fileProperty().get());
    assertTrue(jobs.unsaved().get());
    robot.push(KeyCode.CONTROL, KeyCode.S);
    assertEquals(typed, readings(JobReader.read(file)));
    assertFalse(jobs.unsaved().get());
  }

  @Test
  void readingTheFileAgainAsksAndEscapeKeepsTheHold() throws Exception {
    openAndType();
    int typed = readings();
    robot.push(KeyCode.CONTROL, KeyCode.R);
    assertTrue(question().isVisible());
    robot.push(KeyCode.ESCAPE);
    assertFalse(question().isVisible());
    assertEquals(typed, readings());
    robot.push(KeyCode.CONTROL, KeyCode.R);
    answer("Leave it unsaved");
    assertEquals(typed - 1, readings());
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    assertEquals(typed, readings());
  }

  @Test
  void openingAnotherJobSavesThisOneFirstIfToldSo() throws Exception {
    openAndType();
    int typed = readings();
    robot.push(KeyCode.CONTROL, KeyCode.O);
    assertTrue(question().isVisible());
    assertEquals(file, jobs.fileProperty().get());
    robot.push(KeyCode.SPACE);
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(Jobs.SHORT_HOLD, jobs.fileProperty().get());
    assertEquals(typed, readings(JobReader.read(file)));
  }

  @Test
  void closingTheWindowAsksToo() throws Exception {
    openAndType();
    run(() -> stage.fireEvent(new WindowEvent(stage, WindowEvent.WINDOW_CLOSE_REQUEST)));
    assertTrue(stage.isShowing());
    assertTrue(question().isVisible());
    answer("Leave it unsaved");
    assertFalse(stage.isShowing());
  }

  @Test
  void whatIsSavedOrStillEmptyIsLeftUnasked() throws Exception {
    run(() -> jobs.open(file));
    robot.push(KeyCode.CONTROL, KeyCode.O);
    assertFalse(question().isVisible());
    assertEquals(Jobs.SHORT_HOLD, jobs.fileProperty().get());
    beginFromATemplate();
    beginFromATemplate();
    assertFalse(question().isVisible());
    assertEquals("", jobs.undoNameProperty().get());
  }

  @Test
  void everyJobLeftUnsavedIsOfferedAtTheNextStart() throws Exception {
    openAndType();
    beginFromATemplate();
    answer("Leave it unsaved");
    typeAReading();
    run(() -> jobs.open(Jobs.SHORT_HOLD));
    answer("Leave it unsaved");
    autosave.close();
    Set<Integer> offered =
        Autosave.left(home).stream().map(Autosave.Kept::readings).collect(Collectors.toSet());
    assertEquals(Set.of(1, readings(Jobs.twoHolds()) + 1), offered);
  }

  @Test
  void aJobTakenBackAndSavedIsOfferedNoMore() throws Exception {
    openAndType();
    run(() -> jobs.open(Jobs.SHORT_HOLD));
    answer("Leave it unsaved");
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    robot.push(KeyCode.CONTROL, KeyCode.S);
    WaitForAsyncUtils.waitForFxEvents();
    autosave.close();
    assertEquals(List.of(), Autosave.left(home));
  }

  @Test
  void aShippedJobStaysAsItIsAndSavingAsksForAPlace() throws Exception {
    String shipped = Files.readString(Jobs.TWO_HOLDS);
    run(() -> jobs.open(Jobs.TWO_HOLDS));
    assertTrue(stage.getScene().lookup("#example").isVisible());
    run(() -> SceneImage.write(stage.getScene(), Path.of("target", "snapshots", "example.png")));
    typeAReading();
    robot.push(KeyCode.CONTROL, KeyCode.S);
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(jobs.unsaved().get(), "nobody named a place");
    place = folder.resolve("own.job.json");
    robot.push(KeyCode.CONTROL, KeyCode.S);
    WaitForAsyncUtils.waitForFxEvents();
    assertFalse(jobs.unsaved().get());
    assertFalse(stage.getScene().lookup("#example").isVisible());
    assertEquals(readings(), readings(JobReader.read(place)));
    assertEquals(shipped, Files.readString(Jobs.TWO_HOLDS));
    run(() -> jobs.change("title", job -> JobEdits.titled(job, "Mine")));
    robot.push(KeyCode.CONTROL, KeyCode.S);
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals("Mine", JobReader.read(place).title());
  }
}
