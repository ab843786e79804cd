package holdcurve.ui.window.practice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.input.InputException;
import holdcurve.common.message.PressureUnit;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.ExerciseReader;
import holdcurve.file.JobReader;
import holdcurve.training.EvidenceAssessor;
import holdcurve.training.Exercise;
import holdcurve.training.RepairChoice;
import holdcurve.training.TrainingCar;
import holdcurve.ui.theme.Appearance;
import holdcurve.ui.theme.Theme;
import holdcurve.ui.window.SceneImage;
import holdcurve.ui.window.TypingRobot;
import holdcurve.ui.window.frame.Desk;
import holdcurve.ui.window.frame.FileDialogs;
import holdcurve.ui.window.frame.FileKind;
import holdcurve.ui.window.job.OpenJobModel;
import holdcurve.ui.window.job.PracticeLog;
import holdcurve.ui.window.job.PressureFormat;
import holdcurve.ui.window.job.QuestionModel;
import holdcurve.ui.window.plot.Dial;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.Slider;
import javafx.scene.control.TabPane;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import javafx.stage.StageStyle;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** A learner at a car, from its choice to the debrief, on a screen that is not there. */
class PracticePageTest {
  private static final Path EXERCISE =
      Path.of(
          System.getProperty("holdcurve.root", ".."),
          "scenarios/exercises/long-cranking.exercise.json");
  private static final String TRUTH = "check-valve-seat@check-valve";
  private static final String OTHER = "regulator-seat@regulator";

  private static final Path FOLDER = Path.of("target", "snapshots");

  @TempDir Path folder;

  private final Appearance looks = new Appearance();
  private PracticeModel model;
  private PracticeLog log;
  private QuestionModel questions;
  private PressureFormat pressures;
  private Stage stage;
  private boolean broken;

  @BeforeEach
  void openPage() throws Exception {
    FxToolkit.registerPrimaryStage();
    FxToolkit.cleanupStages();
    OpenJobModel jobs =
        new OpenJobModel(
            JobReader::read,
            () -> {
              throw new IllegalStateException("no job is ranked here");
            },
            Runnable::run,
            Runnable::run);
    Desk desk = Desk.alone(jobs, looks, new Asked());
    log = desk.practice();
    questions = jobs.questions();
    pressures = jobs.pressures();
    model = new PracticeModel(desk, FaultCatalogue::load, this::evidence);
    ExerciseDraft draft = new ExerciseDraft(jobs.work(), FaultCatalogue::load, new Random(3));
    run(
        () -> {
          stage = new Stage(StageStyle.UNDECORATED);
          PracticePage page = new PracticePage(model, draft, new Asked(), jobs.pressures());
          Scene scene = new Scene(new StackPane(page.content()), 1280, 720);
          looks.dress(scene);
          stage.setScene(scene);
          stage.show();
        });
  }

  /** Answers with the test's own folder. */
  private final class Asked implements FileDialogs {
    @Override
    public Optional<Path> chooseJob(Path near) {
      return Optional.empty();
    }

    @Override
    public Optional<Path> chooseExerciseFolder() {
      return Optional.of(folder);
    }

    @Override
    public Optional<Path> choose(FileKind kind, Path near) {
      return Optional.of(folder.resolve("other-class.csv"));
    }

    @Override
    public Optional<Path> save(FileKind kind, Path near, String name) {
      return Optional.of(folder.resolve(name));
    }
  }

  private EvidenceAssessor evidence(FaultCatalogue catalogue) {
    if (broken) {
      throw InputException.at("test", "evidence", "it is broken", "mend it");
    }
    return new KnowingEvidence(TRUTH, OTHER);
  }

  @AfterEach
  void closePage() throws Exception {
    run(stage::close);
  }

  private static void run(Runnable work) throws Exception {
    FxToolkit.setupFixture(work::run);
    WaitForAsyncUtils.waitForFxEvents();
  }

  private void press(String id) throws Exception {
    ButtonBase button = (ButtonBase) stage.getScene().lookup("#" + id);
    assertFalse(button.isDisabled(), id + " can be pressed");
    run(button::fire);
  }

  private void sureOf(String answer, int percent) throws Exception {
    Slider slider =
        (Slider)
            stage.getScene().getRoot().lookupAll(".slider").stream()
                .filter(node -> ("sure-" + answer).equals(node.getId()))
                .findFirst()
                .orElseThrow();
    run(() -> slider.setValue(percent));
  }

