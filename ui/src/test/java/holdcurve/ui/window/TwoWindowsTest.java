package holdcurve.ui.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.file.JobReader;
import holdcurve.file.JobWriter;
import holdcurve.ui.command.HoldcurveCommand;
import holdcurve.ui.theme.Appearance;
import holdcurve.ui.window.frame.FileDialogs;
import holdcurve.ui.window.job.JobEdits;
import holdcurve.ui.window.job.OpenJobModel;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.TimeoutException;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** Two windows on one job: the second is told, and can't overwrite what the first saves. */
class TwoWindowsTest {
  @TempDir private Path folder;
  private final TypingRobot robot = new TypingRobot();
  private final OpenJobModel first = model();
  private final OpenJobModel second = model();
  private Path job;
  private Path other;
  private Stage stage;

  private static OpenJobModel model() {
    OpenJobModel model =
        new OpenJobModel(
            JobReader::read, HandMadeRanking::new, Runnable::run, WaitForAsyncUtils::asyncFx);
    model.claimFiles();
    return model;
  }

  private final class Dialogs implements FileDialogs {
    @Override
    public Optional<Path> chooseJob(Path near) {
      return Optional.empty();
    }

    @Override
    public Optional<Path> saveJob(Path near, String name) {
      return Optional.of(other);
    }
  }

  @BeforeEach
  void openTwice() throws TimeoutException {
    job = folder.resolve("car.job.json");
    other = folder.resolve("copy.job.json");
    JobWriter.write(job, Jobs.twoHolds());
    FxToolkit.registerPrimaryStage();
    onScreen(() -> first.open(job));
    onScreen(
        () -> {
          stage = new Stage();
          HoldcurveWindow.fill(stage, second, new Appearance(), owner -> new Dialogs());
          stage.show();
          second.open(job);
        });
  }

  @AfterEach
  void close() {
    first.close(() -> {});
    second.close(() -> {});
    onScreen(stage::close);
  }

  private static void onScreen(Runnable work) {
    WaitForAsyncUtils.waitForAsyncFx(30_000, work);
    WaitForAsyncUtils.waitForFxEvents();
  }

  private Node strip() {
    return robot.from(stage.getScene().getRoot()).lookup("#elsewhere").query();
  }

  private void press(String text) {
    Button button =
        robot
            .from(strip())
            .lookup((Node node) -> node instanceof Button one && one.getText().equals(text))
            .queryButton();
    assertFalse(button.isDisabled(), text);
    onScreen(button::fire);
  }

  private static void rename(OpenJobModel model, String title) {
    onScreen(() -> model.change("title", before -> JobEdits.titled(before, title)));
  }

  @Test
  void secondIsToldAndSavesElsewhere() {
    assertFalse(first.elsewhereProperty().get());
    assertTrue(strip().isVisible());
    rename(first, "First");
    rename(second, "Second");
    onScreen(first::save);
    onScreen(second::save);
    assertEquals(
        job
            + ": another window has worked on this job since it was opened here; save it under"
            + " another name, or undo what you changed and look again.",
        second.problemProperty().get());
    assertEquals("First", JobReader.read(job).title());
    press("Save under another name…");
    assertFalse(strip().isVisible());
    assertEquals("Second", JobReader.read(other).title());
    assertEquals("First", JobReader.read(job).title());
  }

  @Test
  void secondTakesOverOnceTheFirstIsClosed() {
    rename(first, "First");
    onScreen(first::save);
    press("Look again");
    assertTrue(strip().isVisible(), "the first is still there");
    first.close(() -> {});
    press("Look again");
    assertFalse(strip().isVisible());
    assertEquals("First", second.jobProperty().get().title());
    rename(second, "Second");
    onScreen(second::save);
    assertEquals("", second.problemProperty().get());
    assertEquals("Second", JobReader.read(job).title());
  }

  @Test
  void whatTheFirstLeftIsNotWrittenOver() {
    rename(first, "First");
    onScreen(first::save);
    first.close(() -> {});
    rename(second, "Second");
    onScreen(second::save);
    assertTrue(second.problemProperty().get().contains("since it was opened here"));
    assertEquals("First", JobReader.read(job).title());
    assertEquals("Second", second.jobProperty().get().title(), "kept in the window");
  }

  @Test
  void anotherNameThatAnotherWindowHasIsRefusedToo() {
    JobWriter.write(other, Jobs.twoHolds());
    onScreen(() -> first.open(other));
    rename(second, "Second");
    onScreen(() -> second.saveAs(other));
    assertEquals(
        other
            + ": another window works on this job; save it under another name, or close the other"
            + " window first.",
        second.problemProperty().get());
  }

  /** A window would write over the tick at its next saving. */
  @Test
  void aTickFromTheTerminalIsRefusedMeanwhile() {
    StringWriter err = new StringWriter();
    String step = first.jobProperty().get().upkeep().refit().steps().get(0).id();
    int code =
        HoldcurveCommand.commandLine(new PrintWriter(new StringWriter()), new PrintWriter(err))
            .execute("refit", job.toString(), "--tick", step, "--by", "AB");
    assertEquals(HoldcurveCommand.BAD_INPUT, code);
    assertEquals(
        job + ": a window works on this job; do it there, or close the window first.",
        err.toString().strip());
  }
}
