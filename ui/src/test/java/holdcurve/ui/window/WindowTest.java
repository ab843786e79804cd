package holdcurve.ui.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.message.Message;
import holdcurve.common.message.PressureUnit;
import holdcurve.common.work.Progress;
import holdcurve.file.JobReader;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Verdict;
import holdcurve.inference.ranking.Ranker;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.ui.theme.Appearance;
import holdcurve.ui.theme.Theme;
import holdcurve.ui.window.job.OpenJobModel;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.stream.Collectors;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Labeled;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.TabPane;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** The window, driven by its keys on a screen that is not there. */
class WindowTest {
  /** Waits until it is cancelled. */
  private static final class Endless implements Ranker {
    private final CountDownLatch started = new CountDownLatch(1);
    private final CountDownLatch ended = new CountDownLatch(1);

    @Override
    public Ranking rank(Job job, long seed, Progress progress) {
      progress.at(0.3, "Comparing the check valve with the joint");
      started.countDown();
      while (!progress.isCancelled()) {
        Thread.onSpinWait();
      }
      ended.countDown();
      throw new CancellationException();
    }
  }

  /** The circuit and all holds together stand before it. */
  private static final int FIRST_HOLD = 2;

  private final TypingRobot robot = new TypingRobot();
  private final Appearance looks = new Appearance();
  private Ranker ranker = new HandMadeRanking();
  private Path wanted;
  private Stage stage;
  private OpenJobModel model;

  @BeforeEach
  void show() throws Exception {
    FxToolkit.registerPrimaryStage();
    FxToolkit.cleanupStages();
    FxToolkit.setupFixture(
        () -> {
          stage = new Stage();
          model =
              new OpenJobModel(
                  JobReader::read,
                  () -> (job, seed, progress) -> ranker.rank(job, seed, progress),
                  Executors.newSingleThreadExecutor(),
                  Platform::runLater);
          HoldcurveWindow.fill(stage, model, looks, owner -> near -> Optional.ofNullable(wanted));
          stage.show();
        });
  }

  @AfterEach
  void close() throws Exception {
    FxToolkit.setupFixture(
        () -> {
          model.ranking().cancel();
          stage.close();
        });
  }

  private void open(Path job) throws Exception {
    wanted = job;
    robot.push(KeyCode.CONTROL, KeyCode.O);
    settle();
    robot.interact(() -> pictures().getSelectionModel().select(FIRST_HOLD));
    WaitForAsyncUtils.waitForFxEvents();
  }

  private TabPane pictures() {
    return (TabPane) find("#pictures");
  }

  /** The background has one thread, so work given to it last is done last. */
  private void settle() throws Exception {
    for (int i = 0; i < 200 && working(); i++) {
      Thread.sleep(20);
    }
    WaitForAsyncUtils.waitForFxEvents();
  }

  private boolean working() {
    WaitForAsyncUtils.waitForFxEvents();
    boolean answered = !model.problemProperty().get().isEmpty();
    return !answered
        && (model.ranking().resultProperty().get() == null || model.ranking().busyProperty().get());
  }

  private Node find(String selector) {
    return stage.getScene().getRoot().lookup(selector);
  }

  private Set<String> visibleWords() {
    return stage.getScene().getRoot().lookupAll(".label").stream()
        .filter(WindowTest::shows)
        .filter(Labeled.class::isInstance)
        .map(node -> ((Labeled) node).getText())
        .collect(Collectors.toSet());
  }

  private static boolean shows(Node node) {
    for (Node n = node; n != null; n = n.getParent()) {
      if (!n.isVisible()) {
        return false;
      }
    }
    return true;
  }

  @Test
  void anEmptyWindowSaysWhatToDo() {
    assertTrue(find("#empty").isVisible());
    assertTrue(visibleWords().stream().anyMatch(words -> words.contains("Ctrl+O")));
    assertFalse(find("#banner").isVisible());
    assertFalse(shows(find("#pages")));
    assertEquals("Holdcurve", stage.getTitle());
  }

  @Test
  void aJobIsOpenedAndRanked() throws Exception {
    open(Jobs.TWO_HOLDS);
    assertFalse(find("#empty").isVisible());
    assertEquals("Blue estate, falls overnight (invented) – Holdcurve", stage.getTitle());
    Set<String> words = visibleWords();
    assertTrue(words.contains("55 %"), words::toString);
    assertTrue(words.contains("0.41 mL/min (0.31 to 0.53), about 12 drops a minute"));
    assertTrue(words.contains("Not separated by these tests, together 87 %"));
    assertTrue(words.contains("Time since pump stop [min]"));
    assertTrue(words.contains("Pressure [bar]"));
    assertTrue(words.contains("Leak"));
    assertEquals("no clamps", pictures().getTabs().get(FIRST_HOLD).getText());
  }

