package holdcurve.ui.window.job;

import holdcurve.check.InputException;
import holdcurve.file.JobWriter;
import holdcurve.infer.Ranker;
import holdcurve.job.CurrentTests;
import holdcurve.job.Job;
import holdcurve.log.Reading;
import java.lang.System.Logger.Level;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Executor;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;

/**
 * The job that is open, what was changed in it, and what went wrong on the way. Call it on the
 * thread of the screen; reading, saving and ranking run elsewhere. What can't be read leaves the
 * open job as it is. Every change goes through {@link #change} and can be taken back.
 */
public final class OpenJobModel {
  private static final System.Logger LOG = System.getLogger(OpenJobModel.class.getName());

  private final Function<Path, Job> reader;
  private final Executor background;
  private final Executor screen;
  private final Keeper keeper;
  private final RankingModel ranking;
  private final WorkModel work;
  private final Pressures pressures = new Pressures();
  private final EditedJob edited = new EditedJob();

  private final ReadOnlyObjectWrapper<Path> file = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");

  private final Claim claim = new Claim();
  private final ReadOnlyBooleanWrapper elsewhere = new ReadOnlyBooleanWrapper();

  private int latestOpening;

  /** How many savings are under way. */
  private int savings;

  private Runnable afterSaving = () -> {};

  /** Like the other, keeping nothing in case of a crash. */
  public OpenJobModel(
      Function<Path, Job> reader, Supplier<Ranker> ranker, Executor background, Executor screen) {
    this(reader, ranker, background, screen, Keeper.NONE);
  }

  /**
   * @param reader reads a job, or throws {@link InputException}
   * @param ranker asked for once a ranking, on a background thread
   * @param background runs long work
   * @param screen runs things on the thread of the screen
   * @param keeper told of every change
   */
  public OpenJobModel(
      Function<Path, Job> reader,
      Supplier<Ranker> ranker,
      Executor background,
      Executor screen,
      Keeper keeper) {
    this.reader = reader;
    this.background = background;
    this.screen = screen;
    this.keeper = keeper;
    this.work = new WorkModel(background, screen, problem::set);
    this.ranking = new RankingModel(ranker, background, screen, problem::set);
  }

  /** Reads a job and, once it is read, ranks it. */
  public void open(Path path) {
    int opening = ++latestOpening;
    problem.set("");
    background.execute(() -> read(path, opening));
  }