  private String shown() {
    return stage.getScene().getRoot().lookupAll(".label").stream()
        .filter(Node::isVisible)
        .map(node -> ((Labeled) node).getText())
        .collect(Collectors.joining("\n"));
  }

  private void type(String reading) throws Exception {
    run(() -> ((TextField) find("practice-reading")).setText(reading));
    press("practice-note");
  }

  private void pass(double seconds) throws Exception {
    run(() -> model.advance(seconds));
  }

  @Test
  void fromTheChoiceOfACarToTheDebrief() throws Exception {
    pictures("practice-choice");
    run(() -> model.open(EXERCISE));
    press("lapse-1");
    press("step-hold");
    assertNotNull(model.watch().get(), "the needle is watched");
    assertTrue(((Button) stage.getScene().lookup("#step-hold")).isDisabled(), "one at a time");
    type("2,02");
    pass(240);
    type("1.10");
    for (Theme theme : Theme.values()) {
      run(() -> looks.themeProperty().set(theme));
      Path file = FOLDER.resolve("practice-watching-" + theme.styleClass() + ".png");
      run(() -> SceneImage.write(stage.getScene(), file));
    }
    press("practice-skip");
    assertTrue(shown().contains("10:00 of 10 min"), shown());
    type("0.4");
    press("practice-done");
    assertNull(model.watch().get());
    assertEquals(1, model.entries().size());
    assertTrue(shown().contains("  2.02 bar"), shown());
    assertTrue(Pattern.compile("\\n4:\\d\\d  1.10 bar").matcher(shown()).find(), shown());
    assertTrue(shown().contains("10:00  0.40 bar"), shown());
    sureOf(TRUTH, 40);
    sureOf(OTHER, 70);
    assertTrue(shown().contains("110 % in all: take some back"), shown());
    assertTrue(((Button) stage.getScene().lookup("#practice-answer")).isDisabled());
    sureOf(OTHER, 50);
    press("step-look-at-joints");
    assertEquals("Prime, wipe the joints and look for wet ones", model.entries().get(0).step());
    assertFalse(shown().contains("It was"), "nothing is given away");
    pictures("practice-working");
    press("practice-answer");
    assertNull(model.debrief().get(), "the repair is asked for first");
    assertFalse(shown().contains("It was"), "nothing is given away");
    assertTrue(((Button) stage.getScene().lookup("#practice-repair-done")).isDisabled());
    pictures("practice-repair");
    tick(TRUTH);
    tick(OTHER);
    press("practice-repair-done");
    assertFalse(model.debrief().get().isRight());
    assertTrue(shown().matches("(?s)Score: \\d+ of 100. Wrong part\\..*"), shown());
    assertTrue(shown().contains("It was: Check valve leaks back to the tank"), shown());
    assertTrue(shown().contains("2.02 bar, "), "as typed: " + shown());
    assertTrue(shown().contains("You misread the dial: at 4:"), shown());
    assertTrue(shown().contains("10 of 20"), "half of the repair: " + shown());
    pictures("practice-debrief");
    run(() -> pressures.unitProperty().set(PressureUnit.PSI));
    assertTrue(shown().contains(" min later 5.8 psi"), shown());
    run(() -> ((TextField) find("score-mark")).setText("bench 3"));
    press("save-score");
    assertTrue(shown().contains("Added to scores.csv."), shown());
    List<String> lines = Files.readAllLines(folder.resolve("scores.csv"));
    assertEquals(2, lines.size());
    assertTrue(lines.get(1).startsWith("bench 3,"), lines.get(1));
    assertTrue(lines.get(1).endsWith(",no"), lines.get(1));
    assertEquals("bench 3", log.all().get(0).mark());
    press("practice-again");
    assertNotNull(stage.getScene().lookup("#practice-choice"));
    assertTrue(shown().contains("Best: " + log.all().get(0).score()), "progress: " + shown());
    pictures("practice-progress");
  }

