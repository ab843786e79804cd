package holdcurve.ui.window;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.lang.System.Logger.Level;
import java.lang.Thread.UncaughtExceptionHandler;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.logging.Logger;
import javafx.application.Platform;

/**
 * Starts JavaFX without letting it die noisily. Where it can't start, it throws on the calling
 * thread or on one of its own, and prints stack traces; all that is caught here and kept for the
 * log.
 */
final class ToolkitStart {
  private static final long PATIENCE_S = 60;
  private static final System.Logger LOG = System.getLogger(ToolkitStart.class.getName());

  /** Held so that its level lasts. It warns of class-path starts, which is how we start. */
  private static final Logger JAVAFX_LOG = Logger.getLogger("javafx");

  private ToolkitStart() {}

  /**
   * @return why it can't be started; empty once it runs
   */
  static Optional<String> start() {
    JAVAFX_LOG.setLevel(java.util.logging.Level.SEVERE);
    PrintStream errors = System.err;
    UncaughtExceptionHandler handler = Thread.getDefaultUncaughtExceptionHandler();
    ByteArrayOutputStream printed = new ByteArrayOutputStream();
    CompletableFuture<Void> started = new CompletableFuture<>();
    System.setErr(new PrintStream(printed, true, StandardCharsets.UTF_8));
    Thread.setDefaultUncaughtExceptionHandler((thread, e) -> started.completeExceptionally(e));
    try {
      return start(started);
    } finally {
      System.setErr(errors);
      Thread.setDefaultUncaughtExceptionHandler(handler);
      LOG.log(Level.DEBUG, () -> printed.toString(StandardCharsets.UTF_8));
    }
  }

  private static Optional<String> start(CompletableFuture<Void> started) {
    try {
      startOrJoin(() -> started.complete(null));
      started.get(PATIENCE_S, TimeUnit.SECONDS);
      return Optional.empty();
    } catch (ExecutionException e) {
      return Optional.of(DisplayCheck.because(e.getCause()));
    } catch (TimeoutException e) {
      return Optional.of("No window can be shown because the display doesn't answer.");
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      return Optional.of("No window can be shown because the start was interrupted.");
    } catch (RuntimeException | LinkageError e) {
      return Optional.of(DisplayCheck.because(e));
    }
  }

  private static void startOrJoin(Runnable then) {
    try {
      Platform.startup(then);
    } catch (IllegalStateException alreadyRunning) {
      Platform.runLater(then);
    }
  }
}
