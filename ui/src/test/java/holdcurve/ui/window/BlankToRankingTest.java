package holdcurve.ui.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.fault.FaultCatalogue;
import holdcurve.ui.window.frame.Desk;
import holdcurve.ui.window.job.OpenJobModel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.BooleanSupplier;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/**
 * From a blank start to a ranking at the keyboard, with the real ranking of a few faults, while the
 * thread of the screen is watched.
 */
class BlankToRankingTest {
  /** What the screen may do without a pause [ms]. */
  private static final long MOST_MS = 100;

  private static final int MOST_ACTIONS = 25;
  private static final Set<String> FEW = Set.of("check-valve-seat", "injector-tip");

  /** Of an invented circuit whose check valve leaks, as read by eye. */
  private static final List<String> READINGS =
      List.of(
          "2.12", "1.9", "1.78", "1.68", "1.58", "1.48", "1.4", "1.3", "1.2", "1.12", "0.96",
          "0.88");

  @TempDir Path folder;

  private final TypingRobot robot = new TypingRobot();
  private final ExecutorService background = Executors.newCachedThreadPool();
  private volatile double now = 5000;
  private int actions;
  private Stage stage;
  private Desk desk;
  private OpenJobModel model;

  @BeforeEach
  void show() throws Exception {
    FxToolkit.registerPrimaryStage();
    FxToolkit.cleanupStages();
    FxToolkit.setupFixture(
        () -> {
          stage = new Stage();
          desk = WorkingDesk.of(BlankToRankingTest::few, near -> Optional.empty(), background);
          model = desk.jobs();
          HoldcurveWindow.fill(stage, desk, () -> now);
          stage.show();
        });
  }

  private static FaultCatalogue few(Optional<Path> none) {
    FaultCatalogue all = FaultCatalogue.load();
    return new FaultCatalogue(
        all.faults().stream().filter(fault -> FEW.contains(fault.id())).toList(), List.of());
  }

  @AfterEach
  void close() throws Exception {
    WorkingDesk.close(desk, stage, background);
  }

  private static void until(BooleanSupplier done) throws InterruptedException {
    for (int i = 0; i < 3000 && !done.getAsBoolean(); i++) {
      Thread.sleep(20);
      WaitForAsyncUtils.waitForFxEvents();
    }
    assertTrue(done.getAsBoolean());
  }

  /** One action: a key, or a key with its shift keys. */
  private void press(KeyCode... keys) {
    actions++;
    robot.push(keys);
    WaitForAsyncUtils.waitForFxEvents();
  }

  /** One action: a value, and Enter. */
  private void enter(String value) {
    actions++;
    robot.write(value);
    robot.push(KeyCode.ENTER);
    WaitForAsyncUtils.waitForFxEvents();
  }

  @Test
  void twelveReadingsTakeFewerThanTwentyFiveActions() throws Exception {
    robot.interact(() -> stage.getScene().lookup("#templates .hc-template").requestFocus());
    press(KeyCode.ENTER);
    until(() -> model.jobProperty().get() != null);
    assertEquals("Hold tests", desk.page().get());
    press(KeyCode.SPACE);
    for (int i = 0; i < READINGS.size(); i++) {
      now = 5000 + (i < 9 ? 30 * i : 240 + 60 * (i - 8));
      enter(READINGS.get(i));
    }
    assertEquals(12, model.jobProperty().get().tests().get(0).log().readings().size());
    assertEquals(420, model.jobProperty().get().tests().get(0).log().holdSpan(), 1e-9);
    press(KeyCode.CONTROL, KeyCode.ENTER);
    try (FxWatch watch = new FxWatch()) {
      until(() -> !model.ranking().busyProperty().get());
      assertNotNull(model.ranking().resultProperty().get(), model.problemProperty().get());
      WaitForAsyncUtils.waitForFxEvents();
      assertTrue(watch.longest() <= MOST_MS, watch.longest() + " ms");
    }
    assertEquals("Suspects", desk.page().get());
    assertTrue(actions < MOST_ACTIONS, actions + " actions");
  }

  /** Opened once before, so that it is work that is watched, and not the loading of classes. */
  @Test
  void aLoggerWithTwentyThousandReadingsDoesNotHoldTheScreenUp() throws Exception {
    StringBuilder log = new StringBuilder("time_s,pressure_bar\n");
    for (int i = 0; i < 20_000; i++) {
      log.append(i / 20.0).append(',').append(2.0 - i * 2e-5 + 0.01 * (i % 3)).append('\n');
    }
    Files.writeString(folder.resolve("long.csv"), log);
    Files.copy(
        Path.of("..", "scenarios", "circuits", "four-cylinder-damper.circuit.json"),
        folder.resolve("c.circuit.json"));
    Path job = folder.resolve("long.job.json");
    Files.writeString(
        job,
        "{\"format\":\"holdcurve-job/1\",\"title\":\"Long\",\"circuit\":\"c.circuit.json\","
            + "\"tests\":[{\"id\":\"a\",\"log\":\"long.csv\"}]}");
    robot.interact(() -> model.open(job));
    until(() -> model.jobProperty().get() != null);
    robot.interact(() -> model.ranking().cancel());
    turn("Hold tests");
    turn("Suspects");
    robot.interact(() -> model.open(Jobs.TWO_HOLDS));
    until(() -> !model.jobProperty().get().title().equals("Long"));
    try (FxWatch watch = new FxWatch()) {
      robot.interact(() -> model.open(job));
      until(() -> model.jobProperty().get().title().equals("Long"));
      robot.interact(() -> model.ranking().cancel());
      turn("Hold tests");
      turn("Suspects");
      assertTrue(watch.longest() <= MOST_MS, watch.longest() + " ms");
    }
  }

  private void turn(String page) throws IOException {
    robot.interact(() -> desk.page().set(page));
    WaitForAsyncUtils.waitForFxEvents();
  }
}
