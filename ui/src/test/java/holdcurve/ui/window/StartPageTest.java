package holdcurve.ui.window;

import static holdcurve.ui.window.ShownWindow.run;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.file.JobWriter;
import holdcurve.ui.scenario.Scenarios;
import holdcurve.ui.theme.Theme;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.util.WaitForAsyncUtils;

/** Where jobs are begun and gone on with. */
class StartPageTest {
  @TempDir Path folder;

  private ShownWindow window;

  @BeforeEach
  void open() throws Exception {
    show();
  }

  private void show() throws Exception {
    window = ShownWindow.of(HandMadeRanking::new);
    run(() -> new Settings(folder.resolve("window.properties"), Runnable::run).attach(desk()));
    run(() -> desk().jobs().examplesAre(Scenarios::isShipped));
  }

  private holdcurve.ui.window.frame.Desk desk() {
    return window.desk();
  }

  @AfterEach
  void close() throws Exception {
    run(window.stage()::close);
  }

  private List<String> recent() {
    WaitForAsyncUtils.waitForFxEvents();
    return window.find("#recent-jobs").lookupAll(".label").stream()
        .map(node -> ((Label) node).getText())
        .toList();
  }

  @Test
  void jobsOfLastTimeAreListedWithCarDateAndState() throws Exception {
    assertEquals(List.of("None was open yet."), recent());
    Path car = folder.resolve("car.job.json");
    Path gone = folder.resolve("gone.job.json");
    JobWriter.write(car, Jobs.twoHolds());
    JobWriter.write(gone, Jobs.twoHolds());
    run(() -> desk().jobs().open(gone));
    run(() -> desk().jobs().open(car));
    Files.delete(gone);
    run(window.stage()::close);
    show();
    assertNull(desk().jobs().jobProperty().get(), "no job by itself");
    assertEquals("Blue estate, falls overnight (invented)", recent().get(0));
    assertEquals("2026-03-14, leaking", recent().get(1));
    assertEquals(2, recent().size(), "one that is gone can't be opened");
    for (Theme theme : Theme.values()) {
      run(() -> desk().looks().themeProperty().set(theme));
      window.picture("start-" + theme.styleClass(), 1280, 720);
      window.picture("start-" + theme.styleClass(), 1920, 1080);
    }
    run(((Button) window.find("#recent-jobs .hc-template"))::fire);
    assertEquals(car, desk().jobs().fileProperty().get());
    assertFalse(window.find("#empty").isVisible());
  }

  @Test
  void theExampleOpensOnItsAnswerAndIsMarked() throws Exception {
    run(((Button) window.find("#open-example"))::fire);
    assertEquals("Suspects", desk().page().get());
    assertTrue(window.find("#verdict").isVisible());
    assertTrue(window.find("#example").isVisible());
    assertNull(desk().jobs().fileProperty().get());
    assertEquals(List.of(), List.copyOf(desk().jobs().recent().all()));
  }

  @Test
  void aNewcomerIsShownRoundInThreeStepsThatCanBeSkipped() throws Exception {
    run(((Button) window.find("#open-example"))::fire);
    Label words = (Label) window.find("#example .label");
    String before = words.getText();
    for (String page : List.of("Hold tests", "Suspects", "Suspects")) {
      run(((Button) window.find("#example-next"))::fire);
      assertEquals(page, desk().page().get());
      assertTrue(words.getText().contains(" of 3: "), words.getText());
      window.picture("first-steps-" + words.getText().charAt(0), 1280, 720);
    }
    run(((Button) window.find("#example-next"))::fire);
    assertEquals(before, words.getText());
    assertNull(window.find("#example-skip"));
    show();
    run(((Button) window.find("#open-example"))::fire);
    run(((Button) window.find("#example-skip"))::fire);
    assertNull(window.find("#example-next"));
  }
}
