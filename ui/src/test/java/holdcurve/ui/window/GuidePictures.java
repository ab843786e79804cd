package holdcurve.ui.window;

import static holdcurve.ui.window.ShownWindow.run;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import holdcurve.fault.FaultCatalogue;
import holdcurve.record.job.Job;
import holdcurve.ui.theme.Theme;
import holdcurve.ui.window.frame.Desk;
import holdcurve.ui.window.frame.FileDialogs;
import holdcurve.ui.window.frame.FileKind;
import holdcurve.ui.window.job.JobEdits;
import holdcurve.ui.window.job.OpenJobModel;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Slider;
import javafx.scene.control.TabPane;
import javafx.scene.control.TableView;
import javafx.scene.input.Clipboard;
import javafx.scene.input.DataFormat;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import javafx.stage.StageStyle;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/**
 * Draws the pictures of the guide anew, from the shipped scenarios and with real rankings. The
 * usual tests leave it out, by its name: the pictures are kept with the sources.
 */
class GuidePictures {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");
  private static final Path PICTURES = Path.of("src", "main", "guide", "pictures");
  private static final String TABLE =
      "Zeit [mm:ss];Druck [kPa]\n0:00;212\n0:30;198,5\n1:00;194\n2:00;190\n4:00;184\n";

  @TempDir private Path garage;

  private final FxRobot robot = new FxRobot();
  private Stage stage;
  private Desk desk;
  private OpenJobModel model;
  private Path answer;
  private final AtomicInteger atWork = new AtomicInteger();
  private final ExecutorService background =
      Executors.newCachedThreadPool(
          work -> {
            Thread thread = new Thread(work);
            thread.setDaemon(true);
            return thread;
          });

  private final FileDialogs dialogs =
      new FileDialogs() {
        @Override
        public Optional<Path> chooseJob(Path near) {
          return Optional.ofNullable(answer);
        }

        @Override
        public Optional<Path> chooseJobFolder() {
          return Optional.ofNullable(answer);
        }

        @Override
        public Optional<Path> chooseBenchSheet(Path near) {
          return Optional.ofNullable(answer);
        }

        @Override
        public Optional<Path> choose(FileKind kind, Path near) {
          return Optional.ofNullable(answer);
        }

        @Override
        public Optional<Path> chooseExercise(Path near) {
          return Optional.ofNullable(answer);
        }
      };

  private void show() throws Exception {
    FxToolkit.registerPrimaryStage();
    FxToolkit.cleanupStages();
    run(
        () -> {
          stage = new Stage(StageStyle.UNDECORATED);
          desk = WorkingDesk.of(none -> FaultCatalogue.load(), dialogs, this::inBackground);
          model = desk.jobs();
          desk.looks().themeProperty().set(Theme.LIGHT);
          HoldcurveWindow.fill(stage, desk);
          stage.show();
        });
  }

  private void inBackground(Runnable work) {
    atWork.incrementAndGet();
    background.execute(
        () -> {
          try {
            work.run();
          } finally {
            atWork.decrementAndGet();
          }
        });
  }

  /** Waits until nothing is being worked out. */
  private void settle() throws Exception {
    for (int quiet = 0; quiet < 10; quiet++) {
      Thread.sleep(50);
      WaitForAsyncUtils.waitForFxEvents();
      if (atWork.get() > 0) {
        quiet = 0;
      }
    }
  }

  private Node find(String selector) {
    Node found = stage.getScene().lookup(selector);
    assertNotNull(found, selector);
    return found;
  }

  private void open(String job) throws Exception {
    run(() -> model.open(SCENARIOS.resolve(job)));
    settle();
    assertNotNull(model.ranking().resultProperty().get(), model.problemProperty().get());
  }

  private void page(String title) throws Exception {
    run(() -> desk.page().set(title));
  }

  private void tab(String panes, int which) throws Exception {
    run(() -> ((TabPane) find(panes)).getSelectionModel().select(which));
  }

  private void press(String words) throws Exception {
    Button button =
        robot.from(stage.getScene().getRoot()).lookup(".button").queryAll().stream()
            .map(Button.class::cast)
            .filter(one -> words.equals(one.getText()))
            .findFirst()
            .orElseThrow();
    run(button::fire);
    settle();
  }

  private void picture(String name) throws Exception {
    settle();
    Path file = PICTURES.resolve(name + ".png");
    SceneImage.write(stage, file, 1280, 720);
    opaque(file);
  }

