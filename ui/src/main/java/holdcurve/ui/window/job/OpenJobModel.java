package holdcurve.ui.window.job;

import holdcurve.check.InputException;
import holdcurve.infer.Ranker;
import holdcurve.job.Job;
import java.lang.System.Logger.Level;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Executor;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/**
 * The job that is open, and what went wrong on the way. Call it on the thread of the screen;
 * reading and ranking run elsewhere. What can't be read leaves the open job as it is.
 */
public final class OpenJobModel {
  private static final System.Logger LOG = System.getLogger(OpenJobModel.class.getName());

  private final Function<Path, Job> reader;
  private final Executor background;
  private final Executor screen;
  private final RankingModel ranking;

  private final ReadOnlyObjectWrapper<Path> file = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyObjectWrapper<Job> job = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");

  private int latestOpening;

  /**
   * @param reader reads a job, or throws {@link InputException}
   * @param ranker asked for once a ranking, on a background thread
   * @param background runs long work
   * @param screen runs things on the thread of the screen
   */
  public OpenJobModel(
      Function<Path, Job> reader, Supplier<Ranker> ranker, Executor background, Executor screen) {
    this.reader = reader;
    this.background = background;
    this.screen = screen;
    this.ranking = new RankingModel(ranker, background, screen, problem::set);
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

  /** By its name. A job renamed to plain {@code .json} is let through: reading it will tell. */
  private static boolean isJobFile(Path path) {
    return path.getFileName() != null
        && path.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".json");
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
      String sentence = path + ": the job can't be opened: " + Trouble.plain(e);
      screen.execute(() -> refused(sentence, opening));
    }
  }

  private void opened(Path path, Job read, int opening) {
    if (opening == latestOpening) {
      ranking.forget();
      file.set(path);
      job.set(read);
      ranking.start(read);
    }
  }

  private void refused(String sentence, int opening) {
    if (opening == latestOpening) {
      problem.set(sentence);
    }
  }

  /** The ranking of the open job. */
  public RankingModel ranking() {
    return ranking;
  }

  /** Where the open job was read from; null while none is open. */
  public ReadOnlyObjectProperty<Path> fileProperty() {
    return file.getReadOnlyProperty();
  }

  /** The open job; null while none is open. */
  public ReadOnlyObjectProperty<Job> jobProperty() {
    return job.getReadOnlyProperty();
  }

  /** What went wrong, as a sentence; empty where nothing did. */
  public ReadOnlyStringProperty problemProperty() {
    return problem.getReadOnlyProperty();
  }
}
