package holdcurve.ui.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.file.JobReader;
import holdcurve.ui.theme.Looks;
import holdcurve.ui.theme.Theme;
import holdcurve.ui.window.job.OpenJobModel;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.TabPane;
import javafx.scene.control.TextField;
import javafx.scene.control.TitledPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import javafx.stage.StageStyle;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** The page What if through its main task, and the next test, with pictures in every look. */
class WhatIfPicturesTest {
  private static final Path FOLDER = Path.of("target", "snapshots");

  private final Looks looks = new Looks();
  private final FxRobot robot = new FxRobot();
  private OpenJobModel model;
  private Stage stage;

  @BeforeEach
  void openWindow() throws Exception {
    FxToolkit.registerPrimaryStage();
    FxToolkit.cleanupStages();
    FxToolkit.setupFixture(
        () -> {
          model =
              new OpenJobModel(JobReader::read, BelievedRanking::new, Runnable::run, Runnable::run);
          stage = new Stage(StageStyle.UNDECORATED);
          HoldcurveWindow.fill(stage, model, looks, owner -> near -> Optional.empty());
          stage.show();
        });
    run(() -> model.open(Jobs.TWO_HOLDS));
  }

  @Test
  void tryARepairAndASlider() throws Exception {
    run(() -> page("What if"));
    run(() -> ((CheckBox) stage.getScene().lookup("#repairs .check-box")).fire());
    run(() -> ((Slider) stage.getScene().lookup("#sliders .slider")).increment());
    Label tried = (Label) stage.getScene().lookup(".hc-tried");
    assertTrue(tried.getText().startsWith("Tried: put right: check valve leaks"), tried.getText());
    for (Theme theme : Theme.values()) {
      run(() -> looks.themeProperty().set(theme));
      picture("whatif-" + theme.styleClass(), 1280, 720);
      picture("whatif-" + theme.styleClass(), 1920, 1080);
    }
    run(looks::enlarge);
    run(looks::enlarge);
    picture("whatif-larger-text", 1280, 720);
  }

  @Test
  void pricesAndTheOrder() throws Exception {
    run(() -> page("What if"));
    run(() -> ((TabPane) stage.getScene().lookup("#what-if")).getSelectionModel().select(1));
    run(() -> ((TextField) stage.getScene().lookup("#currency")).setText("crowns"));
    run(() -> ((TextField) stage.getScene().lookup("#per-hour")).setText("60"));
    run(() -> ((TextField) stage.getScene().lookup("#price-1")).setText("45"));
    run(() -> ((TextField) stage.getScene().lookup("#price-2")).setText("180"));
    run(() -> ((TextField) stage.getScene().lookup("#price-3")).setText("95"));
    robot.push(KeyCode.F7);
    VBox order = (VBox) stage.getScene().lookup("#cheapest-order");
    String first = ((Label) order.getChildren().get(0)).getText();
    assertTrue(first.startsWith("Cheapest order on average: "), first);
    assertTrue(first.contains("crowns"), first);
    for (Theme theme : Theme.values()) {
      run(() -> looks.themeProperty().set(theme));
      picture("order-" + theme.styleClass(), 1280, 720);
      picture("order-" + theme.styleClass(), 1920, 1080);
    }
  }

  @Test
  void swapsAndAnAddedFault() throws Exception {
    run(() -> page("What if"));
    run(
        () ->
            robot.from(stage.getScene().getRoot()).lookup(".hc-section").queryAll().stream()
                .map(TitledPane.class::cast)
                .forEach(pane -> pane.setExpanded(!pane.isExpanded())));
    ComboBox<?> fault = (ComboBox<?>) stage.getScene().lookup("#added-fault");
    run(() -> fault.getSelectionModel().select(0));
    run(() -> ((Button) stage.getScene().lookup("#add-fault")).fire());
    run(() -> fault.getSelectionModel().select(1));
    assertEquals(1, ((FlowPane) stage.getScene().lookup("#extras")).getChildren().size());
    picture("whatif-swaps", 1280, 720);
  }

  @Test
  void theNextTestUnfolded() throws Exception {
    run(() -> page("Suspects"));
    run(() -> ((TabPane) stage.getScene().lookup("#drawer")).getSelectionModel().select(1));
    for (Theme theme : Theme.values()) {
      run(() -> looks.themeProperty().set(theme));
      picture("next-test-" + theme.styleClass(), 1280, 720);
      picture("next-test-" + theme.styleClass(), 1920, 1080);
    }
  }

  private void page(String title) {
    robot.from(stage.getScene().getRoot()).lookup("#pages .toggle-button").queryAll().stream()
        .map(ToggleButton.class::cast)
        .filter(button -> button.getText().equals(title))
        .forEach(ToggleButton::fire);
  }

  private void picture(String name, int width, int height) throws Exception {
    SceneImage.write(
        stage, FOLDER.resolve(name + "-" + width + "x" + height + ".png"), width, height);
  }

  private static void run(Runnable work) throws Exception {
    FxToolkit.setupFixture(work::run);
    WaitForAsyncUtils.waitForFxEvents();
  }
}
