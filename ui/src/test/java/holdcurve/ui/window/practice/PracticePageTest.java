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
import holdcurve.inference.ranking.Ranker;
import holdcurve.training.Exercise;
import holdcurve.training.RepairChoice;
import holdcurve.training.TrainingCar;
import holdcurve.ui.theme.Appearance;
import holdcurve.ui.theme.Theme;
import holdcurve.ui.window.SceneImage;
import holdcurve.ui.window.TypingRobot;
import holdcurve.ui.window.frame.FileDialogs;
import holdcurve.ui.window.frame.FileKind;
import holdcurve.ui.window.job.OpenJobModel;
import holdcurve.ui.window.plot.Dial;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.Slider;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.TitledPane;
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
    model = new PracticeModel(jobs.work(), FaultCatalogue::load, this::ranker);
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
    public Optional<Path> save(FileKind kind, Path near, String name) {
      return Optional.of(folder.resolve(name));
    }
  }

  private Ranker ranker(FaultCatalogue catalogue) {
    if (broken) {
      throw InputException.at("test", "ranker", "it is broken", "mend it");
    }
    return new KnowingRanker(TRUTH, OTHER);
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

  @Test
  void fromTheChoiceOfACarToTheDebrief() throws Exception {
    pictures("practice-choice");
    run(() -> model.open(EXERCISE));
    press("lapse-1");
    press("step-hold");
    assertNotNull(model.watch().get(), "the needle is watched");
    assertTrue(((Button) stage.getScene().lookup("#step-hold")).isDisabled(), "one at a time");
    run(() -> SceneImage.write(stage.getScene(), FOLDER.resolve("practice-watching.png")));
    press("practice-skip");
    assertNull(model.watch().get());
    assertEquals(1, model.entries().size());
    sureOf(TRUTH, 40);
    sureOf(OTHER, 70);
    assertTrue(shown().contains("110 % in all: take some back"), shown());
    assertTrue(((Button) stage.getScene().lookup("#practice-answer")).isDisabled());
    sureOf(OTHER, 50);
    press("step-look-at-joints");
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
    assertTrue(shown().contains("Repair: 5 of 10 points."), shown());
    assertTrue(shown().contains("It was: Check valve leaks back to the tank"), shown());
    assertTrue(shown().contains("Score:"));
    pictures("practice-debrief");
    run(() -> ((TextField) find("score-mark")).setText("bench 3"));
    press("save-score");
    assertTrue(shown().contains("Added to scores.csv."), shown());
    List<String> lines = Files.readAllLines(folder.resolve("scores.csv"));
    assertEquals(2, lines.size());
    assertTrue(lines.get(1).startsWith("bench 3,"), lines.get(1));
    assertTrue(lines.get(1).endsWith(",no,5"), lines.get(1));
    press("practice-again");
    assertNotNull(stage.getScene().lookup("#practice-choice"));
  }

  @Test
  void afterAHoldTheKeyboardIsBackWithTheStepThatWasTaken() throws Exception {
    run(() -> model.open(EXERCISE));
    run(() -> find("step-hold").requestFocus());
    new TypingRobot().push(KeyCode.SPACE);
    WaitForAsyncUtils.waitForFxEvents();
    assertNotNull(model.watch().get());
    press("practice-skip");
    assertEquals("step-hold", stage.getScene().getFocusOwner().getId());
  }

  @Test
  void aDebriefThatBreaksOffLeavesThePageInUse() throws Exception {
    broken = true;
    run(() -> model.open(EXERCISE));
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
    press("practice-skip");
    String name = "Check valve leaks back to the tank";
    assertEquals(1, shown().split(name, -1).length - 1, "once, in the list of answers");
    assertFalse(stage.getScene().getRoot().toString().contains("secret"));
  }

  @Test
  void instructorWritesASealedExerciseAndAClassSet() throws Exception {
    run(() -> ((TitledPane) find("practice-instructor")).setExpanded(true));
    press("instructor-save");
    assertTrue(((Label) find("instructor-told")).getText().startsWith("Give it a title"));
    run(
        () -> {
          ((TextField) find("instructor-title")).setText("Evening car");
          ((TextArea) find("instructor-story")).setText("It will not start in the evening.");
          ((ComboBox<?>) find("instructor-fault-1")).getSelectionModel().select(1);
          ((TextField) find("instructor-size-1")).setText("0,6");
        });
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
