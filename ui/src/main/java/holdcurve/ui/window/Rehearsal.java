package holdcurve.ui.window;

import holdcurve.fault.FaultCatalogue;
import holdcurve.job.Job;
import holdcurve.log.GaugeLog;
import holdcurve.log.Reading;
import holdcurve.ui.theme.Looks;
import holdcurve.ui.window.frame.Desk;
import holdcurve.ui.window.frame.Page;
import holdcurve.ui.window.job.CircuitTemplates;
import holdcurve.ui.window.job.FaultsModel;
import holdcurve.ui.window.job.JobEdits;
import holdcurve.ui.window.job.OpenJobModel;
import holdcurve.ui.window.job.RescueModel;
import holdcurve.ui.window.job.TestEdits;
import holdcurve.ui.window.plot.HoldChart;
import holdcurve.ui.window.plot.HoldPlot;
import holdcurve.ui.window.plot.PlotPanel;
import java.util.ArrayDeque;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Queue;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import javafx.animation.PauseTransition;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.collections.FXCollections;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Slider;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
import javafx.scene.control.TableCell;
import javafx.scene.control.TableColumn;
import javafx.scene.control.TableView;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.TitledPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.Pane;
import javafx.scene.layout.StackPane;
import javafx.util.Duration;

/**
 * Every page shown once out of sight, on an invented hold, in short steps while the person still
 * looks at the first page. What a page costs at first is mostly the loading of classes; all at once
 * that would hold the screen up for a third of a second when a job is opened.
 */
final class Rehearsal {
  /** Between two steps, so that keys and drawing come in between. */
  private static final Duration BREATH = Duration.millis(5);

  /** Short steps are taken together up to this [ns]. */
  private static final long AT_A_TIME_NS = 15_000_000;

  /** As many as a logger gives, so that what is done for each is compiled. */
  private static final int READINGS = 20_000;

  /** As many as are read by eye. */
  private static final int FEW = 12;

  private final Queue<Runnable> steps = new ArrayDeque<>();
  private final StackPane stand = new StackPane();

  /**
   * @param pages those of the window; they are shown as they are
   * @param scene where it is played: what styles come to is kept by the scene
   */
  Rehearsal(List<Page> pages, Scene scene) {
    stand.setVisible(false);
    stand.setManaged(false);
    steps.add(() -> enter(scene));
    controls().forEach(control -> steps.add(() -> stage(control.get())));
    pages.forEach(page -> Pieces.of(page.content(), this::stage, steps::add));
    pages.forEach(this::add);
    pages.forEach(this::add);
    HoldcurveWindow.pageMakers(() -> 0).forEach(this::withReadings);
  }

  /** A page that nobody will see, when it gets a job. */
  private void withReadings(Function<Desk, Page> maker) {
    OpenJobModel jobs = inert();
    steps.add(() -> maker.apply(inert(jobs)));
    steps.add(() -> jobs.begin(invented(FEW), null));
    steps.add(() -> jobs.begin(invented(READINGS), null));
  }

  /**
   * Goes through it step by step. Call it on the thread of the screen.
   *
   * @param then run after the last step
   */
  void run(Runnable then) {
    run(Runnable::run, then);
  }

  /**
   * Likewise, with an eye on the steps.
   *
   * @param player given each step, to run it at once
   */
  void run(Consumer<Runnable> player, Runnable then) {
    if (steps.isEmpty()) {
      ((Pane) stand.getParent()).getChildren().remove(stand);
      then.run();
      return;
    }
    long begun = System.nanoTime();
    while (!steps.isEmpty() && System.nanoTime() - begun < AT_A_TIME_NS) {
      player.accept(steps.poll());
    }
    PauseTransition breath = new PauseTransition(BREATH);
    breath.setOnFinished(event -> run(player, then));
    breath.play();
  }

