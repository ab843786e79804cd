package holdcurve.ui.window;

import holdcurve.common.input.InputException;
import holdcurve.common.input.NoAnswerException;
import holdcurve.file.SafeFile;
import holdcurve.ui.window.frame.Pictures;
import holdcurve.ui.window.job.OpenJobModel;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.concurrent.CompletableFuture;
import javafx.animation.PauseTransition;
import javafx.stage.Stage;
import javafx.util.Duration;

/** A picture of the window, taken once the job is open and ranked; then the window is closed. */
final class WindowPicture {
  private static final Duration BETWEEN_LOOKS = Duration.millis(250);

  /** What a ranking changes is drawn by then. */
  private static final int QUIET_LOOKS = 3;

  private final Stage stage;
  private final OpenJobModel model;
  private final CompletableFuture<Void> closed;
  private final StartTimes times;
  private int quiet;

  /**
   * @param times told of the answer, and printed with the picture
   * @param closed completed by the window when it is gone; with an exception where there is no
   *     picture
   */
  WindowPicture(Stage stage, OpenJobModel model, StartTimes times, CompletableFuture<Void> closed) {
    this.stage = stage;
    this.model = model;
    this.times = times;
    this.closed = closed;
    model
        .ranking()
        .resultProperty()
        .addListener((property, before, now) -> times.answered(now != null));
  }

  /** Call it on the thread of the screen when the job has been asked for. */
  void take(Path file) {
    PauseTransition pause = new PauseTransition(BETWEEN_LOOKS);
    pause.setOnFinished(event -> look(file));
    pause.play();
  }

  private void look(Path file) {
    String problem = model.problemProperty().get();
    if (!problem.isEmpty()) {
      closed.completeExceptionally(new NoAnswerException("No picture was taken: " + problem));
      stage.close();
      return;
    }
    boolean settled = model.jobProperty().get() != null && !model.ranking().busyProperty().get();
    quiet = settled ? quiet + 1 : 0;
    if (quiet < QUIET_LOOKS) {
      take(file);
      return;
    }
    try {
      SafeFile.write(file, Pictures.png(stage.getScene().snapshot(null)));
      System.out.println(times);
    } catch (InputException | UncheckedIOException e) {
      closed.completeExceptionally(e);
    } finally {
      stage.close();
    }
  }
}