  @Test
  void theVerdictIsWrittenInTheUnitShown() throws Exception {
    Message lost = Message.of("Of the %s lost, most is stretch.", Message.pressure(0.3e5));
    ranker =
        (job, seed, progress) -> {
          Ranking made = HandMadeRanking.of(job);
          return new Ranking(
              made.job(),
              made.seed(),
              new Verdict(Verdict.Kind.SOUND, lost),
              made.suspects(),
              made.groups(),
              made.testPressure(),
              made.notes());
        };
    open(Jobs.TWO_HOLDS);
    assertTrue(visibleWords().contains("Of the 0.30 bar lost, most is stretch."));
    robot.interact(() -> model.pressures().unitProperty().set(PressureUnit.KPA));
    assertTrue(visibleWords().contains("Of the 30 kPa lost, most is stretch."));
  }

  @Test
  void arrowKeysChooseASuspect() throws Exception {
    open(Jobs.TWO_HOLDS);
    robot.push(KeyCode.DOWN).push(KeyCode.DOWN);
    assertTrue(visibleWords().contains("expected: An injector drips"), visibleWords()::toString);
    assertTrue(visibleWords().contains("An injector drips – on the ring line"));
    robot.push(KeyCode.UP);
    assertTrue(visibleWords().contains("expected: Joint of the feed hose leaks"));
    robot.push(KeyCode.END);
    assertTrue(visibleWords().contains("expected: Regulator seat leaks"));
    robot.push(KeyCode.HOME);
    assertTrue(visibleWords().contains("expected: Check valve leaks back to the tank"));
  }

  @Test
  void theTabsBelowThePlotStayWhereTheyAre() throws Exception {
    open(Jobs.TWO_HOLDS);
    robot.interact(() -> stage.setHeight(720));
    TabPane drawer = (TabPane) find("#drawer");
    WaitForAsyncUtils.waitForFxEvents();
    double top = drawer.localToScene(0, 0).getY();
    for (int i = 0; i < drawer.getTabs().size(); i++) {
      int tab = i;
      robot.interact(() -> drawer.getSelectionModel().select(tab));
      WaitForAsyncUtils.waitForFxEvents();
      assertEquals(top, drawer.localToScene(0, 0).getY(), 0.5, drawer.getTabs().get(i).getId());
    }
  }

  @Test
  void aBarIsNeverFullBesideWorkThatGoesOn() throws Exception {
    CountDownLatch told = new CountDownLatch(1);
    CountDownLatch end = new CountDownLatch(1);
    ranker =
        (job, seed, progress) -> {
          progress.at(1, "Last steps");
          told.countDown();
          try {
            end.await();
          } catch (InterruptedException e) {
            throw new CancellationException();
          }
          return HandMadeRanking.of(job);
        };
    wanted = Jobs.TWO_HOLDS;
    robot.push(KeyCode.CONTROL, KeyCode.O);
    told.await();
    WaitForAsyncUtils.waitForFxEvents();
    ProgressBar bar = (ProgressBar) find("#progress").lookup(".progress-bar");
    assertTrue(visibleWords().contains("Last steps"), visibleWords()::toString);
    assertTrue(bar.isIndeterminate());
    end.countDown();
    settle();
  }

  @Test
  void keysTurnToTheNextTest() throws Exception {
    open(Jobs.TWO_HOLDS);
    robot.push(KeyCode.CONTROL, KeyCode.PAGE_DOWN);
    assertEquals(FIRST_HOLD + 1, pictures().getSelectionModel().getSelectedIndex());
    robot.push(KeyCode.CONTROL, KeyCode.PAGE_DOWN);
    assertEquals(0, pictures().getSelectionModel().getSelectedIndex());
  }

  @Test
  void aBadFileShowsABannerAndTheOldJobStays() throws Exception {
    open(Jobs.TWO_HOLDS);
    open(Jobs.UNKNOWN_ENTRY);
    assertTrue(find("#banner").isVisible());
    assertTrue(visibleWords().contains(model.problemProperty().get()));
    assertTrue(visibleWords().contains("55 %"));
    robot.push(KeyCode.ESCAPE);
    assertFalse(find("#banner").isVisible());
  }