  /** One position feeds both: the needle stands where the curve ends, whatever the speed. */
  @Test
  void dialAndCurveMoveTogether() throws Exception {
    run(() -> model.open(EXERCISE));
    press("step-hold");
    run(() -> model.advance(0));
    Dial dial = (Dial) stage.getScene().lookup(".hc-dial");
    for (int speed : PracticeModel.SPEEDS) {
      press("lapse-" + speed);
      double before = model.elapsed().get();
      pass(1);
      assertEquals(before + speed, model.elapsed().get(), 2.0 * speed, "frames go on too");
      run(
          () -> {
            model.advance(0.1);
            assertEquals(model.watch().get().at(model.elapsed().get()), dial.shown().get(), 1e-9);
          });
    }
  }

  @Test
  void timeWaitsWhileAReadingIsTypedAndStampsItsBeginning() throws Exception {
    run(() -> model.open(EXERCISE));
    press("step-hold");
    press("lapse-60");
    run(
        () -> {
          model.advance(1);
          ((TextField) find("practice-reading")).setText("1.9");
          double at = model.elapsed().get();
          model.advance(5);
          assertEquals(at, model.elapsed().get());
          assertTrue(model.note("1.9"));
          assertEquals(Math.rint(at), model.noted().get(0).time());
        });
    run(
        () -> {
          assertFalse(model.note("ninety"));
          assertTrue(model.told().get().startsWith("'ninety' is no number"));
          assertFalse(model.note("9.9"));
          assertTrue(model.told().get().contains("beyond the end of this gauge"));
        });
    assertTrue(((Button) find("practice-done")).isDisabled(), "one reading is too few");
    press("practice-take-back");
    assertTrue(model.noted().isEmpty());
  }

  @Test
  void anAnswerOfAllZerosIsAskedAbout() throws Exception {
    run(() -> model.open(EXERCISE));
    press("practice-answer");
    assertNull(model.repairs().get());
    QuestionModel.Question asked = questions.askedProperty().get();
    assertTrue(asked.sentence().startsWith("You gave no odds"), asked.sentence());
    run(() -> questions.answer(asked.answers().get(0)));
    assertNotNull(model.repairs().get());
  }

  @Test
  void theCourseIsListedInOrderWithLevelAndStory() throws Exception {
    assertEquals(14, model.lessons().size());
    assertTrue(shown().contains("Level 5"), shown());
    assertTrue(shown().contains(model.lessons().get(0).story()), shown());
    press("course-" + model.lessons().get(0).name());
    assertNotNull(model.session().get());
  }

  @Test
  void aClassIsCollectedInOneTable() throws Exception {
    Files.writeString(
        folder.resolve("other-class.csv"),
        "mark,exercise,level,score,odds,tests,repair,minutes_used,right\r\n"
            + "bench 1,Car a-2,2,61,30,16,15,42,yes\r\nbench 2,Car a-2,2,48\r\n");
    run(() -> ((TabPane) find("practice-tabs")).getSelectionModel().select(2));
    press("results-add");
    assertEquals(2, log.all().size());
    press("results-add");
    assertEquals(2, log.all().size(), "the same lines again change nothing");
    pictures("practice-results");
    press("results-save");
    List<String> lines = Files.readAllLines(folder.resolve("class-results.csv"));
    assertTrue(lines.get(1).startsWith("bench 1,Car a-2,2,61"), lines.get(1));
  }

  @Test
  void afterAHoldTheKeyboardIsBackWithTheStepThatWasTaken() throws Exception {
    run(() -> model.open(EXERCISE));
    run(() -> find("step-hold").requestFocus());
    new TypingRobot().push(KeyCode.SPACE);
    WaitForAsyncUtils.waitForFxEvents();
    assertNotNull(model.watch().get());
    assertEquals("practice-reading", stage.getScene().getFocusOwner().getId());
    press("practice-skip");
    press("practice-read-for-me");
    assertEquals("step-hold", stage.getScene().getFocusOwner().getId());
  }

  @Test
  void aDebriefThatBreaksOffLeavesThePageInUse() throws Exception {
    broken = true;
    run(() -> model.open(EXERCISE));
    sureOf(TRUTH, 30);
    press("practice-answer");
    assertNull(model.debrief().get());
    assertFalse(model.busy().get());
    assertNull(model.repairs().get(), "back at the car");
    broken = false;
    press("practice-answer");
    tick(TRUTH);
    press("practice-repair-done");
    assertNotNull(model.debrief().get());
  }

