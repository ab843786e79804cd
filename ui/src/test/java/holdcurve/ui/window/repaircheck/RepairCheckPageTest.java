package holdcurve.ui.window.repaircheck;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.advice.check.CheckVerdict.Kind;
import holdcurve.advice.check.RepairCheck;
import holdcurve.file.JobReader;
import holdcurve.record.job.Repair;
import holdcurve.record.log.Reading;
import holdcurve.record.refit.RefitTick;
import holdcurve.ui.HandMadeCheck;
import holdcurve.ui.theme.Appearance;
import holdcurve.ui.theme.Theme;
import holdcurve.ui.window.HandMadeRanking;
import holdcurve.ui.window.SceneImage;
import holdcurve.ui.window.job.OpenJobModel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.BorderPane;
import javafx.stage.Stage;
import javafx.stage.StageStyle;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** The page on a screen that is not there, with invented answers. */
class RepairCheckPageTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");
  private static final Path PICTURES = Path.of("target", "snapshots");
  private static final LocalDate DAY = LocalDate.of(2026, 4, 12);

  @TempDir private Path folder;
  private final Appearance looks = new Appearance();
  private Kind kind = Kind.HOLDS;
  private OpenJobModel jobs;
  private RepairCheckModel model;
  private Stage stage;
  private boolean turned;
  private Path opened;

  @BeforeEach
  void show() throws Exception {
    copyScenarios();
    FxToolkit.registerPrimaryStage();
    FxToolkit.cleanupStages();
    FxToolkit.setupFixture(
        () -> {
          jobs =
              new OpenJobModel(JobReader::read, HandMadeRanking::new, Runnable::run, Runnable::run);
          model =
              new RepairCheckModel(
                  jobs, () -> new HandMadeCheck(kind), () -> DAY, (c, s) -> Set.of());
          stage = new Stage(StageStyle.UNDECORATED);
          Scene scene = new Scene(new BorderPane(page().content()), 1280, 680);
          looks.dress(scene);
          stage.setScene(scene);
          stage.show();
          jobs.open(folder.resolve("repaired-check-valve.job.json"));
        });
    WaitForAsyncUtils.waitForFxEvents();
  }

  private RepairCheckPage page() {
    return new RepairCheckPage(model, () -> turned = true, file -> opened = file);
  }

  private void copyScenarios() throws IOException {
    try (Stream<Path> files = Files.walk(SCENARIOS)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        Path copy = folder.resolve(SCENARIOS.relativize(file).toString());
        Files.createDirectories(copy.getParent());
        Files.copy(file, copy);
      }
    }
  }

  @AfterEach
  void close() throws Exception {
    run(stage::close);
  }

  private static void run(Runnable work) throws Exception {
    FxToolkit.setupFixture(work::run);
    WaitForAsyncUtils.waitForFxEvents();
  }

  private Node find(String selector) {
    return stage.getScene().getRoot().lookup(selector);
  }

  private void press(String button) throws Exception {
    run(() -> ((Button) find(button)).fire());
  }

  private void picture(String name) throws Exception {
    run(
        () ->
            SceneImage.write(stage.getScene(), PICTURES.resolve("repair-check-" + name + ".png")));
  }

  @Test
  void theAnswerShowsOverTheHistory() throws Exception {
    picture("unchecked");
    press("#check");
    assertTrue(find("#check-verdict").getStyleClass().contains("sound"));
    assertTrue(((Label) find("#pass")).getText().contains("1.70 bar after 5 min"));
    picture("holds-light");
    kind = Kind.FAULTY;
    run(looks::switchTheme);
    assertEquals(Theme.DARK, looks.theme());
    press("#check");
    assertTrue(find("#check-verdict").getStyleClass().contains("leak"));
    picture("faulty-dark");
    run(looks::switchTheme);
    kind = Kind.CANNOT_SAY;
    press("#check");
    run(looks::enlarge);
    run(looks::enlarge);
    picture("cannot-say-larger");
  }

  @Test
  void picturesInEveryLook() throws Exception {
    press("#check");
    for (Theme theme : Theme.values()) {
      run(() -> looks.themeProperty().set(theme));
      for (int height : new int[] {720, 1080}) {
        int width = height * 16 / 9;
        String name = "repair-check-" + theme.styleClass() + "-" + width + "x" + height + ".png";
        SceneImage.write(stage, PICTURES.resolve(name), width, height);
      }
    }
  }

  @Test
  void aTickNeedsInitialsAndCanBeTakenBack() throws Exception {
    String step = "#step-workplace";
    run(() -> ((CheckBox) find(step)).fire());
    assertFalse(((CheckBox) find(step)).isSelected());
    assertTrue(model.steps().get(0).tick().isEmpty());
    run(() -> ((TextField) find("#initials")).setText("AB"));
    run(() -> ((CheckBox) find(step)).fire());
    assertEquals(new RefitTick(DAY, "AB"), model.steps().get(0).tick().orElseThrow());
    assertTrue(((CheckBox) find(step)).isSelected());
    run(jobs::undo);
    assertTrue(model.steps().get(0).tick().isEmpty());
    assertFalse(((CheckBox) find(step)).isSelected());
  }

  @Test
  @SuppressWarnings("unchecked")
  void aRepairIsNotedAfterTheLastHoldAndAsksForAnotherCheck() throws Exception {
    press("#check");
    assertNotNull(model.checkProperty().get());
    run(() -> ((ComboBox<String>) find("#repaired-part")).setValue("damper"));
    run(() -> ((TextField) find("#repair-note")).setText("renewed"));
    press("#note-repair");
    List<Repair> repairs = jobs.jobProperty().get().upkeep().repairs();
    assertEquals(new Repair(DAY, "damper", "", "after the repair", "renewed"), repairs.get(1));
    assertTrue(timeline().contains("Repaired 2026-04-12: damper, renewed"), timeline()::toString);
    picture("noted");
    RepairCheck before = model.checkProperty().get();
    press("#check");
    assertSame(before, model.checkProperty().get(), "the holds before it say nothing about it");
    assertEquals(
        "Nothing was held since the repair of 2026-04-12. Hold again, then check.",
        jobs.problemProperty().get());
    press("#hold-again");
    assertTrue(turned);
    assertEquals("after the repair 2", jobs.holdProperty().get());
    for (int i = 0; i < 3; i++) {
      double time = 60.0 * i;
      run(() -> jobs.addReading("after the repair 2", Reading.of(time, 2e5)));
    }
    assertTrue(find(".hc-outdated-strip").isVisible());
    press("#check");
    assertFalse(find(".hc-outdated-strip").isVisible());
    assertNotSame(before, model.checkProperty().get());
    run(() -> ((Button) find(".hc-timeline-repair .button")).fire());
    assertEquals(1, jobs.jobProperty().get().upkeep().repairs().size());
    assertTrue(find(".hc-outdated-strip").isVisible());
  }

  private List<String> timeline() {
    return find("#timeline").lookupAll(".label").stream()
        .map(node -> ((Label) node).getText())
        .toList();
  }

  @Test
  void theReportIsWrittenBesideTheJob() throws Exception {
    press("#report");
    assertTrue(Files.size(folder.resolve("repaired-check-valve.report.html")) > 10_000);
    assertTrue(Files.size(folder.resolve("repaired-check-valve.report.pdf")) > 10_000);
    Path page = folder.resolve("repaired-check-valve.report.html");
    Label said = (Label) find("#report-said");
    assertTrue(said.getText().contains(page.toString()), said::getText);
    assertTrue(said.isWrapText());
    press("#open-report");
    assertEquals(page, opened);
  }
}
