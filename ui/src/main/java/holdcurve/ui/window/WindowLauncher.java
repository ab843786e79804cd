package holdcurve.ui.window;

import holdcurve.file.JobReader;
import holdcurve.infer.Ranker;
import holdcurve.ui.theme.Looks;
import holdcurve.ui.window.frame.NativeFileDialogs;
import holdcurve.ui.window.job.OpenJobModel;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.stage.Stage;

/** Opens the window, or says why there can't be one. */
public final class WindowLauncher {
  private static Optional<String> reason;

  private WindowLauncher() {}

  /**
   * Why no window can be shown here, as one sentence for a person; empty if one can. The graphics
   * are started to find out, at the first call.
   */
  public static synchronized Optional<String> unavailable() {
    if (reason == null) {
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
   * @param ranker asked on a background thread, once a ranking
   * @return why no window could be shown; empty once it has been shown and closed
   */
  public static Optional<String> open(Path jobOrNull, Supplier<Ranker> ranker) {
    Optional<String> why = unavailable();
    if (why.isPresent()) {
      return why;
    }
    CompletableFuture<Void> closed = new CompletableFuture<>();
    Platform.runLater(() -> show(jobOrNull, ranker, closed));
    try {
      closed.join();
    } finally {
      Platform.exit();
    }
    return Optional.empty();
  }

  private static void show(
      Path jobOrNull, Supplier<Ranker> ranker, CompletableFuture<Void> closed) {
    try {
      OpenJobModel model =
          new OpenJobModel(JobReader::read, ranker, background(), Platform::runLater);
      Stage stage = new Stage();
      HoldcurveWindow.fill(stage, model, new Looks(), NativeFileDialogs::new);
      stage.setOnHidden(
          event -> {
            model.ranking().cancel();
            closed.complete(null);
          });
      stage.show();
      if (jobOrNull != null) {
        model.open(jobOrNull);
      }
    } catch (RuntimeException | Error e) {
      closed.completeExceptionally(e);
    }
  }

  private static Executor background() {
    return Executors.newCachedThreadPool(
        work -> {
          Thread thread = new Thread(work, "holdcurve-work");
          thread.setDaemon(true);
          return thread;
        });
  }
}