  private void tick(String answer) throws Exception {
    List<RepairChoice.Option> options = model.repairs().get().options();
    for (int i = 0; i < options.size(); i++) {
      if (options.get(i).cures().contains(answer)) {
        press("repair-" + (i + 1));
      }
    }
  }

  @Test
  void madeUpCarsNeedNoFile() throws Exception {
    press("practice-begin");
    assertNotNull(model.session().get());
    assertTrue(shown().contains("level 2 of 5"), shown());
  }

  /** No word on the page names what is wrong, beyond the list of all that can be. */
  @Test
  void theHiddenFaultShowsNowhereBeforehand() throws Exception {
    run(() -> model.open(EXERCISE));
    press("step-hold");
    press("practice-read-for-me");
    String name = "Check valve leaks back to the tank";
    assertEquals(1, shown().split(name, -1).length - 1, "once, in the list of answers");
    assertFalse(stage.getScene().getRoot().toString().contains("secret"));
  }

  @Test
  void instructorWritesASealedExerciseAndAClassSet() throws Exception {
    run(() -> ((TabPane) find("practice-tabs")).getSelectionModel().select(3));
    press("instructor-save");
    assertTrue(((Label) find("instructor-told")).getText().startsWith("Give it a title"));
    run(
        () -> {
          ((TextField) find("instructor-title")).setText("Evening car");
          ((TextArea) find("instructor-story")).setText("It will not start in the evening.");
          ((ComboBox<?>) find("instructor-fault-1")).getSelectionModel().select(1);
          ((TextField) find("instructor-size-1")).setText("0,6");
        });
    run(() -> ((TextField) find("instructor-size-1")).setText("60000"));
    press("instructor-save");
    String told = ((Label) find("instructor-told")).getText();
    assertTrue(told.startsWith("A size of 60000 is beyond anything met with: give "), told);
    assertTrue(told.endsWith(" mL/min."), told);
    run(() -> ((TextField) find("instructor-size-1")).setText("0,6"));
    pictures("practice-instructor");
    press("instructor-save");
    Exercise written = ExerciseReader.read(folder.resolve("evening-car.exercise.json"));
    assertEquals(TRUTH, new TrainingCar(written, FaultCatalogue.load()).truth());
    assertEquals(1e-8, written.secret().faults().get(0).size(), 1e-12);
    press("instructor-save-set");
    assertTrue(((Label) find("instructor-told")).getText().startsWith("12 exercises written"));
  }

  private Node find(String id) {
    return stage.getScene().lookup("#" + id);
  }

  /** The needle moves by small steps and settles where pressure sends it, without swinging past. */
  @Test
  void needleSettlesWithoutRinging() throws Exception {
    Dial[] dial = new Dial[1];
    run(
        () -> {
          dial[0] = new Dial(PressureUnit.BAR, 4e5, "1.6", 1.6e5, 2.1e5);
          dial[0].pressure().set(2e5);
          double before = 0;
          for (int frame = 0; frame < 120; frame++) {
            dial[0].swing(1 / 60.0);
            double now = dial[0].shown().get();
            assertTrue(now >= before && now <= 2e5, "frame " + frame + ": " + now);
            before = now;
          }
        });
    assertEquals(2e5, dial[0].shown().get(), 1);
  }

  /** Taking a picture of a new size while something moves trips the test's painter. */
  private void needleStands() throws Exception {
    Dial dial = (Dial) stage.getScene().lookup(".hc-dial");
    while (dial != null && dial.shown().get() != dial.pressure().get()) {
      Thread.sleep(50);
    }
    WaitForAsyncUtils.waitForFxEvents();
  }

  private void pictures(String name) throws Exception {
    needleStands();
    for (Theme theme : Theme.values()) {
      run(() -> looks.themeProperty().set(theme));
      picture(name + "-" + theme.styleClass(), 1920, 1080);
      picture(name + "-" + theme.styleClass(), 1280, 720);
    }
  }

  private void picture(String name, int width, int height) throws Exception {
    run(
        () -> {
          stage.setWidth(width);
          stage.setHeight(height);
        });
    Label any = (Label) stage.getScene().lookup(".label");
    assertNotNull(any);
    Path file = FOLDER.resolve(name + "-" + width + "x" + height + ".png");
    run(() -> SceneImage.write(stage.getScene(), file));
  }
}
