package holdcurve.ui.window.job;

import holdcurve.file.InputException;
import holdcurve.infer.Ranker;
import holdcurve.infer.Ranking;
import holdcurve.job.Job;
import java.lang.System.Logger.Level;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/**
 * The job that is open, its ranking, and what goes on meanwhile. Call it on the thread of the
 * screen; reading and ranking run elsewhere. What can't be read leaves the open job as it is.
 */
public final class OpenJobModel {
  /** Same job, same answer: the window always draws the same random numbers. */
  private static final long SEED = 1;

  private static final System.Logger LOG = System.getLogger(OpenJobModel.class.getName());

  private final Function<Path, Job> reader;
  private final Supplier<Ranker> ranker;
  private final Executor background;
  private final Executor screen;

  private final ReadOnlyObjectWrapper<Path> file = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyObjectWrapper<Job> job = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyObjectWrapper<Ranking> ranking = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");
  private final ReadOnlyBooleanWrapper busy = new ReadOnlyBooleanWrapper();
  private final ReadOnlyDoubleWrapper progress = new ReadOnlyDoubleWrapper();
  private final ReadOnlyStringWrapper step = new ReadOnlyStringWrapper("");

  private int latestOpening;
  private RankingRun run;

  /**
   * @param reader reads a job, or throws {@link InputException}
   * @param ranker asked for once a ranking, on a background thread
   * @param background runs long work
   * @param screen runs things on the thread of the screen
   */
  public OpenJobModel(
      Function<Path, Job> reader, Supplier<Ranker> ranker, Executor background, Executor screen) {
    this.reader = reader;
    this.ranker = ranker;
    this.background = background;
    this.screen = screen;
  }

  /** Reads a job and, once it is read, ranks it. */
  public void open(Path path) {
    int opening = ++latestOpening;
    problem.set("");
    background.execute(() -> read(path, opening));
  }

  /** Reads the open job again; nothing happens where none is open. */
  public void reload() {
    if (file.get() != null) {
      open(file.get());
    }
  }

  /** Opens what was dropped on the window if it is one job file. */
  public void openDropped(List<Path> paths) {
    if (paths.size() == 1 && isJobFile(paths.get(0))) {
      open(paths.get(0));
    } else {
      problem.set("Drop one job file here: its name ends in .job.json.");
    }
  }

  /** Whether a path looks like a job file by its name. */
  public static boolean isJobFile(Path path) {
    return path.getFileName() != null
        && path.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".json");
  }

  /** Stops the ranking under way, if any; the readings stay on view. */
  public void cancel() {
    if (run != null) {
      run.cancel();
      run = null;
      busy.set(false);
    }
  }

  public void dismissProblem() {
    problem.set("");
  }

  private void read(Path path, int opening) {
    try {
      Job read = reader.apply(path);
      screen.execute(() -> opened(path, read, opening));
    } catch (InputException e) {
      screen.execute(() -> refused(e.getMessage(), opening));
    } catch (RuntimeException | Error e) {
      LOG.log(Level.ERROR, "reading " + path, e);
      screen.execute(() -> refused(path + ": the job can't be opened: " + plain(e), opening));
    }
  }

  private void opened(Path path, Job read, int opening) {
    if (opening != latestOpening) {
      return;
    }
    cancel();
    ranking.set(null);
    file.set(path);
    job.set(read);
    rank(read);
  }

  private void refused(String sentence, int opening) {
    if (opening == latestOpening) {
      problem.set(sentence);
    }
  }

  private void rank(Job ranked) {
    RankingRun started = new RankingRun(screen, this::progressed);
    run = started;
    progress.set(-1);
    step.set("Starting the ranking");
    busy.set(true);
    background.execute(() -> rank(ranked, started));
  }

  private void rank(Job ranked, RankingRun started) {
    try {
      Ranking result = ranker.get().rank(ranked, SEED, started);
      screen.execute(() -> ended(started, result, ""));
    } catch (CancellationException e) {
      screen.execute(() -> ended(started, null, ""));
    } catch (InputException e) {
      screen.execute(() -> ended(started, null, e.getMessage()));
    } catch (RuntimeException | Error e) {
      LOG.log(Level.ERROR, "ranking " + ranked.title(), e);
      screen.execute(() -> ended(started, null, "The ranking broke off: " + plain(e)));
    }
  }

  private void progressed(RankingRun reporting) {
    if (reporting == run) {
      progress.set(reporting.share());
      step.set(reporting.what());
    }
  }

  private void ended(RankingRun finished, Ranking result, String sentence) {
    if (finished != run) {
      return;
    }
    run = null;
    busy.set(false);
    ranking.set(result);
    if (!sentence.isEmpty()) {
      problem.set(sentence);
    }
  }

  private static String plain(Throwable e) {
    String message = e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    return message.endsWith(".") ? message : message + ".";
  }

  /** Where the open job was read from; null while none is open. */
  public ReadOnlyObjectProperty<Path> fileProperty() {
    return file.getReadOnlyProperty();
  }

  /** The open job; null while none is open. */
  public ReadOnlyObjectProperty<Job> jobProperty() {
    return job.getReadOnlyProperty();
  }

  /** The ranking of the open job; null until it is there. */
  public ReadOnlyObjectProperty<Ranking> rankingProperty() {
    return ranking.getReadOnlyProperty();
  }

  /** What went wrong, as a sentence; empty where nothing did. */
  public ReadOnlyStringProperty problemProperty() {
    return problem.getReadOnlyProperty();
  }

  /** Whether a ranking is under way. */
  public ReadOnlyBooleanProperty busyProperty() {
    return busy.getReadOnlyProperty();
  }

  /** Share of the ranking that is done [-], 0 to 1; negative while that is unknown. */
  public ReadOnlyDoubleProperty progressProperty() {
    return progress.getReadOnlyProperty();
  }

  /** What the ranking is working on. */
  public ReadOnlyStringProperty stepProperty() {
    return step.getReadOnlyProperty();
  }
}
