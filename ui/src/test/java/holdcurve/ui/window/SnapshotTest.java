package holdcurve.ui.window;

import static holdcurve.ui.window.ShownWindow.run;

import holdcurve.inference.answer.Verdict;
import holdcurve.inference.ranking.Ranker;
import holdcurve.ui.theme.Appearance;
import holdcurve.ui.theme.Theme;
import holdcurve.ui.window.frame.Desk;
import holdcurve.ui.window.job.CircuitTemplates;
import holdcurve.ui.window.job.JobEdits;
import holdcurve.ui.window.job.OpenJobModel;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TabPane;
import javafx.scene.input.Clipboard;
import javafx.scene.input.DataFormat;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Pictures of the window in every look, for a person to judge. */
class SnapshotTest {
  private static final Path SCENARIOS = Path.of("..", "scenarios");
  private static final String TABLE =
      "Zeit [mm:ss];Druck [kPa]\n0:00;212\n0:30;198,5\n1:00;194\n2:00;190\n4:00;184\n";

  private final TypingRobot robot = new TypingRobot();
  private ShownWindow shown;
  private Appearance looks;
  private OpenJobModel model;
  private Ranker ranker = new HandMadeRanking();
  private Desk desk;

  @BeforeEach
  void openWindow() throws Exception {
    shown = ShownWindow.of(() -> ranker);
    desk = shown.desk();
    model = desk.jobs();
    looks = desk.looks();
  }

  @Test
  void everySizeInEveryTheme() throws Exception {
    run(() -> model.open(Jobs.TWO_HOLDS));
    for (Theme theme : Theme.values()) {
      run(() -> looks.themeProperty().set(theme));
      shown.picture("suspects-" + theme.styleClass(), 1280, 720);
      shown.picture("suspects-" + theme.styleClass(), 1920, 1080);
    }
  }

  @Test
  void holdTestsInEveryThemeAndState() throws Exception {
    run(() -> model.open(SCENARIOS.resolve("rail-loss.job.json")));
    everyLook("Hold tests", "hold-tests");
    run(() -> model.begin(JobEdits.blank("New job", model.jobProperty().get().circuit()), null));
    shown.picture("hold-tests-new", 1280, 720);
    robot.type(KeyCode.SPACE);
    type("2.12");
    for (String reading : List.of("0:30 1.98", "1:00 1.94", "1:30 1.92", "2:00 1.9?")) {
      type(reading);
    }
    shown.picture("hold-tests-reading", 1280, 720);
    run(() -> Clipboard.getSystemClipboard().setContent(Map.of(DataFormat.PLAIN_TEXT, TABLE)));
    robot.push(KeyCode.CONTROL, KeyCode.V);
    shown.picture("hold-tests-import", 1280, 720);
    robot.push(KeyCode.ESCAPE);
    run(looks::enlarge);
    run(looks::enlarge);
    shown.picture("hold-tests-larger-text", 1920, 1080);
    shown.picture("hold-tests-larger-text", 1280, 720);
    ComboBox<?> kind = (ComboBox<?>) shown.find("#finding-kind");
    for (int i = 0; i < kind.getItems().size(); i++) {
      int chosen = i;
      run(() -> kind.getSelectionModel().select(chosen));
      shown.picture("finding-" + i, 1280, 720);
    }
    robot.push(KeyCode.CONTROL, KeyCode.N);
    shown.picture("begin", 1280, 720);
  }

  @Test
  void circuitsInEveryTheme() throws Exception {
    run(() -> model.open(SCENARIOS.resolve("rail-loss.job.json")));
    run(() -> ranker = new HandMadeRanking());
    everyLook("Circuit", "circuit");
    for (CircuitTemplates.Template template : CircuitTemplates.all()) {
      run(() -> model.begin(JobEdits.blank("New", CircuitTemplates.circuit(template)), null));
      run(() -> desk.page().set("Circuit"));
      for (int i = 0; i < 6; i++) {
        robot.type(KeyCode.RIGHT);
      }
      shown.picture("circuit-" + template.file(), 1280, 720);
    }
  }

  private void type(String reading) {
    robot.write(reading);
    robot.type(KeyCode.ENTER);
  }

  private void everyLook(String page, String name) throws Exception {
    run(() -> desk.page().set(page));
    for (Theme theme : Theme.values()) {
      run(() -> looks.themeProperty().set(theme));
      shown.picture(name + "-" + theme.styleClass(), 1280, 720);
      shown.picture(name + "-" + theme.styleClass(), 1920, 1080);
    }
    run(() -> looks.themeProperty().set(Theme.LIGHT));
  }

  @Test
  void otherStates() throws Exception {
    shown.picture("empty", 1280, 720);
    run(() -> model.open(Jobs.TWO_HOLDS));
    run(() -> model.open(Jobs.UNKNOWN_ENTRY));
    run(() -> ((TabPane) shown.find("#pictures")).getSelectionModel().select(3));
    for (int i = 0; i < 3; i++) {
      robot.type(KeyCode.DOWN);
    }
    shown.picture("banner-clamped-other-suspect", 1280, 720);
    run(model::dismissProblem);
    TabPane drawer = (TabPane) shown.find("#drawer");
    for (int i = 1; i < drawer.getTabs().size(); i++) {
      int tab = i;
      run(() -> drawer.getSelectionModel().select(tab));
      shown.picture(drawer.getTabs().get(i).getId(), 1280, 720);
    }
    run(() -> drawer.getSelectionModel().selectFirst());
    run(looks::enlarge);
    run(looks::enlarge);
    shown.picture("larger-text", 1280, 720);
    run(() -> looks.themeProperty().set(Theme.DARK));
    shown.picture("larger-text-dark", 1920, 1080);
  }

  @Test
  void crowdedRankingsOfEveryVerdict() throws Exception {
    for (Verdict.Kind kind : Verdict.Kind.values()) {
      run(looks::switchTheme);
      ranker = new CrowdedRanking(kind);
      run(() -> model.open(Jobs.SHORT_HOLD));
      shown.picture("crowded-" + kind.name().toLowerCase(Locale.ROOT), 1280, 720);
    }
    run(() -> ((CheckBox) shown.find("#show-unlikely")).fire());
    robot.type(KeyCode.END);
    run(() -> model.open(Jobs.UNKNOWN_ENTRY));
    shown.picture("crowded-end", 1920, 1080);
  }
}