  /** Reads the open job again, dropping changes; nothing happens where it has no file. */
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
      boolean own = claim.take(path);
      screen.execute(() -> opened(path, read, own, opening));
    } catch (InputException e) {
      screen.execute(() -> refused(e.getMessage(), opening));
    } catch (RuntimeException | Error e) {
      LOG.log(Level.ERROR, "reading " + path, e);
      String sentence = path + ": the job can't be opened: " + Trouble.plain(e);
      screen.execute(() -> refused(sentence, opening));
    }
  }

  private void opened(Path path, Job read, boolean own, int opening) {
    if (opening == latestOpening) {
      take(read, path, read);
      elsewhere.set(!own);
      rankIfPossible();
    }
  }

  private void take(Job taken, Path path, Job stands) {
    ranking.forget();
    work.cancelAll();
    file.set(path);
    edited.take(taken, stands);
  }

  /**
   * Begins work on a job that stands in no file as it is.
   *
   * @param fileOrNull where it came from; saving goes there
   */
  public void begin(Job begun, Path fileOrNull) {
    int opening = ++latestOpening;
    problem.set("");
    take(begun, fileOrNull, null);
    elsewhere.set(false);
    background.execute(() -> claimBegun(fileOrNull, opening));
    keeper.changed(begun, fileOrNull);
    rankIfPossible();
  }

  private void claimBegun(Path fileOrNull, int opening) {
    boolean own = claim.take(fileOrNull);
    screen.execute(
        () -> {
          if (opening == latestOpening) {
            elsewhere.set(!own);
          }
        });
  }

  /** From now on two windows on one job are told of each other. */
  public void claimFiles() {
    claim.begin();
  }

  /**
   * The window is closed: stops all work but the saving, and lets go of the job's file after that.
   *
   * @param then run when nothing is being saved any more, on the thread of the screen
   */
  public void close(Runnable then) {
    ranking.cancel();
    work.cancelAll();
    afterSaving =
        () -> {
          claim.end();
          then.run();
        };
    goOnIfSaved();
  }

  private void goOnIfSaved() {
    if (savings == 0) {
      Runnable then = afterSaving;
      afterSaving = () -> {};
      then.run();
    }
  }

  /**
   * Changes the open job; nothing happens where none is open or nothing changes.
   *
   * @param what in words that go after "Undo", such as "clamp on feed-hose"
   */
  public void change(String what, UnaryOperator<Job> change) {
    if (edited.alter(what, change)) {
      keeper.changed(edited.now(), file.get());
    }
  }

  /** Adds a reading to a test; of all changes the one that must never be lost. */
  public void addReading(String test, Reading reading) {
    Job before = edited.now();
    boolean first = !edited.unsaved().get();
    boolean added =
        edited.alter(
            "reading",
            was ->
                JobEdits.change(
                    was,
                    test,
                    hold -> TestEdits.withLog(hold, JobEdits.withReading(hold.log(), reading))));
    if (added && first) {
      keeper.changed(before, file.get());
    }
    if (added) {
      keeper.read(test, reading);
    }
  }

  public void undo() {
    if (edited.undo()) {
      keeper.changed(edited.now(), file.get());
    }
  }

  public void redo() {
    if (edited.redo()) {
      keeper.changed(edited.now(), file.get());
    }
  }

  /** Saves the open job where it came from; only where {@link #fileProperty} knows that. */
  public void save() {
    if (edited.now() != null && file.get() != null) {
      saveAs(file.get());
    }
  }

  /** Saves the open job. */
  public void saveAs(Path target) {
    Job saved = edited.now();
    Job begunWith = edited.takenUp();
    savings++;
    work.startLasting(
            "Saving",
            progress -> {
              claim.need(target);
              JobWriter.write(target, saved);
              return target;
            },
            path -> {
              if (edited.takenUp() == begunWith) {
                stands(saved, path);
              }
              savingEnded();
            })
        .ifBrokenOff(this::savingEnded);
  }

  /** What was changed while it was saved still has to be kept. */
  private void stands(Job saved, Path path) {
    elsewhere.set(false);
    file.set(path);
    edited.stands(saved);
    if (edited.now() == saved) {
      keeper.saved(saved, path);
    } else {
      keeper.changed(edited.now(), path);
    }
  }

  private void savingEnded() {
    savings--;
    goOnIfSaved();
  }

  /** Ranks the open job as it is now, or says what it takes. */
  public void rank() {
    if (edited.now() != null && !rankIfPossible()) {
      problem.set(
          "A ranking needs a hold with at least three readings after the pump stopped: take them on"
              + " the page Hold tests, then press F5.");
    }
  }

  private boolean rankIfPossible() {
    Job rankable = JobEdits.rankable(edited.now());
    if (rankable.tests().isEmpty()) {
      return false;
    }
    problem.set("");
    try {
      boolean whole = rankable.tests().size() == edited.now().tests().size();
      ranking.start(CurrentTests.of(whole ? edited.now() : rankable));
    } catch (InputException e) {
      problem.set(e.getMessage());
    }
    return true;
  }

  /** Says in a sentence that something went wrong. */
  public void report(String sentence) {
    problem.set(sentence);
  }

  private void refused(String sentence, int opening) {
    if (opening == latestOpening) {
      problem.set(sentence);
    }
  }

  /** Work in the background for any page. */
  public WorkModel work() {
    return work;
  }

  /** In which unit pressures are shown. */
  public Pressures pressures() {
    return pressures;
  }

  /** What {@link #undo} would take back; empty for nothing. */
  public ReadOnlyStringProperty undoNameProperty() {
    return edited.undoNameProperty().getReadOnlyProperty();
  }

  /** What {@link #redo} would do again; empty for nothing. */
  public ReadOnlyStringProperty redoNameProperty() {
    return edited.redoNameProperty().getReadOnlyProperty();
  }

  /** Whether the open job differs from what stands in its file. */
  public BooleanBinding unsaved() {
    return edited.unsaved();
  }

  /** The ranking of the open job. */
  public RankingModel ranking() {
    return ranking;
  }

  /** Where the open job was read from; null while none is open. */
  public ReadOnlyObjectProperty<Path> fileProperty() {
    return file.getReadOnlyProperty();
  }

  /** Whether another window works on the open job: then it can only be saved under another name. */
  public ReadOnlyBooleanProperty elsewhereProperty() {
    return elsewhere.getReadOnlyProperty();
  }

  /** The open job; null while none is open. */
  public ReadOnlyObjectProperty<Job> jobProperty() {
    return edited.jobProperty().getReadOnlyProperty();
  }

  /** The open job as it was when it was opened or begun: changes when another is. */
  public ReadOnlyObjectProperty<Job> takenUpProperty() {
    return edited.takenUpProperty().getReadOnlyProperty();
  }

  /** What went wrong, as a sentence; empty where nothing did. */
  public ReadOnlyStringProperty problemProperty() {
    return problem.getReadOnlyProperty();
  }
}
