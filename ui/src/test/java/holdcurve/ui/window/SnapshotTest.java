package holdcurve.ui.window;

import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.file.JobReader;
import holdcurve.infer.Ranker;
import holdcurve.infer.Verdict;
import holdcurve.ui.theme.Looks;
import holdcurve.ui.theme.Theme;
import holdcurve.ui.window.job.OpenJobModel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.control.CheckBox;
import javafx.scene.control.TabPane;
import javafx.scene.control.TitledPane;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import javafx.stage.StageStyle;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** Pictures of the window in every look, for a person to judge. */
class SnapshotTest {
  private static final Path FOLDER = Path.of("target", "snapshots");

  private final Looks looks = new Looks();
  private final FxRobot robot = new FxRobot();
  private OpenJobModel model;
  private Ranker ranker = new HandMadeRanking();
  private Stage stage;

  @BeforeEach
  void openWindow() throws Exception {
    FxToolkit.registerPrimaryStage();
    FxToolkit.setupFixture(
        () -> {
          model = new OpenJobModel(JobReader::read, () -> ranker, Runnable::run, Runnable::run);
          stage = new Stage(StageStyle.UNDECORATED);
          HoldcurveWindow.fill(stage, model, looks, owner -> near -> Optional.empty());
          stage.show();
        });
  }

  @Test
  void everySizeInEveryTheme() throws Exception {
    run(() -> model.open(Jobs.TWO_HOLDS));
    for (Theme theme : Theme.values()) {
      run(() -> looks.themeProperty().set(theme));
      picture("suspects-" + theme.styleClass(), 1280, 720);
      picture("suspects-" + theme.styleClass(), 1920, 1080);
    }
  }

  @Test
  void otherStates() throws Exception {
    picture("empty", 1280, 720);
    run(() -> model.open(Jobs.TWO_HOLDS));
    run(() -> model.open(Jobs.UNKNOWN_ENTRY));
    run(() -> ((TabPane) find(".tab-pane")).getSelectionModel().select(1));
    for (int i = 0; i < 3; i++) {
      robot.type(KeyCode.DOWN);
    }
    picture("banner-clamped-other-suspect", 1280, 720);
    run(model::dismissProblem);
    run(() -> ((TitledPane) find("#notes")).setExpanded(true));
    picture("notes", 1280, 720);
    run(() -> ((TitledPane) find("#notes")).setExpanded(false));
    run(looks::enlarge);
    run(looks::enlarge);
    picture("larger-text", 1280, 720);
    run(() -> looks.themeProperty().set(Theme.DARK));
    picture("larger-text-dark", 1920, 1080);
  }

  @Test
  void crowdedRankingsOfEveryVerdict() throws Exception {
    for (Verdict.Kind kind : Verdict.Kind.values()) {
      run(looks::switchTheme);
      ranker = new CrowdedRanking(kind);
      run(() -> model.open(Jobs.SHORT_HOLD));
      picture("crowded-" + kind.name().toLowerCase(Locale.ROOT), 1280, 720);
    }
    run(() -> ((CheckBox) find("#show-unlikely")).fire());
    robot.type(KeyCode.END);
    run(() -> model.open(Jobs.UNKNOWN_ENTRY));
    picture("crowded-end", 1920, 1080);
  }

  private Object find(String selector) {
    return stage.getScene().lookup(selector);
  }

  private void picture(String name, int width, int height) throws Exception {
    Path file = FOLDER.resolve(name + "-" + width + "x" + height + ".png");
    run(
        () -> {
          stage.setX(0);
          stage.setY(0);
          stage.setWidth(width);
          stage.setHeight(height);
        });
    run(() -> SceneImage.write(stage.getScene(), file));
    assertTrue(Files.size(file) > 10_000, file + " is nearly empty");
  }

  private static void run(Runnable work) throws Exception {
    FxToolkit.setupFixture(work::run);
    WaitForAsyncUtils.waitForFxEvents();
  }
}
