package holdcurve.ui.window;

import static holdcurve.ui.window.ShownWindow.run;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.inference.answer.Suspect;
import holdcurve.ui.theme.Appearance;
import holdcurve.ui.window.frame.Desk;
import holdcurve.ui.window.frame.FileDialogs;
import holdcurve.ui.window.frame.FileKind;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.chart.ValueAxis;
import javafx.scene.chart.XYChart;
import javafx.scene.control.Label;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TabPane;
import javafx.scene.input.Clipboard;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

/** The circuit tinted, all holds in one plot, the plan as a tree, and pictures to keep. */
class AnswerInPicturesTest {
  @TempDir Path folder;

  private final FxRobot robot = new FxRobot();
  private ShownWindow window;

  @BeforeEach
  void open() throws Exception {
    FileDialogs dialogs =
        new FileDialogs() {
          @Override
          public Optional<Path> chooseJob(Path near) {
            return Optional.empty();
          }

          @Override
          public Optional<Path> save(FileKind kind, Path near, String name) {
            return Optional.of(folder.resolve(name));
          }
        };
    window =
        ShownWindow.of(BelievedRanking::new, jobs -> Desk.alone(jobs, new Appearance(), dialogs));
    run(() -> window.desk().jobs().open(Jobs.TWO_HOLDS));
  }

  @AfterEach
  void close() throws Exception {
    run(window.stage()::close);
  }

  private Node picture(int tab) throws Exception {
    TabPane pictures = (TabPane) window.find("#pictures");
    run(() -> pictures.getSelectionModel().select(tab));
    run(() -> window.stage().getScene().getRoot().layout());
    return pictures.getTabs().get(tab).getContent();
  }

  private String readOut() {
    WaitForAsyncUtils.waitForFxEvents();
    return ((Label) window.find("#read-out")).getText();
  }

  @Test
  void theChancesWrittenInTheCircuitAddUpToThoseOfTheList() throws Exception {
    Node circuit = picture(0);
    double written =
        circuit.lookupAll(".hc-chance").stream()
            .filter(Node::isVisible)
            .mapToDouble(node -> Double.parseDouble(((Text) node).getText().replace(" %", "")))
            .sum();
    double listed =
        window.desk().jobs().ranking().resultProperty().get().suspects().stream()
            .filter(suspect -> !suspect.isNone())
            .filter(
                suspect ->
                    !window
                        .desk()
                        .faults()
                        .parts(window.desk().jobs().jobProperty().get().circuit(), suspect.id())
                        .isEmpty())
            .mapToDouble(Suspect::probability)
            .sum();
    assertTrue(listed > 0.5, "some suspects have a place");
    int parts = circuit.lookupAll(".hc-chance").size();
    assertEquals(100 * listed, written, 1.0 * parts, "each is rounded, or left out below 1 %");
    assertTrue(
        circuit.lookup("#part-check-valve").getAccessibleText().contains("%"),
        "a screen reader says the chance too");
  }

  @Test
  void allHoldsStandInOnePlotAndTheReadingPointedAtIsTold() throws Exception {
    Node together = picture(1);
    int marks =
        window.desk().jobs().jobProperty().get().tests().stream()
            .mapToInt(test -> test.log().hold().size())
            .sum();
    run(together::requestFocus);
    robot.push(KeyCode.RIGHT);
    assertTrue(readOut().startsWith("0:00   "), this::readOut);
    assertTrue(readOut().contains(" bar   "), this::readOut);
    List<String> told = new ArrayList<>(List.of(readOut()));
    for (int i = 1; i < marks; i++) {
      robot.push(KeyCode.RIGHT);
      told.add(readOut());
    }
    assertEquals(marks, told.stream().distinct().count(), "every reading of every hold");
    assertTrue(window.find("#residuals").isVisible());
    Node mark = together.lookup("#several-holds").lookup(".hc-many-mark");
    Bounds all = mark.localToScreen(mark.getBoundsInLocal());
    robot.moveTo(all.getMinX() + 6, all.getMinY() + 6);
    assertTrue(readOut().matches("0:0\\d   .*"), this::readOut);
  }

  @Test
  void thePlotComesNearerAndFollowsTheReading() throws Exception {
    Node together = picture(1);
    XYChart<?, ?> chart = (XYChart<?, ?>) together.lookup("#several-holds");
    double whole = span(chart);
    run(together::requestFocus);
    robot.push(KeyCode.RIGHT);
    for (int i = 0; i < 6; i++) {
      robot.push(KeyCode.ADD);
    }
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(whole / Math.pow(1.25, 6), span(chart), 1e-9);
    for (int i = 0; i < 40; i++) {
      robot.push(KeyCode.RIGHT);
    }
    WaitForAsyncUtils.waitForFxEvents();
    ValueAxis<?> time = (ValueAxis<?>) chart.getXAxis();
    assertTrue(time.getLowerBound() > 0, "the last reading shows");
    robot.push(KeyCode.NUMPAD0);
    WaitForAsyncUtils.waitForFxEvents();
    assertEquals(whole, span(chart), 0);
  }

  private static double span(XYChart<?, ?> chart) {
    ValueAxis<?> time = (ValueAxis<?>) chart.getXAxis();
    return time.getUpperBound() - time.getLowerBound();
  }

  @Test
  void thePlanIsATree() throws Exception {
    run(() -> ((TabPane) window.find("#drawer")).getSelectionModel().select(1));
    Node tree = window.find("#plan-tree");
    assertEquals(1, tree.lookupAll(".hc-plan-test").size());
    assertTrue(tree.lookupAll(".hc-plan-outcome").size() >= 2, "outcomes");
    assertEquals(tree.lookupAll(".hc-plan-outcome").size(), tree.lookupAll(".hc-plan-then").size());
  }

  @Test
  void thePictureIsCopiedAndSaved() throws Exception {
    picture(0);
    robot.push(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.C);
    WaitForAsyncUtils.waitForFxEvents();
    boolean[] image = new boolean[1];
    run(() -> image[0] = Clipboard.getSystemClipboard().hasImage());
    assertTrue(image[0]);
    MenuBar menus = (MenuBar) window.find(".menu-bar");
    MenuItem save =
        menus.getMenus().get(4).getItems().stream()
            .filter(item -> item.getText().startsWith("Save the picture"))
            .findFirst()
            .orElseThrow();
    run(save::fire);
    assertTrue(Files.size(folder.resolve("suspects.png")) > 5_000);
  }
}
