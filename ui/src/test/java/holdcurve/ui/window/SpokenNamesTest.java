package holdcurve.ui.window;

import static holdcurve.ui.window.ShownWindow.run;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBoxBase;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.Slider;
import javafx.scene.control.Spinner;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.TableView;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.TitledPane;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

/** What a screen reader says of each control, and the list of keys. */
class SpokenNamesTest {
  private final FxRobot robot = new FxRobot();
  private ShownWindow window;

  @BeforeEach
  void open() throws Exception {
    window = ShownWindow.of(BelievedRanking::new);
    run(() -> window.desk().jobs().open(Jobs.TWO_HOLDS));
  }

  @AfterEach
  void close() throws Exception {
    run(window.stage()::close);
  }

  @Test
  void everyControlHasAName() throws Exception {
    Set<String> unnamed = new TreeSet<>();
    Set<String> seen = new HashSet<>();
    for (String page :
        new String[] {
          "Circuit",
          "Hold tests",
          "Suspects",
          "Bench sheet",
          "What if",
          "Repair check",
          "Cases",
          "Practice"
        }) {
      run(() -> window.desk().page().set(page));
      if (page.equals("Circuit")) {
        robot.push(KeyCode.RIGHT);
      }
      run(
          () -> {
            window.stage().getScene().getRoot().applyCss();
            Set<Node> labelled = new HashSet<>();
            Set<Node> all = new HashSet<>();
            collect(window.stage().getScene().getRoot(), all);
            all.forEach(
                node -> {
                  if (node instanceof Label label && label.getLabelFor() != null) {
                    labelled.add(label.getLabelFor());
                  }
                });
            for (Node node : all) {
              if (isAsked(node)) {
                seen.add(node.getClass().getSimpleName());
                if (!isNamed(node, labelled)) {
                  unnamed.add(
                      page
                          + ": "
                          + node.getClass().getSimpleName()
                          + " "
                          + node.getId()
                          + " in "
                          + node.getParent().getStyleClass());
                }
              }
            }
          });
    }
    assertTrue(seen.contains("TextField") && seen.contains("Button"), seen::toString);
    assertEquals(Set.of(), unnamed);
  }

  private static boolean isAsked(Node node) {
    return node instanceof Control
        && (node instanceof Button
            || node instanceof TextInputControl
            || node instanceof ComboBoxBase
            || node instanceof Slider
            || node instanceof Spinner
            || node instanceof TableView
            || node instanceof Labeled labeled && labeled.isFocusTraversable());
  }

  private static boolean isNamed(Node node, Set<Node> labelled) {
    String text = node instanceof Labeled labeled ? labeled.getText() : "";
    boolean inSpinner =
        node.getParent() instanceof Spinner || node.getParent() instanceof ComboBoxBase;
    return inSpinner
        || labelled.contains(node)
        || text != null && !text.isBlank()
        || node.getAccessibleText() != null && !node.getAccessibleText().isBlank();
  }

  private static void collect(Node node, Set<Node> found) {
    if (!found.add(node)) {
      return;
    }
    if (node instanceof TabPane tabs) {
      tabs.getTabs().stream()
          .map(Tab::getContent)
          .filter(content -> content != null)
          .forEach(content -> collect(content, found));
    }
    if (node instanceof TitledPane titled && titled.getContent() != null) {
      collect(titled.getContent(), found);
    }
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> collect(child, found));
    }
  }

  @Test
  void allKeysAreListedAndEscapeLeads() throws Exception {
    robot.push(KeyCode.CONTROL, KeyCode.F1);
    WaitForAsyncUtils.waitForFxEvents();
    Node keys = window.find("#keys");
    assertTrue(keys.isVisible());
    window.picture("keys", 1280, 720);
    Set<String> words =
        keys.lookupAll(".label").stream()
            .map(node -> ((Label) node).getText())
            .collect(Collectors.toSet());
    assertTrue(words.contains("Rank"), words::toString);
    assertTrue(words.contains("F5"), words::toString);
    assertTrue(words.contains("Page Hold tests"), words::toString);
    assertTrue(words.contains("Space"), words::toString);
    robot.push(KeyCode.ESCAPE);
    WaitForAsyncUtils.waitForFxEvents();
    assertFalse(keys.isVisible());
  }
}