  private void enter(Scene scene) {
    stand.resize(scene.getWidth(), scene.getHeight());
    ((Pane) scene.getRoot()).getChildren().add(stand);
    scene.lookup("#pages").applyCss();
  }

  /** Reads nothing, ranks nothing. */
  private static OpenJobModel inert() {
    return new OpenJobModel(
        path -> invented(FEW),
        () -> {
          throw new CancellationException();
        },
        work -> {},
        work -> {});
  }

  private static Desk inert(OpenJobModel jobs) {
    return new Desk(
        jobs,
        new FaultsModel(FaultCatalogue::load, null),
        new RescueModel(jobs, List.of()),
        new Looks(),
        near -> Optional.empty(),
        new SimpleStringProperty());
  }

  private void add(Page page) {
    if (page.content() instanceof TabPane tabs) {
      tabs.getTabs().forEach(tab -> steps.add(() -> unlessShown(tabs, () -> stage(tab))));
    }
    steps.add(() -> unlessShown(page.content(), () -> stage(page.content())));
  }

  private static void unlessShown(Node node, Runnable step) {
    if (node.getScene() == null) {
      step.run();
    }
  }

  private void stage(Tab tab) {
    Node content = tab.getContent();
    if (content != null) {
      tab.setContent(null);
      stage(content);
      tab.setContent(content);
    }
  }

  private void stage(Node node) {
    stand.getChildren().setAll(node);
    stand.applyCss();
    stand.layout();
    stand.getChildren().clear();
  }

  /** The controls that take longest at first, each alone. */
  private static List<Supplier<Node>> controls() {
    return List.of(
        () -> new TextField("1.85"),
        () -> new ScrollPane(new CheckBox("x")),
        () -> new ListView<String>(),
        () -> new ListView<>(FXCollections.observableArrayList("x")),
        TableView::new,
        () -> table(1, 0),
        TableCell<String, String>::new,
        () -> table(1, 1),
        () -> table(1, 4),
        () -> table(2, 6),
        () -> table(3, 9),
        () -> table(3, 20),
        () -> new TitledPane("x", new ToggleButton("x")),
        () -> new TabPane(new Tab("x")),
        () -> new Slider(0, 1, 0.5),
        () -> new ComboBox<String>(),
        TextArea::new,
        Rehearsal::fields,
        Rehearsal::fields,
        Rehearsal::fields,
        Rehearsal::fields,
        Rehearsal::fields,
        HoldChart::new,
        () -> new PlotPanel(new SimpleBooleanProperty()),
        () -> plot(FEW),
        () -> plot(READINGS));
  }

  private static TableView<String> table(int columns, int rows) {
    TableView<String> table = new TableView<>();
    for (int column = 0; column < columns; column++) {
      TableColumn<String, String> words = new TableColumn<>("x");
      words.setCellValueFactory(cell -> new ReadOnlyStringWrapper(cell.getValue()));
      table.getColumns().add(words);
    }
    table.getItems().addAll(Collections.nCopies(rows, "x"));
    return table;
  }

  private static FlowPane fields() {
    FlowPane fields = new FlowPane();
    IntStream.range(0, 12).forEach(i -> fields.getChildren().add(new TextField("1.85")));
    return fields;
  }

  private static PlotPanel plot(int count) {
    PlotPanel plot = new PlotPanel(new SimpleBooleanProperty());
    Job job = invented(count);
    plot.show(HoldPlot.of(job.tests().get(0), HoldPlot.Wish.PLAIN), "");
    return plot;
  }

  private static Job invented(int count) {
    List<Reading> readings =
        IntStream.range(0, count).mapToObj(i -> Reading.of(0.1 * i, 2e5 - i)).toList();
    Job blank = JobEdits.blank("", CircuitTemplates.circuit(CircuitTemplates.all().get(0)));
    return JobEdits.change(
        blank, JobEdits.FIRST_TEST, hold -> TestEdits.withLog(hold, new GaugeLog("", readings, 0)));
  }
}
