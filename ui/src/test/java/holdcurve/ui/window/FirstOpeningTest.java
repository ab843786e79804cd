package holdcurve.ui.window;

import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.fault.FaultCatalogue;
import holdcurve.ui.window.frame.Desk;
import holdcurve.ui.window.job.OpenJobModel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/**
 * A logger's log opened for the first time in a window that has only just been shown, and every
 * page turned to for the first time. How long the thread of the screen is held is printed: a time
 * is no pass or fail. Run alone, it starts with nothing loaded.
 */
class FirstOpeningTest {
  private static final int READINGS = 20_000;

  @TempDir Path folder;

  private final ExecutorService background = Executors.newCachedThreadPool();
  private Stage stage;
  private Desk desk;
  private OpenJobModel model;
  private Rehearsal rehearsal;

  @BeforeEach
  void show() throws Exception {
    FxToolkit.registerPrimaryStage();
    FxToolkit.cleanupStages();
    FxToolkit.setupFixture(
        () -> {
          stage = new Stage();
          desk = WorkingDesk.of(FaultCatalogue::load, near -> Optional.empty(), background);
          model = desk.jobs();
          rehearsal = HoldcurveWindow.fill(stage, desk);
          stage.show();
        });
    CountDownLatch rehearsed = new CountDownLatch(1);
    Platform.runLater(() -> rehearsal.run(rehearsed::countDown));
    assertTrue(rehearsed.await(60, TimeUnit.SECONDS));
  }

  @AfterEach
  void close() throws Exception {
    WorkingDesk.close(desk, stage, background);
  }

  private Path longJob() throws Exception {
    StringBuilder log = new StringBuilder("time_s,pressure_bar\n");
    for (int i = 0; i < READINGS; i++) {
      log.append(i / 20.0).append(',').append(2.0 - i * 2e-5 + 0.01 * (i % 3)).append('\n');
    }
    Files.writeString(folder.resolve("long.csv"), log);
    Files.copy(
        Path.of("..", "scenarios", "circuits", "four-cylinder-damper.circuit.json"),
        folder.resolve("c.circuit.json"));
    return Files.writeString(
        folder.resolve("long.job.json"),
        "{\"format\":\"holdcurve-job/1\",\"title\":\"Long\",\"circuit\":\"c.circuit.json\","
            + "\"tests\":[{\"id\":\"a\",\"log\":\"long.csv\"}]}");
  }

  private static void watched(String what, Runnable work, BooleanSupplier done) throws Exception {
    try (FxWatch watch = new FxWatch()) {
      Platform.runLater(work);
      for (int i = 0; i < 500 && !done.getAsBoolean(); i++) {
        TimeUnit.MILLISECONDS.sleep(20);
      }
      for (int i = 0; i < 3; i++) {
        TimeUnit.MILLISECONDS.sleep(100);
        WaitForAsyncUtils.waitForFxEvents();
      }
      System.out.println(what + ": the screen's thread was held " + watch.longest() + " ms");
      assertTrue(done.getAsBoolean(), what);
    }
  }

  @Test
  void everyPageIsShownWithALongLog() throws Exception {
    Path job = longJob();
    watched("opening", () -> model.open(job), () -> model.jobProperty().get() != null);
    Platform.runLater(() -> model.ranking().cancel());
    for (String page :
        List.of(
            "Hold tests",
            "Suspects",
            "Circuit",
            "What if",
            "Repair check",
            "Bench sheet",
            "Cases",
            "Practice")) {
      watched(page, () -> desk.page().set(page), () -> page.equals(desk.page().get()));
    }
  }
}
