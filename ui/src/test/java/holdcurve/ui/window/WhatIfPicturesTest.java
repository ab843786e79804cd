package holdcurve.ui.window;

import static holdcurve.ui.window.ShownWindow.run;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.ui.theme.Appearance;
import holdcurve.ui.theme.Theme;
import java.util.List;
import java.util.function.Consumer;
import javafx.scene.Node;
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
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;

/** The page What if through its main task, and the next test, with pictures in every look. */
class WhatIfPicturesTest {

  private final TypingRobot robot = new TypingRobot();
  private ShownWindow shown;
  private Appearance looks;

  @BeforeEach
  void openWindow() throws Exception {
    shown = ShownWindow.of(BelievedRanking::new);
    looks = shown.desk().looks();
    run(() -> shown.desk().jobs().open(Jobs.TWO_HOLDS));
  }

  @Test
  void tryARepairAndASlider() throws Exception {
    run(() -> page("What if"));
    run(() -> ((CheckBox) shown.find("#repairs .check-box")).fire());
    run(() -> ((Slider) shown.find("#sliders .slider")).increment());
    Label tried = (Label) shown.find(".hc-tried");
    assertTrue(tried.getText().startsWith("Tried: put right: check valve leaks"), tried.getText());
    for (Theme theme : Theme.values()) {
      run(() -> looks.themeProperty().set(theme));
      shown.picture("whatif-" + theme.styleClass(), 1280, 720);
      shown.picture("whatif-" + theme.styleClass(), 1920, 1080);
    }
    run(looks::enlarge);
    run(looks::enlarge);
    shown.picture("whatif-larger-text", 1280, 720);
  }

  @Test
  void pricesAndTheOrder() throws Exception {
    run(() -> page("What if"));
    run(() -> ((TabPane) shown.find("#what-if")).getSelectionModel().select(1));
    run(() -> ((TextField) shown.find("#currency")).setText("crowns"));
    run(() -> ((TextField) shown.find("#per-hour")).setText("60"));
    run(() -> ((TextField) shown.find("#price-1")).setText("45"));
    run(() -> ((TextField) shown.find("#price-2")).setText("180"));
    run(() -> ((TextField) shown.find("#price-3")).setText("95"));
    robot.push(KeyCode.F7);
    VBox order = (VBox) shown.find("#cheapest-order");
    String first = ((Label) order.getChildren().get(0)).getText();
    assertTrue(first.startsWith("Cheapest order on average: "), first);
    assertTrue(first.contains("crowns"), first);
    for (Theme theme : Theme.values()) {
      run(() -> looks.themeProperty().set(theme));
      shown.picture("order-" + theme.styleClass(), 1280, 720);
      shown.picture("order-" + theme.styleClass(), 1920, 1080);
    }
  }

  /** The first is all but certain to be needed; the others would cost nothing if left blank. */
  @Test
  void aRepairWithoutAPriceIsNamedAndNotAdvisedFirstForIt() throws Exception {
    run(() -> page("What if"));
    run(() -> ((TabPane) shown.find("#what-if")).getSelectionModel().select(1));
    robot.push(KeyCode.F7);
    String none = ((Label) order().get(0)).getText();
    assertTrue(none.startsWith("No repair has a price yet, so the likeliest comes first."), none);
    run(() -> ((TextField) shown.find("#price-1")).setText("45"));
    robot.push(KeyCode.F7);
    String summary = ((Label) order().get(0)).getText();
    assertTrue(summary.contains("No price yet: "), summary);
    String steps =
        order().stream()
            .map(node -> ((Label) node).getText())
            .filter(words -> words.startsWith("Repair: "))
            .findFirst()
            .orElseThrow();
    assertTrue(steps.startsWith("Repair: put right: check valve"), steps);
    run(() -> ((TextField) shown.find("#price-1")).setText(""));
    run(() -> ((TextField) shown.find("#price-2")).setText("45"));
    robot.push(KeyCode.F7);
    assertTrue(
        order().stream().anyMatch(node -> ((Label) node).getText().contains("tank (no price)")));
  }

  private List<Node> order() {
    WaitForAsyncUtils.waitForFxEvents();
    return ((VBox) shown.find("#cheapest-order")).getChildren();
  }

  private void sections(Consumer<TitledPane> what) throws Exception {
    run(
        () ->
            robot.from(shown.stage().getScene().getRoot()).lookup(".hc-section").queryAll().stream()
                .map(TitledPane.class::cast)
                .forEach(what));
  }

  @Test
  void goingThroughThePartsWithTheKeysRenewsNoneBeforeTheButton() throws Exception {
    run(() -> page("What if"));
    sections(pane -> pane.setExpanded(true));
    ComboBox<?> part = (ComboBox<?>) shown.find("#renewed-part");
    FlowPane extras = (FlowPane) shown.find("#extras");
    run(part::requestFocus);
    robot.push(KeyCode.DOWN).push(KeyCode.DOWN);
    run(() -> {});
    assertTrue(extras.getChildren().isEmpty());
    run(() -> ((Button) shown.find("#renew")).fire());
    assertEquals(1, extras.getChildren().size());
    assertEquals("choose a part", part.getButtonCell().getText());
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    run(() -> {});
    assertTrue(extras.getChildren().isEmpty());
  }

  @Test
  void swapsAndAnAddedFault() throws Exception {
    run(() -> page("What if"));
    sections(pane -> pane.setExpanded(!pane.isExpanded()));
    ComboBox<?> fault = (ComboBox<?>) shown.find("#added-fault");
    run(() -> fault.getSelectionModel().select(0));
    run(() -> ((Button) shown.find("#add-fault")).fire());
    run(() -> fault.getSelectionModel().select(1));
    assertEquals(1, ((FlowPane) shown.find("#extras")).getChildren().size());
    shown.picture("whatif-swaps", 1280, 720);
  }

  @Test
  void theNextTestUnfolded() throws Exception {
    run(() -> page("Suspects"));
    run(() -> ((TabPane) shown.find("#drawer")).getSelectionModel().select(1));
    for (Theme theme : Theme.values()) {
      run(() -> looks.themeProperty().set(theme));
      shown.picture("next-test-" + theme.styleClass(), 1280, 720);
      shown.picture("next-test-" + theme.styleClass(), 1920, 1080);
    }
  }

  private void page(String title) {
    robot
        .from(shown.stage().getScene().getRoot())
        .lookup("#pages .toggle-button")
        .queryAll()
        .stream()
        .map(ToggleButton.class::cast)
        .filter(button -> button.getText().equals(title))
        .forEach(ToggleButton::fire);
  }
}
