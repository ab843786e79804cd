package holdcurve.ui.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.fault.FaultCatalogue;
import holdcurve.ui.PluginJars;
import holdcurve.ui.window.frame.Desk;
import holdcurve.ui.window.frame.FileDialogs;
import holdcurve.ui.window.job.OpenJobModel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Labeled;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/**
 * The example plugin in the window: its folder is chosen in the menu, and from then on it is ranked
 * and can be tried. Only a few of the other faults, so that the real ranking is quick.
 */
class PluginWindowTest {
  private static final Set<String> FEW = Set.of("check-valve-seat", "injector-tip", "porous-hose");
  private static final String EXAMPLE = "Hose sweats fuel";

  // class loaders keep their jars open, which some systems won't let one delete
  @TempDir(cleanup = CleanupMode.NEVER)
  Path work;

  private final TypingRobot robot = new TypingRobot();
  private final ExecutorService background = Executors.newCachedThreadPool();
  private Path folder;
  private Stage stage;
  private Desk desk;
  private OpenJobModel model;

  /** A person who chooses a job, then a folder of plugins. */
  private final class Chooses implements FileDialogs {
    @Override
    public Optional<Path> chooseJob(Path near) {
      return Optional.empty();
    }

    @Override
    public Optional<Path> choosePlugins(Path near) {
      return Optional.of(folder);
    }
  }

  @BeforeEach
  void show() throws Exception {
    folder = work.resolve("plugins");
    new PluginJars(work, folder).example();
    FxToolkit.registerPrimaryStage();
    FxToolkit.cleanupStages();
    FxToolkit.setupFixture(
        () -> {
          stage = new Stage();
          desk = WorkingDesk.of(PluginWindowTest::few, new Chooses(), background);
          model = desk.jobs();
          HoldcurveWindow.fill(stage, desk);
          stage.show();
        });
    robot.interact(
        () ->
            model.open(
                Path.of(System.getProperty("holdcurve.root"), "scenarios/check-valve.job.json")));
    until(this::ranked);
  }

  private static FaultCatalogue few(Optional<Path> folder) {
    return FaultCatalogue.load(folder).only(fault -> FEW.contains(fault.id()));
  }

  @AfterEach
  void close() throws Exception {
    WorkingDesk.close(desk, stage, background);
  }

  private static void until(BooleanSupplier done) throws InterruptedException {
    for (int i = 0; i < 1500 && !done.getAsBoolean(); i++) {
      Thread.sleep(20);
      WaitForAsyncUtils.waitForFxEvents();
    }
    assertTrue(done.getAsBoolean());
  }

  private boolean ranked() {
    return model.ranking().resultProperty().get() != null && !model.ranking().busyProperty().get();
  }

  private <T extends Node> List<T> all(String selector, Class<T> type) {
    return stage.getScene().getRoot().lookupAll(selector).stream().map(type::cast).toList();
  }

  private MenuItem menu(Predicate<String> words) {
    MenuBar bar = all(".menu-bar", MenuBar.class).get(0);
    return bar.getMenus().stream()
        .flatMap(menu -> menu.getItems().stream())
        .filter(item -> item.getText() != null && words.test(item.getText()))
        .findFirst()
        .orElseThrow();
  }

  private boolean isSuspect() {
    robot.interact(() -> desk.page().set("Suspects"));
    return all("#suspects .label", Labeled.class).stream()
        .anyMatch(label -> label.getText().contains(EXAMPLE));
  }

  private boolean canBeTried() {
    robot.interact(() -> desk.page().set("What if"));
    return faultsToTry().getItems().stream().anyMatch(fault -> words(fault).contains(EXAMPLE));
  }

  @SuppressWarnings("unchecked")
  private ComboBox<Object> faultsToTry() {
    return (ComboBox<Object>) stage.getScene().getRoot().lookup("#added-fault");
  }

  private String words(Object fault) {
    return faultsToTry().getConverter().toString(fault);
  }

  @Test
  void aChosenFolderJoinsSuspectsAndWhatIf() throws Exception {
    assertTrue(!isSuspect() && !canBeTried());
    robot.interact(() -> menu("Folder of _plugins …"::equals).fire());
    until(() -> ranked() && isSuspect());
    until(this::canBeTried);
    assertEquals(folder, desk.faults().folderProperty().get());
  }

  @Test
  void takenOutOfUseItLeavesBoth() throws Exception {
    robot.interact(() -> menu("Folder of _plugins …"::equals).fire());
    until(() -> ranked() && isSuspect());
    robot.interact(() -> menu(words -> words.startsWith("Stop using plugins")).fire());
    until(() -> ranked() && !isSuspect());
    until(() -> !canBeTried());
  }

  @Test
  void aBadJarBesideItIsNamed() throws Exception {
    Files.writeString(folder.resolve("text.jar"), "I am a text.");
    robot.interact(() -> menu("Folder of _plugins …"::equals).fire());
    until(() -> model.problemProperty().get().contains("text.jar"));
    until(() -> ranked() && isSuspect());
  }
}
