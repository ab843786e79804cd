package holdcurve.ui.window;

import holdcurve.record.job.Job;
import holdcurve.ui.window.frame.Desk;
import holdcurve.ui.window.frame.Page;
import holdcurve.ui.window.job.OpenJobModel;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Queue;
import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Tab;
import javafx.scene.control.TabPane;
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

  private final Queue<Runnable> steps = new ArrayDeque<>();
  private final StackPane stand = new StackPane();
  private final List<Page> pages;
  private final Scene scene;

  /**
   * @param pages those of the window; they are shown as they are
   * @param scene where it is played: what styles come to is kept by the scene
   */
  Rehearsal(List<Page> pages, Scene scene) {
    this.pages = pages;
    this.scene = scene;
    stand.setVisible(false);
    stand.setManaged(false);
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
    CompletableFuture.supplyAsync(InventedHold::all)
        .thenAcceptAsync(
            holds -> {
              plan(holds);
              play(player, then);
            },
            Platform::runLater);
  }

  private void plan(List<InventedHold> holds) {
    steps.add(this::enter);
    RehearsedControls.all(holds.stream().map(InventedHold::plot).toList())
        .forEach(control -> steps.add(() -> stage(control.get())));
    pages.forEach(page -> Pieces.of(page.content(), this::stage, steps::add));
    pages.forEach(this::add);
    pages.forEach(this::add);
    HoldcurveWindow.pageMakers(() -> 0).forEach(maker -> withReadings(maker, holds));
  }

  /** A page that nobody will see, when it gets a job. */
  private void withReadings(Function<Desk, Page> maker, List<InventedHold> holds) {
    OpenJobModel jobs = inert();
    steps.add(() -> maker.apply(Desk.alone(jobs)));
    holds.forEach(hold -> steps.add(() -> show(jobs, hold.job())));
  }

  /** The first is begun; each further one takes its place, as a change does. */
  private static void show(OpenJobModel jobs, Job job) {
    if (jobs.jobProperty().get() == null) {
      jobs.begin(job, null);
    } else {
      jobs.change("", before -> job);
    }
  }

  private void play(Consumer<Runnable> player, Runnable then) {
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
    breath.setOnFinished(event -> play(player, then));
    breath.play();
  }

  private void enter() {
    stand.resize(scene.getWidth(), scene.getHeight());
    ((Pane) scene.getRoot()).getChildren().add(stand);
    scene.lookup("#pages").applyCss();
  }

  /** Reads nothing, ranks nothing. */
  private static OpenJobModel inert() {
    return new OpenJobModel(
        path -> {
          throw new CancellationException();
        },
        () -> {
          throw new CancellationException();
        },
        work -> {},
        work -> {});
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
}
