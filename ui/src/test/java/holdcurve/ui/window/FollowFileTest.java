package holdcurve.ui.window;

import static holdcurve.ui.window.ShownWindow.run;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.record.log.Reading;
import holdcurve.ui.theme.Appearance;
import holdcurve.ui.window.frame.Desk;
import holdcurve.ui.window.frame.FileDialogs;
import holdcurve.ui.window.job.CircuitTemplates;
import holdcurve.ui.window.job.JobEdits;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

/** A log that another program writes, followed while it grows. */
class FollowFileTest {
  @TempDir Path folder;

  private final FxRobot robot = new FxRobot();
  private Path log;
  private ShownWindow window;

  @BeforeEach
  void open() throws Exception {
    log = folder.resolve("logger.csv");
    FileDialogs dialogs =
        new FileDialogs() {
          @Override
          public Optional<Path> chooseJob(Path near) {
            return Optional.empty();
          }

          @Override
          public Optional<Path> chooseLog(Path near) {
            return Optional.of(log);
          }
        };
    window =
        ShownWindow.of(HandMadeRanking::new, jobs -> Desk.alone(jobs, new Appearance(), dialogs));
    run(
        () ->
            window
                .desk()
                .jobs()
                .begin(
                    JobEdits.blank("New", CircuitTemplates.circuit(CircuitTemplates.all().get(0))),
                    null));
    run(() -> window.desk().page().set("Hold tests"));
  }

  @AfterEach
  void close() throws Exception {
    run(window.stage()::close);
  }

  private void write(String more) throws Exception {
    Files.write(
        log,
        more.getBytes(StandardCharsets.UTF_8),
        StandardOpenOption.CREATE,
        StandardOpenOption.APPEND);
  }

  private List<Reading> readings() {
    return window.desk().jobs().jobProperty().get().tests().get(0).log().readings();
  }

  private String said() {
    return ((Label) window.find("#follow-said")).getText();
  }

  private void until(java.util.concurrent.Callable<Boolean> holds) throws Exception {
    WaitForAsyncUtils.waitFor(8, TimeUnit.SECONDS, holds);
    WaitForAsyncUtils.waitForFxEvents();
  }

  @Test
  void whatIsWrittenArrivesAndHalfALineWaits() throws Exception {
    write("time_s,pressure_bar\n0,2.10\n30,1.9");
    robot.push(KeyCode.CONTROL, KeyCode.G);
    until(() -> readings().size() == 1);
    assertEquals(2.1e5, readings().get(0).pressure(), 1);
    write("8\n60,1.94\n");
    until(() -> readings().size() == 3);
    assertEquals(1.98e5, readings().get(1).pressure(), 1, "not 1.9");
    Files.move(log, folder.resolve("away.csv"));
    until(() -> said().contains("can't be read now"));
    assertTrue(said().endsWith("Still following."), this::said);
    assertEquals(3, readings().size());
    Files.move(folder.resolve("away.csv"), log);
    write("90,1.91\n");
    until(() -> readings().size() == 4);
    run(((Button) window.find("#follow-stop"))::fire);
    assertFalse(window.find("#follow").isVisible());
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    until(() -> readings().size() == 3);
  }

  @Test
  void whatAPersonMarkedStaysMarkedAndAShorterFileTakesNothingAway() throws Exception {
    write("time_s,pressure_bar\n0,2.10\n30,1.98\n");
    robot.push(KeyCode.CONTROL, KeyCode.G);
    until(() -> readings().size() == 2);
    robot.push(KeyCode.CONTROL, KeyCode.B);
    until(() -> readings().stream().anyMatch(Reading::doubtful));
    write("60,1.94\n");
    until(() -> readings().size() == 3);
    assertTrue(readings().stream().anyMatch(Reading::doubtful));
    Files.writeString(log, "time_s,pressure_bar\n0,2.10\n");
    until(() -> said().contains("got shorter"));
    assertEquals(3, readings().size());
  }
}
