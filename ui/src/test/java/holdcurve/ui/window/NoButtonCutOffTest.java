package holdcurve.ui.window;

import static holdcurve.ui.window.ShownWindow.run;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.ui.window.job.JobEdits;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TabPane;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;

/** At 1280×720 every button of every page can be read and reached. */
class NoButtonCutOffTest {
  private static final List<String> PAGES =
      List.of(
          "Circuit",
          "Hold tests",
          "Suspects",
          "Bench sheet",
          "What if",
          "Repair check",
          "Cases",
          "Practice");

  private ShownWindow window;

  @BeforeEach
  void open() throws Exception {
    window = ShownWindow.of(HandMadeRanking::new);
    run(
        () -> {
          window.stage().setWidth(1280);
          window.stage().setHeight(720);
          window.desk().jobs().open(Path.of("..", "scenarios", "repaired-check-valve.job.json"));
        });
  }

  @AfterEach
  void close() throws Exception {
    run(window.stage()::close);
  }

  @Test
  void atTheUsualText() throws Exception {
    assertEquals(List.of(), cutOff());
  }

  @Test
  void withEveryStripThatThereIs() throws Exception {
    run(
        () -> {
          window.desk().jobs().change("hold", job -> JobEdits.removeTest(job, "feed clamped"));
          window.desk().jobs().reload();
          window.desk().jobs().report("Something went wrong, said in a sentence of usual length.");
        });
    assertEquals(List.of(), cutOff());
  }

  @Test
  void whereANewJobIsBegun() throws Exception {
    new TypingRobot().push(KeyCode.CONTROL, KeyCode.N);
    List<String> found = new ArrayList<>();
    look("New job", found);
    run(window.desk().looks()::enlarge);
    look("New job, larger", found);
    assertEquals(List.of(), found);
  }

  @Test
  void atLargerText() throws Exception {
    run(window.desk().looks()::enlarge);
    run(window.desk().looks()::enlarge);
    assertEquals(List.of(), cutOff());
  }

  private List<String> cutOff() throws Exception {
    List<String> found = new ArrayList<>();
    for (String page : PAGES) {
      run(() -> window.desk().page().set(page));
      look(page, found);
      for (Node node : window.stage().getScene().getRoot().lookupAll(".tab-pane")) {
        TabPane tabs = (TabPane) node;
        for (int i = 0; i < tabs.getTabs().size(); i++) {
          int tab = i;
          run(() -> tabs.getSelectionModel().select(tab));
          look(page + ", " + tabs.getTabs().get(i).getText(), found);
        }
        run(() -> tabs.getSelectionModel().select(0));
      }
    }
    return found;
  }

  private void look(String where, List<String> found) {
    WaitForAsyncUtils.waitForFxEvents();
    Set<Node> all = new HashSet<>(window.stage().getScene().getRoot().lookupAll(".button"));
    all.addAll(window.stage().getScene().getRoot().lookupAll(".toggle-button"));
    assertTrue(all.stream().filter(NoButtonCutOffTest::shows).count() > 3, where);
    for (Node node : all) {
      if (node instanceof ButtonBase button && !(node instanceof CheckBox) && shows(node)) {
        String words = where + ": " + button.getText();
        if (isShortened(button)) {
          found.add(words + " is shortened");
        } else if (!scrolls(node) && isOut(node)) {
          found.add(words + " lies outside");
        }
      }
    }
  }

  private static boolean shows(Node node) {
    for (Node n = node; n != null; n = n.getParent()) {
      if (!n.isVisible()) {
        return false;
      }
    }
    return node.getLayoutBounds().getWidth() > 0;
  }

  private static boolean scrolls(Node node) {
    for (Node n = node; n != null; n = n.getParent()) {
      if (n instanceof ScrollPane) {
        return true;
      }
    }
    return false;
  }

  private static boolean isShortened(ButtonBase button) {
    Node words = button.lookup(".text");
    return words instanceof Text text
        && button.getText() != null
        && !button.getText().isEmpty()
        && !text.getText().replace("\n", " ").strip().equals(button.getText().replace("_", ""));
  }

  /** Beyond anything that holds it, or beyond the window. */
  private static boolean isOut(Node node) {
    Bounds b = node.localToScene(node.getLayoutBounds());
    for (Node n = node.getParent(); n != null; n = n.getParent()) {
      Bounds around = n.localToScene(n.getLayoutBounds());
      if (b.getMinX() < around.getMinX() - 1
          || b.getMinY() < around.getMinY() - 1
          || b.getMaxX() > around.getMaxX() + 1
          || b.getMaxY() > around.getMaxY() + 1) {
        return true;
      }
    }
    return false;
  }
}
