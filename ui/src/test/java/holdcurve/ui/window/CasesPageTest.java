package holdcurve.ui.window;

import static holdcurve.ui.window.ShownWindow.run;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.advice.check.CheckVerdict;
import holdcurve.casebook.CaseEntry;
import holdcurve.casebook.Correction;
import holdcurve.casebook.JobState;
import holdcurve.casebook.KnownAnswer;
import holdcurve.casebook.RatesInUse;
import holdcurve.file.CaseShelf;
import holdcurve.file.RatesFile;
import holdcurve.inference.answer.Verdict;
import holdcurve.ui.theme.Appearance;
import holdcurve.ui.theme.Theme;
import holdcurve.ui.window.frame.Desk;
import holdcurve.ui.window.frame.FileDialogs;
import holdcurve.ui.window.frame.FileKind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.TabPane;
import javafx.scene.control.TableView;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The case book in the window, through its own controls, in a home of its own. */
class CasesPageTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");

  @TempDir private Path folder;
  private final TypingRobot robot = new TypingRobot();
  private String home;
  private Path jobs;
  private ShownWindow window;

  /** Names what the test has for each question. */
  private final class Answers implements FileDialogs {
    @Override
    public Optional<Path> chooseJob(Path near) {
      return Optional.empty();
    }

    @Override
    public Optional<Path> chooseJobFolder() {
      return Optional.of(jobs);
    }

    @Override
    public Optional<Path> choose(FileKind kind, Path near) {
      return Optional.of(folder.resolve("rates.json"));
    }

    @Override
    public Optional<Path> save(FileKind kind, Path near, String name) {
      return Optional.of(folder.resolve(kind == FileKind.RATES ? "rates.json" : "cases.csv"));
    }
  }

  @BeforeEach
  void openWindow() throws Exception {
    home = System.setProperty("user.home", folder.resolve("home").toString());
    jobs = Files.createDirectories(folder.resolve("jobs"));
    copy("");
    copy("circuits");
    copy("logs");
    window =
        ShownWindow.of(
            HandMadeRanking::new, model -> Desk.alone(model, new Appearance(), new Answers()));
    run(() -> window.desk().page().set("Cases"));
  }

  private void copy(String under) throws IOException {
    Files.createDirectories(jobs.resolve(under));
    try (Stream<Path> files = Files.list(SCENARIOS.resolve(under))) {
      for (Path file :
          files.filter(f -> f.toString().matches(".*(job.json|circuit.json|csv)")).toList()) {
        Files.copy(file, jobs.resolve(under).resolve(file.getFileName()));
      }
    }
  }

  @AfterEach
  void close() throws Exception {
    run(window.stage()::close);
    System.setProperty("user.home", home);
  }

  private CaseShelf shelf() {
    return CaseShelf.usual();
  }

  @SuppressWarnings("unchecked")
  private TableView<CaseEntry> list() {
    return (TableView<CaseEntry>) window.find("#cases");
  }

  private void fire(String id) throws Exception {
    run(() -> ((javafx.scene.control.ButtonBase) window.find(id)).fire());
  }

  private void choose(String name) throws Exception {
    run(
        () ->
            list().getItems().stream()
                .filter(entry -> entry.file().getFileName().toString().startsWith(name))
                .forEach(list().getSelectionModel()::select));
  }

  private String text(String where) {
    return window.find(where).lookupAll(".label").stream()
        .map(node -> ((Label) node).getText())
        .reduce("", (a, b) -> a + "\n" + b);
  }

  @Test
  void aFolderIsChosenSearchedAndAJobOpened() throws Exception {
    assertTrue(text("#cases-page").contains("No folder is chosen yet"));
    window.picture("cases-empty", 1280, 720);
    fire("#first-folder");
    assertEquals(9, list().getItems().size());
    robot.push(KeyCode.CONTROL, KeyCode.F);
    robot.write("renewed");
    assertEquals(2, list().getItems().size());
    assertTrue(text("#cases-tabs").contains("2 of 9 jobs"));
    choose("repaired");
    run(list()::requestFocus);
    robot.type(KeyCode.ENTER);
    Path open = window.desk().jobs().fileProperty().get();
    assertEquals("repaired-check-valve.job.json", open.getFileName().toString());
  }

  @Test
  void filesThatCannotBeReadAreNamed() throws Exception {
    Files.writeString(
        jobs.resolve("odd.job.json"), "{ \"format\": \"holdcurve-job/1\", \"title\": 7 }");
    fire("#first-folder");
    assertTrue(text("#broken-cases").contains("odd.job.json: line 1, title: found 7"));
    window.picture("cases-broken", 1280, 720);
    fire("#add-folder");
    assertEquals(1, shelf().notes().folders().size(), "a folder is listed once");
  }

  @Test
  void theUserSaysWhatItWasAndTheRatesFollow() throws Exception {
    fire("#first-folder");
    shelf()
        .keep(
            jobs.resolve("repaired-check-valve.job.json"),
            new KnownAnswer(
                Verdict.Kind.SOUND, true, "", 0.96, Optional.of(CheckVerdict.Kind.HOLDS)));
    shelf()
        .keep(
            jobs.resolve("rail-loss.job.json"),
            new KnownAnswer(
                Verdict.Kind.LEAK, false, "Injector drips at its tip", 0.34, Optional.empty()));
    robot.push(KeyCode.CONTROL, KeyCode.L);
    choose("repaired");
    assertTrue(text("#cases-tabs").contains("Check valve leaks back to the tank"));
    everyLook("cases");
    @SuppressWarnings("unchecked")
    ComboBox<String> counts = (ComboBox<String>) window.find("#case-fault");
    run(() -> counts.setValue("injector-tip"));
    assertEquals(
        "injector-tip",
        shelf().notes().corrections().get(jobs.resolve("repaired-check-valve.job.json")).fault());
    choose("rail-loss.job");
    run(() -> window.find("#case-car").requestFocus());
    robot.write("AB 123");
    robot.type(KeyCode.ENTER);
    assertEquals(
        new Correction("", "AB 123"),
        shelf().notes().corrections().get(jobs.resolve("rail-loss.job.json")));
    run(() -> ((TabPane) window.find("#cases-tabs")).getSelectionModel().select(1));
    fire("#rates-own");
    assertEquals(RatesInUse.OWN, shelf().notes().rates());
    fire("#export-rates");
    double tip = RatesFile.read(folder.resolve("rates.json")).get("injector-tip");
    assertTrue(tip > 0.024, "" + tip);
    everyLook("cases-rates");
    fire("#rates-file");
    assertEquals(RatesInUse.Kind.FILE, shelf().notes().rates().kind());
    assertTrue(((RadioButton) window.find("#rates-file")).isSelected());
    fire("#rates-shipped");
    assertEquals(RatesInUse.SHIPPED, shelf().notes().rates());
  }

  @Test
  void holdsOfOneCarLieOverEachOther() throws Exception {
    fire("#first-folder");
    choose("repaired");
    fire("#car-holds");
    assertEquals(2, ((TabPane) window.find("#cases-tabs")).getSelectionModel().getSelectedIndex());
    assertTrue(text("#cases-tabs").contains("2025-04-26 spring service"));
    everyLook("cases-car");
  }

  @Test
  void whatTheWindowWorkedOutIsInTheList() throws Exception {
    fire("#first-folder");
    run(() -> window.desk().jobs().open(jobs.resolve("rail-loss.job.json")));
    run(() -> window.desk().page().set("Cases"));
    ComboBox<Optional<JobState>> state = state();
    run(() -> state.setValue(Optional.of(JobState.LEAKING)));
    assertEquals(1, list().getItems().size());
    fire("#export-cases");
    assertEquals(3, Files.readAllLines(folder.resolve("cases.csv")).size());
  }

  @SuppressWarnings("unchecked")
  private ComboBox<Optional<JobState>> state() {
    return (ComboBox<Optional<JobState>>) window.find("#case-state");
  }

  @Test
  void aBookThatCannotBeReadIsSaid() throws Exception {
    fire("#first-folder");
    Path book = folder.resolve("home/.holdcurve/cases/case-book.json");
    Files.writeString(book, "{ \"format\":");
    robot.push(KeyCode.CONTROL, KeyCode.L);
    String problem = window.desk().jobs().problemProperty().get();
    assertTrue(problem.contains("case-book.json"), problem);
    assertFalse(list().getItems().isEmpty(), "what was listed stays");
    window.picture("cases-error", 1280, 720);
  }

  private void everyLook(String name) throws Exception {
    for (Theme theme : Theme.values()) {
      run(() -> window.desk().looks().themeProperty().set(theme));
      window.picture(name + "-" + theme.styleClass(), 1280, 720);
    }
    run(() -> window.desk().looks().themeProperty().set(Theme.LIGHT));
  }
}
