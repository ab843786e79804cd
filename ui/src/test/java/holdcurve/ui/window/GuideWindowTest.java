package holdcurve.ui.window;

import static holdcurve.ui.window.ShownWindow.run;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.ui.guide.Chapter;
import holdcurve.ui.guide.Guide;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import javafx.collections.ObservableList;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListView;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.SplitPane;
import javafx.scene.control.TabPane;
import javafx.scene.control.TitledPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.Clipboard;
import javafx.scene.input.DataFormat;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxRobot;

/** The guide beside the work, and whether the words in it are those of the window. */
class GuideWindowTest {
  private static final Path PICTURES = Path.of("target", "snapshots");

  private final FxRobot robot = new FxRobot();
  private ShownWindow shown;

  @BeforeEach
  void open() throws Exception {
    shown = ShownWindow.of(BelievedRanking::new);
    run(() -> shown.desk().jobs().open(Jobs.TWO_HOLDS));
  }

  @AfterEach
  void closeGuide() throws Exception {
    run(() -> guide().forEach(Stage::close));
  }

  private static List<Stage> guide() {
    return Window.getWindows().stream()
        .filter(window -> window.getScene().lookup("#guide-chapters") != null)
        .map(Stage.class::cast)
        .toList();
  }

  private List<String> pages() {
    return robot
        .from(shown.stage().getScene().getRoot())
        .lookup("#pages .toggle-button")
        .queryAll()
        .stream()
        .map(button -> ((ToggleButton) button).getText())
        .toList();
  }

  @Test
  void theKeyOpensTheChapterOfThePageInFront() throws Exception {
    Map<String, String> about =
        Map.of(
            "Circuit", "first-hold",
            "Hold tests", "first-hold",
            "Suspects", "answer",
            "Bench sheet", "bench-sheet",
            "What if", "ordering",
            "Repair check", "proving",
            "Cases", "cases",
            "Practice", "practice");
    assertEquals(about.keySet(), Set.copyOf(pages()));
    for (String page : pages()) {
      run(() -> shown.desk().page().set(page));
      run(shown.stage()::requestFocus);
      robot.push(KeyCode.F1);
      run(() -> {});
      assertEquals(1, guide().size(), page);
      ListView<?> list = (ListView<?>) guide().get(0).getScene().lookup("#guide-chapters");
      assertEquals(about.get(page), ((Chapter) list.getSelectionModel().getSelectedItem()).id());
    }
  }

  @Test
  void theDropTestHasItsOwnChapter() throws Exception {
    run(() -> shown.desk().page().set("Bench sheet"));
    run(shown.stage()::requestFocus);
    for (int i = 0; i < 3; i++) {
      robot.push(KeyCode.CONTROL, KeyCode.T);
    }
    robot.push(KeyCode.F1);
    run(() -> {});
    ListView<?> list = (ListView<?>) guide().get(0).getScene().lookup("#guide-chapters");
    assertEquals("drop-test", ((Chapter) list.getSelectionModel().getSelectedItem()).id());
  }

  @Test
  void everyChapterIsDrawn() throws Exception {
    robot.push(KeyCode.F1);
    run(() -> {});
    Stage stage = guide().get(0);
    ListView<?> list = (ListView<?>) stage.getScene().lookup("#guide-chapters");
    for (Object chapter : List.copyOf(list.getItems())) {
      run(() -> list.getSelectionModel().select(list.getItems().indexOf(chapter)));
      run(shown.desk().looks()::switchTheme);
      String name = "guide-" + ((Chapter) chapter).id() + ".png";
      SceneImage.write(stage, PICTURES.resolve(name), 1040, 860);
    }
    robot.push(KeyCode.ESCAPE);
    run(() -> {});
    assertTrue(guide().isEmpty());
  }

