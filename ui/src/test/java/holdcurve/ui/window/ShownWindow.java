package holdcurve.ui.window;

import holdcurve.file.JobReader;
import holdcurve.inference.ranking.Ranker;
import holdcurve.ui.window.frame.Desk;
import holdcurve.ui.window.job.OpenJobModel;
import java.nio.file.Path;
import java.util.function.DoubleSupplier;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.stage.Stage;
import javafx.stage.StageStyle;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** A window that does all work at once, and pictures of it. */
record ShownWindow(Stage stage, Desk desk) {
  private static final Path PICTURES = Path.of("target", "snapshots");

  /** Shows an empty one. */
  static ShownWindow of(Supplier<Ranker> ranker) throws Exception {
    return of(ranker, Desk::alone);
  }

  /** Likewise, on a desk of one's own. */
  static ShownWindow of(Supplier<Ranker> ranker, Function<OpenJobModel, Desk> desk)
      throws Exception {
    FxToolkit.registerPrimaryStage();
    FxToolkit.cleanupStages();
    ShownWindow[] shown = new ShownWindow[1];
    FxToolkit.setupFixture(
        () -> {
          shown[0] = new ShownWindow(new Stage(StageStyle.UNDECORATED), desk.apply(jobs(ranker)));
          HoldcurveWindow.fill(shown[0].stage(), shown[0].desk());
          shown[0].stage().show();
        });
    return shown[0];
  }

  /** Likewise, with a watch that goes by a clock of one's own [s]. */
  static ShownWindow of(Supplier<Ranker> ranker, DoubleSupplier clock) throws Exception {
    FxToolkit.registerPrimaryStage();
    FxToolkit.cleanupStages();
    ShownWindow[] shown = new ShownWindow[1];
    FxToolkit.setupFixture(
        () -> {
          shown[0] = new ShownWindow(new Stage(StageStyle.UNDECORATED), Desk.alone(jobs(ranker)));
          HoldcurveWindow.fill(shown[0].stage(), shown[0].desk(), clock);
          shown[0].stage().show();
        });
    return shown[0];
  }

  private static OpenJobModel jobs(Supplier<Ranker> ranker) {
    return new OpenJobModel(JobReader::read, ranker, Runnable::run, Runnable::run);
  }

  Node find(String selector) {
    return stage.getScene().lookup(selector);
  }

  void picture(String name, int width, int height) throws Exception {
    SceneImage.write(
        stage, PICTURES.resolve(name + "-" + width + "x" + height + ".png"), width, height);
  }

  /** Does something on the thread of the screen, and waits for what follows. */
  static void run(Runnable work) throws Exception {
    FxToolkit.setupFixture(work::run);
    WaitForAsyncUtils.waitForFxEvents();
  }
}