  @Test
  void aRunningScreenCountsAsAvailable() {
    assertEquals(Optional.empty(), WindowLauncher.unavailable());
  }

  @Test
  void aBadFileAtTheStartLeavesAnEmptyWindowWithABanner() throws Exception {
    robot.interact(() -> model.open(Jobs.UNKNOWN_ENTRY));
    settle();
    assertTrue(find("#banner").isVisible());
    assertTrue(find("#empty").isVisible());
    robot.interact(
        () -> SceneImage.write(stage.getScene(), Path.of("target", "snapshots", "empty-bad.png")));
  }

  @Test
  void thinkingBetterOfItChangesNothing() {
    wanted = null;
    robot.push(KeyCode.CONTROL, KeyCode.O);
    assertTrue(find("#empty").isVisible());
    assertFalse(find("#banner").isVisible());
  }

  @Test
  void keysSwitchThemeAndSizeOfText() {
    robot.push(KeyCode.CONTROL, KeyCode.D);
    assertEquals(Theme.DARK, looks.theme());
    assertTrue(stage.getScene().getRoot().getStyleClass().contains("hc-dark"));
    assertFalse(stage.getScene().getRoot().getStyleClass().contains("hc-light"));
    robot.push(KeyCode.CONTROL, KeyCode.D);
    assertEquals(Theme.LIGHT, looks.theme());
    robot.push(KeyCode.CONTROL, KeyCode.EQUALS);
    assertEquals(Appearance.USUAL_SIZE + 2, looks.textSizeProperty().get());
    robot.push(KeyCode.CONTROL, KeyCode.MINUS).push(KeyCode.CONTROL, KeyCode.MINUS);
    assertEquals(Appearance.USUAL_SIZE - 2, looks.textSizeProperty().get());
    robot.push(KeyCode.CONTROL, KeyCode.DIGIT0);
    assertEquals(Appearance.USUAL_SIZE, looks.textSizeProperty().get());
  }

  @Test
  void aRankingCanBeStoppedAndTheWindowAnswersMeanwhile() throws Exception {
    Endless endless = new Endless();
    ranker = endless;
    wanted = Jobs.TWO_HOLDS;
    robot.push(KeyCode.CONTROL, KeyCode.O);
    endless.started.await();
    WaitForAsyncUtils.waitForFxEvents();
    assertTrue(find("#progress").isVisible());
    assertTrue(visibleWords().contains("Comparing the check valve with the joint"));
    robot.push(KeyCode.CONTROL, KeyCode.D);
    assertEquals(Theme.DARK, looks.theme());
    robot.interact(
        () ->
            SceneImage.write(
                stage.getScene(), Path.of("target", "snapshots", "progress-dark.png")));
    robot.push(KeyCode.ESCAPE);
    endless.ended.await();
    WaitForAsyncUtils.waitForFxEvents();
    assertFalse(find("#progress").isVisible());
    assertNull(model.ranking().resultProperty().get());
    assertNotNull(model.jobProperty().get());
    ranker = new HandMadeRanking();
    robot.push(KeyCode.F5);
    settle();
    assertNotNull(model.ranking().resultProperty().get());
  }

  @Test
  void undoReachesTheReadingsFromWithinTheFieldAndRankingTurnsToTheSuspects() throws Exception {
    open(Jobs.TWO_HOLDS);
    robot.push(KeyCode.CONTROL, KeyCode.DIGIT2);
    robot.push(KeyCode.CONTROL, KeyCode.T);
    robot.push(KeyCode.SPACE);
    for (String reading : List.of("2.12", "1:00 1.9")) {
      robot.write(reading).type(KeyCode.ENTER);
    }
    assertEquals(2, readingsOfTheLastHold());
    robot.push(KeyCode.CONTROL, KeyCode.Z);
    assertEquals(1, readingsOfTheLastHold());
    robot.push(KeyCode.CONTROL, KeyCode.SHIFT, KeyCode.Z);
    assertEquals(2, readingsOfTheLastHold());
    robot.write("9").push(KeyCode.CONTROL, KeyCode.Z);
    assertEquals(2, readingsOfTheLastHold(), "what is being typed is undone first");
    robot.push(KeyCode.F5);
    settle();
    assertNotNull(find("#drawer"), "the page of the suspects");
  }

  private int readingsOfTheLastHold() {
    WaitForAsyncUtils.waitForFxEvents();
    List<HoldTest> tests = model.jobProperty().get().tests();
    return tests.get(tests.size() - 1).log().readings().size();
  }
}