  /** Without transparency, which a window has none of: the file is smaller, and its PDF too. */
  private static void opaque(Path file) throws IOException {
    BufferedImage from = ImageIO.read(file.toFile());
    BufferedImage to =
        new BufferedImage(from.getWidth(), from.getHeight(), BufferedImage.TYPE_INT_RGB);
    to.setRGB(
        0,
        0,
        from.getWidth(),
        from.getHeight(),
        from.getRGB(0, 0, from.getWidth(), from.getHeight(), null, 0, from.getWidth()),
        0,
        from.getWidth());
    ImageIO.write(to, "png", file.toFile());
  }

  @Test
  void ofTheStartAndTheReadings() throws Exception {
    show();
    picture("start");
    open("rail-loss.job.json");
    Job sample = model.jobProperty().get();
    run(() -> model.begin(JobEdits.blank("My car", sample.circuit()), null));
    page("Hold tests");
    robot.type(KeyCode.SPACE);
    for (String reading : List.of("2.12", "0:30 1.98", "1:00 1.94", "1:30 1.92")) {
      robot.write(reading);
      robot.type(KeyCode.ENTER);
    }
    picture("readings");
    run(() -> Clipboard.getSystemClipboard().setContent(Map.of(DataFormat.PLAIN_TEXT, TABLE)));
    robot.push(KeyCode.CONTROL, KeyCode.V);
    picture("import");
    robot.push(KeyCode.ESCAPE);
    run(() -> ((ComboBox<?>) find("#finding-kind")).getSelectionModel().select(1));
    picture("finding");
  }

  @Test
  void ofTheAnswer() throws Exception {
    show();
    open("check-valve.job.json");
    picture("answer");
    tab("#drawer", 2);
    picture("fall");
    page("Circuit");
    picture("circuit");
    open("rail-loss.job.json");
    tab("#drawer", 1);
    picture("next-test");
  }

  @Test
  void ofPricesAndRepairs() throws Exception {
    show();
    open("rail-loss.job.json");
    page("What if");
    picture("what-if");
    tab("#what-if", 1);
    answer = SCENARIOS.resolve("prices.csv");
    press("Open a price list …");
    robot.push(KeyCode.F7);
    picture("order");
    open("repaired-check-valve.job.json");
    page("Repair check");
    robot.push(KeyCode.F6);
    picture("repair-check");
  }

  @Test
  void ofTheBench() throws Exception {
    show();
    open("rail-loss.job.json");
    page("Bench sheet");
    answer = SCENARIOS.resolve("bench/six-as-they-came.bench.json");
    robot.push(KeyCode.CONTROL, KeyCode.B);
    picture("bench-sheet");
    tab("#bench-tabs", 3);
    answer = SCENARIOS.resolve("bench/drops-six-times.csv");
    press("Read a drop test …");
    picture("drop-test");
  }

  @Test
  void ofPractice() throws Exception {
    show();
    page("Practice");
    tab("#practice-tabs", 1);
    answer = SCENARIOS.resolve("exercises/long-cranking.exercise.json");
    press("Open an exercise …");
    run(() -> ((Button) find("#step-hold")).fire());
    press("End");
    press("Let a practised eye read it");
    List<Node> sliders = List.copyOf(stage.getScene().getRoot().lookupAll(".slider"));
    run(() -> ((Slider) sliders.get(1)).setValue(60));
    picture("practice");
  }

  @Test
  void ofTheCaseBook() throws Exception {
    String before = System.setProperty("user.home", garage.toString());
    try {
      Path jobs = Files.createDirectory(garage.resolve("jobs"));
      for (String under : List.of("", "circuits", "logs")) {
        Files.createDirectories(jobs.resolve(under));
        try (Stream<Path> files = Files.list(SCENARIOS.resolve(under))) {
          for (Path file : files.filter(Files::isRegularFile).toList()) {
            Files.copy(file, jobs.resolve(under).resolve(file.getFileName()));
          }
        }
      }
      show();
      answer = jobs;
      page("Cases");
      press("Choose a folder …");
      press("Rank those without a verdict");
      run(() -> ((TableView<?>) find("#cases")).getSelectionModel().select(0));
      picture("cases");
    } finally {
      System.setProperty("user.home", before);
    }
  }
}
