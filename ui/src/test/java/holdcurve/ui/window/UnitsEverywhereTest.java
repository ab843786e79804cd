package holdcurve.ui.window;

import static holdcurve.ui.window.ShownWindow.run;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.message.PressureUnit;
import holdcurve.ui.window.frame.Desk;
import holdcurve.ui.window.job.OpenJobModel;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Control;
import javafx.scene.control.Labeled;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.Clipboard;
import javafx.scene.input.DataFormat;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;

/** Every page with everything on it, after the switch of the unit. */
class UnitsEverywhereTest {
  /** A pressure in bar, or bar as the unit of a column. */
  private static final Pattern BAR = Pattern.compile("[0-9] bar\\b|\\[bar]|^bar$");

  /** How the switch itself and the units of flows are labelled. */
  private static final Set<String> EXPECTED = Set.of("bar");

  private static final String DROPS =
      "gauge_resolution_bar: 0.05\npulses: 1\npulse_ms: 250\nwait_s: 8\nidle_s: 60\n"
          + "injector;before_bar;after_bar\n1;2.5;1.9\n2;2.5;1.85\n3;2.5;1.9\n4;2.5;1.9\n";

  private static final String SHEET =
      "pressure_bar: 3\nfluid: n-heptane\nfluid_temp_C: 20\n"
          + "injector;service;static_mL_min\n1;before;180\n2;before;182\n3;before;150\n";

  private final TypingRobot robot = new TypingRobot();
  private ShownWindow shown;
  private OpenJobModel model;
  private Desk desk;

  @BeforeEach
  void openWindow() throws Exception {
    shown = ShownWindow.of(HandMadeRanking::new);
    desk = shown.desk();
    model = desk.jobs();
  }

  @Test
  void nothingStaysInBar() throws Exception {
    run(() -> model.open(Jobs.TWO_HOLDS));
    run(() -> desk.page().set("Bench sheet"));
    paste(SHEET);
    TabPane sheets = (TabPane) shown.find("#bench-tabs");
    run(() -> sheets.getSelectionModel().selectLast());
    paste(DROPS);
    assertTrue(model.problemProperty().get().isEmpty(), model.problemProperty().get());
    run(() -> desk.page().set("What if"));
    WaitForAsyncUtils.waitForFxEvents();
    ComboBox<?> faults = (ComboBox<?>) shown.find("#added-fault");
    run(() -> faults.getSelectionModel().selectFirst());
    for (String page : List.of("Circuit", "Suspects", "What if")) {
      assertTrue(inBar(page).size() > 2, "the search finds what is in bar: " + page);
    }
    assertTrue(inBarOfParts().stream().anyMatch(text -> text.contains("at 2 bar")));
    run(() -> model.pressures().unitProperty().set(PressureUnit.PSI));
    List<String> left = new ArrayList<>();
    for (String page :
        List.of(
            "Circuit",
            "Hold tests",
            "Suspects",
            "Bench sheet",
            "What if",
            "Repair check",
            "Practice")) {
      inBar(page).forEach(text -> left.add(page + ": " + text));
    }
    left.addAll(inBarOfParts());
    assertEquals(List.of(), left);
  }

  /** The values of each part, chosen one after the other. */
  private Set<String> inBarOfParts() throws Exception {
    Set<String> found = new TreeSet<>();
    run(() -> desk.page().set("Circuit"));
    for (Node part : shown.stage().getScene().getRoot().lookupAll(".hc-part")) {
      run(part::requestFocus);
      Button more = (Button) shown.find("#more-values");
      if (more != null && more.getText().startsWith("More")) {
        run(more::fire);
      }
      run(() -> collect(shown.find("#part-editor"), found));
    }
    return found;
  }

  private void paste(String text) throws Exception {
    run(() -> Clipboard.getSystemClipboard().setContent(Map.of(DataFormat.PLAIN_TEXT, text)));
    robot.push(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.V);
    WaitForAsyncUtils.waitForFxEvents();
  }

  private Set<String> inBar(String page) throws Exception {
    Set<String> found = new TreeSet<>();
    run(() -> desk.page().set(page));
    run(() -> collect(shown.stage().getScene().getRoot(), found));
    return found;
  }

  /** Tabs that aren't shown are in no scene, but hold what they will show. */
  private static void collect(Node node, Set<String> found) {
    if (node instanceof Labeled labeled) {
      look(labeled.getText(), found);
      if (labeled.getGraphic() != null) {
        collect(labeled.getGraphic(), found);
      }
    } else if (node instanceof Text text) {
      look(text.getText(), found);
    } else if (node instanceof TextInputControl input) {
      look(input instanceof TextField field ? field.getPromptText() : "", found);
    }
    look(node.getAccessibleText(), found);
    if (node instanceof Control control && control.getTooltip() != null) {
      look(control.getTooltip().getText(), found);
    }
    if (node instanceof TabPane tabs) {
      tabs.getTabs().stream()
          .map(Tab::getContent)
          .filter(Objects::nonNull)
          .forEach(content -> collect(content, found));
    }
    if (node instanceof Parent parent) {
      parent.getChildrenUnmodifiable().forEach(child -> collect(child, found));
    }
  }

  private static void look(String text, Set<String> found) {
    if (text != null && BAR.matcher(text).find() && !EXPECTED.contains(text)) {
      found.add(text);
    }
  }
}
