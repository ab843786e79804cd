package holdcurve.ui.window;

import holdcurve.fault.FaultCatalogue;
import holdcurve.file.JobReader;
import holdcurve.inference.ranking.Ranker;
import holdcurve.ui.scenario.Scenarios;
import holdcurve.ui.theme.Appearance;
import holdcurve.ui.window.frame.Desk;
import holdcurve.ui.window.frame.NamedFile;
import holdcurve.ui.window.frame.NativeFileDialogs;
import holdcurve.ui.window.job.Autosave;
import holdcurve.ui.window.job.FaultsModel;
import holdcurve.ui.window.job.Keeper;
import holdcurve.ui.window.job.OpenJobModel;
import holdcurve.ui.window.job.PracticeLog;
import holdcurve.ui.window.job.RescueModel;
import java.io.UncheckedIOException;
import java.lang.System.Logger.Level;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import javafx.animation.Animation;
import javafx.animation.PauseTransition;
import javafx.application.Platform;
import javafx.beans.property.SimpleStringProperty;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.util.Duration;

/** Opens the window, or says why there can't be one. */
public final class WindowLauncher {
  private static final System.Logger LOG = System.getLogger(WindowLauncher.class.getName());

  /** All that is kept between windows. */
  private static final Path HOME = Path.of(System.getProperty("user.home", "."), ".holdcurve");

  /** Where JavaFX unpacks its native libraries; by itself it would do so elsewhere. */
  private static final String LIBRARIES = "javafx.cachedir";

  /** The rehearsal waits no longer for the answer to a job that was asked for. */
  private static final Duration PATIENCE = Duration.seconds(5);

  private static Optional<String> reason;

  private final ExecutorService background = daemons("holdcurve-work", 0);
  private final ExecutorService writer = daemons("holdcurve-settings", 1);
  private final FaultsModel faults;
  private final CompletableFuture<Void> closed = new CompletableFuture<>();
  private final StartTimes times = new StartTimes();

  private WindowLauncher(FaultsModel faults) {
    this.faults = faults;
  }

  /**
   * Why no window can be shown here, as one sentence for a person; empty if one can. The graphics
   * are started to find out, at the first call.
   */
  public static synchronized Optional<String> unavailable() {
    if (reason == null) {
      if (System.getProperty(LIBRARIES) == null) {
        System.setProperty(LIBRARIES, HOME.resolve("javafx").toString());
      }
      reason =
          DisplayCheck.before(
                  System.getProperty("os.name"),
                  System.getenv(),
                  System.getProperty("glass.platform"))
              .or(ToolkitStart::start);
    }
    return reason;
  }

  /**
   * Shows the window and returns when it has been closed. One window a program run: the graphics
   * can't be started a second time.
   *
   * @param jobOrNull job to open at once; null for none. One that can't be read is reported in the
   *     window
   * @param pluginsOrNull folder with jars of faults; null for the one chosen in the window, if any
   * @return why no window could be shown; empty once it has been shown and closed
   */
  public static Optional<String> open(Path jobOrNull, Path pluginsOrNull) {
    return open(jobOrNull, pluginsOrNull, null);
  }

  /**
   * Likewise, for a job or a circuit.
   *
   * @param fileOrNull job to open, or circuit to begin a job on
   * @param pictureOrNull where to put a picture of the window, which is then closed; null for a
   *     window that stays
   * @throws holdcurve.common.input.NoAnswerException if there is nothing to take a picture of
   */
  public static Optional<String> open(Path fileOrNull, Path pluginsOrNull, Path pictureOrNull) {
    Optional<String> why = unavailable();
    if (why.isPresent()) {
      return why;
    }
    WindowLauncher launcher =
        new WindowLauncher(new FaultsModel(FaultCatalogue::load, pluginsOrNull));
    Platform.setImplicitExit(false);
    WindowLog log = WindowLog.in(HOME.resolve("log"));
    Platform.runLater(() -> launcher.show(fileOrNull, pictureOrNull));
    try {
      launcher.closed.join();
    } catch (CompletionException e) {
      throw e.getCause() instanceof RuntimeException cause ? cause : e;
    } finally {
      log.close();
      launcher.writer.shutdown();
      Platform.exit();
    }
    return Optional.empty();
  }

  private void show(Path fileOrNull, Path pictureOrNull) {
    try {
      List<Autosave.Kept> left = Autosave.left(HOME.resolve("unsaved"));
      Optional<Autosave> autosave = autosave();
      AtomicReference<Path> file = new AtomicReference<>();
      Supplier<Ranker> ranker = () -> HoldcurveWindow.ranker(faults, file.get());
      OpenJobModel model =
          new OpenJobModel(
              JobReader::readUnfinished,
              ranker,
              background,
              Platform::runLater,
              autosave.map(Keeper.class::cast).orElse(Keeper.NONE));
      model.fileProperty().addListener((property, before, now) -> file.set(now));
      model.claimFiles();
      model.examplesAre(Scenarios::isShipped);
      Stage stage = new Stage();
      stage.getIcons().add(Appearance.icon());
      Appearance looks = new Appearance();
      looks.suit(Screen.getPrimary().getBounds().getHeight());
      Desk desk =
          new Desk(
              model,
              faults,
              new RescueModel(model, left),
              new PracticeLog(),
              looks,
              new NativeFileDialogs(stage, model::report),
              new SimpleStringProperty());
      new Settings(HOME.resolve("window.properties"), writer).attach(desk);
      Rehearsal rehearsal = HoldcurveWindow.fill(stage, desk);
      stage.setOnHidden(
          event ->
              model.close(
                  () -> {
                    autosave.ifPresent(Autosave::close);
                    closed.complete(null);
                  }));
      stage.show();
      times.shown();
      openIfAsked(desk, fileOrNull);
      if (pictureOrNull != null) {
        new WindowPicture(stage, model, times, closed).take(pictureOrNull);
      }
      rehearse(rehearsal, model);
    } catch (RuntimeException | Error e) {
      closed.completeExceptionally(e);
    }
  }

  private static void openIfAsked(Desk desk, Path fileOrNull) {
    if (fileOrNull != null) {
      NamedFile.open(desk, fileOrNull);
    }
  }

  /** The answer to a job that was asked for comes first, unless it takes long. */
  private static void rehearse(Rehearsal rehearsal, OpenJobModel model) {
    PauseTransition patience = new PauseTransition(PATIENCE);
    patience.setOnFinished(event -> rehearsal.run(() -> {}));
    if (model.jobProperty().get() == null) {
      rehearsal.run(() -> {});
      return;
    }
    patience.play();
    model
        .ranking()
        .resultProperty()
        .addListener(
            (property, before, now) -> {
              if (patience.getStatus() == Animation.Status.RUNNING) {
                patience.jumpTo(PATIENCE);
              }
            });
  }

  /** Empty where nothing can be written: better a window without than none. */
  private Optional<Autosave> autosave() {
    try {
      return Optional.of(Autosave.in(HOME.resolve("unsaved")));
    } catch (UncheckedIOException e) {
      LOG.log(Level.WARNING, "work can't be kept in " + HOME, e);
      return Optional.empty();
    }
  }

  private static ExecutorService daemons(String name, int threads) {
    java.util.concurrent.ThreadFactory factory =
        work -> {
          Thread thread = new Thread(work, name);
          thread.setDaemon(true);
          return thread;
        };
    return threads == 0
        ? Executors.newCachedThreadPool(factory)
        : Executors.newFixedThreadPool(threads, factory);
  }
}
