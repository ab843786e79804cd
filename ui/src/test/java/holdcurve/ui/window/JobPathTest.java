package holdcurve.ui.window;

import static holdcurve.ui.window.ShownWindow.run;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.advice.check.CheckVerdict;
import holdcurve.advice.plan.Procedure;
import holdcurve.common.work.Progress;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.ui.HandMadeCheck;
import holdcurve.ui.theme.Theme;
import holdcurve.ui.window.job.OpenJobPath;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.util.WaitForAsyncUtils;

/** A job led from step to step by the one button that each page has for it. */
class JobPathTest {
  private final TypingRobot robot = new TypingRobot();
  private ShownWindow window;

  @BeforeEach
  void open() throws Exception {
    window = ShownWindow.of(BelievedRanking::new);
  }

  @AfterEach
  void close() throws Exception {
    run(window.stage()::close);
  }

  private Set<String> done() {
    WaitForAsyncUtils.waitForFxEvents();
    Set<String> done = new TreeSet<>();
    for (Node node : window.find("#path").lookupAll(".button")) {
      if (node.getAccessibleText().endsWith(": done")) {
        done.add(((Button) node).getText());
      }
    }
    return done;
  }

  private Button button(String selector) {
    WaitForAsyncUtils.waitForFxEvents();
    return (Button) window.find(selector);
  }

  private void press(String selector) throws Exception {
    assertTrue(button(selector).isVisible(), selector);
    assertEquals(List.of(selector.substring(1)), primary());
    run(button(selector)::fire);
  }

  /** Ids of the buttons that lead on from the page on view. */
  private List<String> primary() {
    WaitForAsyncUtils.waitForFxEvents();
    return window.stage().getScene().getRoot().lookupAll(".accent").stream()
        .filter(JobPathTest::shows)
        .map(Node::getId)
        .toList();
  }

  private static boolean shows(Node node) {
    for (Node n = node; n != null; n = n.getParent()) {
      if (!n.isVisible()) {
        return false;
      }
    }
    return true;
  }

  private Job job() {
    WaitForAsyncUtils.waitForFxEvents();
    return window.desk().jobs().jobProperty().get();
  }

  private String page() {
    WaitForAsyncUtils.waitForFxEvents();
    return window.desk().page().get();
  }

  private void hold(String... readings) {
    for (String reading : readings) {
      robot.write(reading).push(KeyCode.ENTER);
    }
    WaitForAsyncUtils.waitForFxEvents();
  }

  @Test
  @SuppressWarnings("unchecked")
  void eachPageLeadsToTheNextStep() throws Exception {
    run(((Button) window.find("#templates .hc-template"))::fire);
    assertEquals(Set.of("Described"), done());
    robot.push(KeyCode.CONTROL, KeyCode.DIGIT1);
    press("#start-hold");
    assertEquals("Hold tests", page());
    assertEquals(List.of("mark"), primary());
    hold("0:00 2.1", "1:00 1.9", "2:00 1.8");
    assertEquals(Set.of("Described", "Held"), done());
    press("#rank");
    assertEquals("Suspects", page());
    assertEquals(Set.of("Described", "Held", "Judged"), done(), "two can't be told apart");
    for (Theme theme : Theme.values()) {
      run(() -> window.desk().looks().themeProperty().set(theme));
      window.picture("path-" + theme.styleClass(), 1280, 720);
      window.picture("path-" + theme.styleClass(), 1920, 1080);
    }
    assertEquals("Do the next test", button("#way-on").getText());
    press("#way-on");
    assertEquals("Hold tests", page());
    String name = window.desk().jobs().plannedProperty().get().name();
    assertTrue(steps().contains(name), steps()::toString);
    window.picture("next-test-ready", 1280, 720);
  }

  private List<String> steps() {
    return window.stage().getScene().getRoot().lookup(".hc-steps").lookupAll(".label").stream()
        .map(node -> ((Label) node).getText())
        .toList();
  }

  @Test
  void aHoldThatThePlanAdvisesHasItsClampsAndSteps() throws Exception {
    run(() -> window.desk().jobs().open(Jobs.TWO_HOLDS));
    ComboBox<?> choice = (ComboBox<?>) window.find("#planned-tests");
    run(() -> window.desk().page().set("Suspects"));
    robot.push(KeyCode.CONTROL, KeyCode.T);
    WaitForAsyncUtils.waitForFxEvents();
    ComboBox<?> tests = choice == null ? (ComboBox<?>) window.find("#planned-tests") : choice;
    int clamped = -1;
    for (int i = 0; i < tests.getItems().size(); i++) {
      if (!procedure(tests.getItems().get(i)).clamped().isEmpty()) {
        clamped = i;
      }
    }
    assertTrue(clamped >= 0, "the plan has a hold with a clamp");
    int wanted = clamped;
    Procedure procedure = procedure(tests.getItems().get(wanted));
    run(() -> tests.getSelectionModel().select(wanted));
    run(button("#do-test")::fire);
    assertEquals("Hold tests", page());
    List<HoldTest> holds = job().tests();
    HoldTest made = holds.get(holds.size() - 1);
    assertEquals(procedure.clamped(), made.clamped());
    assertEquals(procedure.name(), made.id());
    assertTrue(made.log().readings().isEmpty());
    assertTrue(steps().stream().anyMatch(s -> s.startsWith(procedure.steps().size() + "  ")));
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    assertEquals(holds.size() - 1, job().tests().size());
  }

  private static Procedure procedure(Object planned) {
    return ((holdcurve.advice.plan.PlannedTest) planned).procedure();
  }

  @Test
  @SuppressWarnings("unchecked")
  void aRepairIsDoneOnceItIsNotedAndProvedOnceItHolds() throws Exception {
    run(() -> window.desk().jobs().open(Jobs.TWO_HOLDS));
    run(() -> window.desk().page().set("Repair check"));
    assertFalse(done().contains("Repaired"));
    run(() -> ((ComboBox<String>) window.find("#repaired-part")).setValue("damper"));
    run(button("#note-repair")::fire);
    assertTrue(done().contains("Repaired"));
    assertFalse(done().contains("Judged"), "that was about the circuit before");
    press("#hold-again");
    hold("0:00 2.1", "1:00 2.09", "2:00 2.08");
    run(
        () ->
            window
                .desk()
                .jobs()
                .check()
                .found(
                    new HandMadeCheck(CheckVerdict.Kind.HOLDS)
                        .check(job(), Optional.empty(), 1, Progress.NONE),
                    job()));
    assertTrue(done().contains("Proved"));
    assertEquals("holds, proved", OpenJobPath.state(window.desk().jobs()));
    hold("3:00 1.2");
    assertFalse(done().contains("Proved"));
    run(button("#path-described")::fire);
    assertEquals("Circuit", page());
  }
}