  /** Bold words are those of a label, a button, a tab or a menu. */
  @Test
  void everyNameOfAButtonOrAMenuIsARealOne() throws Exception {
    Set<String> real = new TreeSet<>();
    for (String page : pages()) {
      run(() -> shown.desk().page().set(page));
      run(() -> collect(shown.stage().getScene().getRoot(), real));
    }
    run(() -> shown.desk().page().set("Bench sheet"));
    TabPane bench = (TabPane) shown.find("#bench-tabs");
    for (int i = 1; i < bench.getTabs().size(); i++) {
      int tab = i;
      run(() -> bench.getSelectionModel().select(tab));
      run(() -> collect(bench, real));
    }
    run(() -> shown.desk().page().set("Hold tests"));
    robot.push(KeyCode.CONTROL, KeyCode.T);
    robot.type(KeyCode.SPACE);
    run(() -> collect(shown.stage().getScene().getRoot(), real));
    run(
        () ->
            Clipboard.getSystemClipboard()
                .setContent(Map.of(DataFormat.PLAIN_TEXT, "time_s,pressure_bar\n0,2\n60,1.9\n")));
    robot.push(KeyCode.CONTROL, KeyCode.V);
    run(() -> collect(shown.stage().getScene().getRoot(), real));
    Set<String> unknown = new TreeSet<>(marked());
    assertTrue(unknown.size() > 40, unknown::toString);
    unknown.removeAll(real);
    assertTrue(unknown.isEmpty(), () -> "not in the window: " + unknown);
  }

  /** The version is said, and a report is looked over before anything is written. */
  @Test
  void aboutAndTheReportOfAProblem() throws Exception {
    run(() -> menu("About"));
    assertTrue(side("#about").getTitle().startsWith("About"));
    SceneImage.write(side("#about"), PICTURES.resolve("about.png"), 680, 620);
    run(() -> menu("Report a problem …"));
    Stage problem = side("#problem");
    Set<String> words = new TreeSet<>();
    run(() -> collect(problem.getScene().getRoot(), words));
    assertTrue(words.contains("job/two-holds.job.json"), words::toString);
    assertTrue(words.contains("version.txt"), words::toString);
    SceneImage.write(problem, PICTURES.resolve("problem.png"), 720, 480);
    run(problem::close);
    run(side("#about")::close);
  }

  private static Stage side(String selector) {
    return (Stage)
        Window.getWindows().stream()
            .filter(window -> window.getScene().lookup(selector) != null)
            .findFirst()
            .orElseThrow();
  }

  private void menu(String item) {
    ((MenuBar) shown.find(".menu-bar"))
        .getMenus().stream()
            .flatMap(menu -> menu.getItems().stream())
            .filter(one -> one.getText() != null && one.getText().replace("_", "").equals(item))
            .forEach(MenuItem::fire);
  }

  private static Set<String> marked() {
    Set<String> words = new TreeSet<>();
    for (Chapter chapter : Guide.chapters()) {
      chapter
          .text()
          .accept(
              new AbstractVisitor() {
                @Override
                public void visit(StrongEmphasis strong) {
                  words.add(((Text) strong.getFirstChild()).getLiteral());
                }
              });
    }
    return words;
  }

  private static void collect(Node node, Set<String> words) {
    if (node instanceof MenuBar bar) {
      bar.getMenus().forEach(menu -> collect(menu, words));
    }
    if (node instanceof Labeled labeled) {
      if (labeled.getText() != null) {
        words.add(labeled.getText());
      }
      collectIfAny(labeled.getGraphic(), words);
    }
    if (node instanceof TabPane tabs) {
      tabs.getTabs()
          .forEach(
              tab -> {
                words.add(tab.getText());
                collectIfAny(tab.getContent(), words);
              });
    }
    if (node instanceof ScrollPane scroll) {
      collectIfAny(scroll.getContent(), words);
    }
    if (node instanceof TitledPane titled) {
      collectIfAny(titled.getContent(), words);
    }
    if (node instanceof SplitPane split) {
      split.getItems().forEach(item -> collect(item, words));
    }
    if (node instanceof Parent parent) {
      ObservableList<Node> children = parent.getChildrenUnmodifiable();
      children.forEach(child -> collect(child, words));
    }
  }

  private static void collectIfAny(Node node, Set<String> words) {
    if (node != null) {
      collect(node, words);
    }
  }

  /** As "File > Save", without the marks of keys. */
  private static void collect(Menu menu, Set<String> words) {
    String name = menu.getText().replace("_", "");
    words.add(name);
    for (MenuItem item : menu.getItems()) {
      if (item.getText() != null) {
        words.add(name + " > " + item.getText().replace("_", ""));
      }
    }
  }
}
