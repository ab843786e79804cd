package holdcurve.ui.window.job;

import holdcurve.advice.check.RepairCheck;
import holdcurve.advice.plan.Procedure;
import holdcurve.bench.flowsheet.BenchReport;
import holdcurve.common.input.InputException;
import holdcurve.common.text.Titles;
import holdcurve.file.JobWriter;
import holdcurve.inference.ranking.Ranker;
import holdcurve.record.job.CurrentTests;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.job.RankableTests;
import holdcurve.record.job.Repair;
import holdcurve.record.job.Timeline;
import holdcurve.record.log.Reading;
import java.lang.System.Logger.Level;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javafx.beans.binding.BooleanBinding;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

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
  private final ObjectProperty<BenchReport> reportedSheet = new SimpleObjectProperty<>();
  private final PressureFormat pressures = new PressureFormat();
  private final EditedJob edited = new EditedJob();
  private final QuestionModel questions = new QuestionModel();

  private final ReadOnlyStringWrapper problem = new ReadOnlyStringWrapper("");

  private final WindowLock claim = new WindowLock();
  private final ReadOnlyBooleanWrapper elsewhere = new ReadOnlyBooleanWrapper();

  private final StringProperty hold = new SimpleStringProperty("");
  private final ObjectProperty<PlannedSteps> planned = new SimpleObjectProperty<>();
  private final ComputedResult<RepairCheck> check = new ComputedResult<>(edited.jobProperty());
  private final RecentJobs recent = new RecentJobs();

  private int latestOpening;

  /** How many savings are under way. */
  private int savings;

  private Runnable afterSaving = () -> {};

  private final List<Supplier<Optional<String>>> keptNowhere = new ArrayList<>();
  private Predicate<Path> shipped = path -> false;
  private Supplier<String> page = () -> "";
  private Consumer<Runnable> saver =
      then -> {
        if (edited.fileProperty().get() != null) {
          saveAs(edited.fileProperty().get(), then);
        }
      };

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
    this.ranking = new RankingModel(ranker, background, screen, problem::set, edited.jobProperty());
    this.ranking.resultProperty().addListener((property, before, now) -> noteRecent());
    check.valueProperty().addListener((property, before, now) -> noteRecent());
  }

  /** Only what stands in a file can be opened again. */
  private void noteRecent() {
    Path path = edited.fileProperty().get();
    if (path != null && edited.now() != null) {
      List<HoldTest> tests = edited.now().tests();
      String date = tests.isEmpty() ? "" : tests.get(tests.size() - 1).date();
      String title = Titles.shown(edited.now().title());
      recent.note(
          new RecentJobs.Recent(path.toAbsolutePath(), title, date, OpenJobPath.state(this)));
    }
  }

  /**
   * Says which jobs are shipped with the program. They are only read: saving one asks for a place.
   */
  public void examplesAre(Predicate<Path> which) {
    shipped = which;
  }

  /** Says how to find out on which page something is done. */
  public void changesAreMadeOn(Supplier<String> title) {
    page = title;
  }

  /**
   * Says how to save the open job when it is about to be left, asking for a place if need be.
   *
   * @param how given what is to be done once it is saved
   */
  public void saveBeforeLeaving(Consumer<Runnable> how) {
    saver = how;
  }

  /**
   * Does what would leave the open job behind. If something of it stands in no file, that is asked
   * first.
   */
  public void leave(Runnable next) {
    if (!edited.hasSomethingToLose()) {
      next.run();
      return;
    }
    questions.ask(
        "'"
            + Titles.shown(edited.now().title())
            + "' is not saved."
            + (keeper == Keeper.NONE ? "" : " Left so, it is offered at the next start."),
        new QuestionModel.Answer("Save it first", () -> saver.accept(next), true),
        new QuestionModel.Answer("Leave it unsaved", next, false));
  }

  /** Before the window closes, {@code kept} says in a sentence what would be lost, if anything. */
  public void askBeforeClosing(Supplier<Optional<String>> kept) {
    keptNowhere.add(kept);
  }

  /** Does what closes the window, once all that would be lost was asked about. */
  public void leaveForGood(Runnable next) {
    leave(
        () ->
            keptNowhere.stream()
                .flatMap(kept -> kept.get().stream())
                .findFirst()
                .ifPresentOrElse(
                    sentence ->
                        questions.ask(
                            sentence, new QuestionModel.Answer("Close without it", next, false)),
                    next));
  }

  /** Reads a job and, once it is read, ranks it. Asks first if that would leave unsaved work. */
  public void open(Path path) {
    leave(() -> openNow(path));
  }

  private void openNow(Path path) {
    int opening = ++latestOpening;
    problem.set("");
    background.execute(() -> read(path, opening));
  }

  /**
   * Reads the open job again, and asks first if that would leave changes; nothing happens where it
   * has no file.
   */
  public void reload() {
    if (edited.fileProperty().get() != null) {
      open(edited.fileProperty().get());
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
      boolean example = shipped.test(path);
      boolean own = claim.take(example ? null : path);
      EditedJob.Sitting next =
          example ? EditedJob.Sitting.example(read) : EditedJob.Sitting.own(read, path, read);
      screen.execute(() -> opened(next, own, opening));
    } catch (InputException e) {
      screen.execute(() -> refused(e.getMessage(), opening));
    } catch (RuntimeException | Error e) {
      LOG.log(Level.ERROR, "reading " + path, e);
      String sentence = path + ": the job can't be opened: " + FailureText.plain(e);
      screen.execute(() -> refused(sentence, opening));
    }
  }

  private void opened(EditedJob.Sitting next, boolean own, int opening) {
    if (opening == latestOpening) {
      take(next);
      elsewhere.set(!own);
      rankIfPossible();
    }
  }

  private void take(EditedJob.Sitting next) {
    forget();
    keeper.turnedTo(next);
    edited.take(next);
    noteRecent();
  }

  /** What was found out about the job before. */
  private void forget() {
    ranking.forget();
    check.forget();
    planned.set(null);
    work.cancelAll();
  }

  /**
   * Begins work on a job that stands in no file as it is. Asks first if that would leave unsaved
   * work.
   *
   * @param fileOrNull where it came from; saving goes there
   */
  public void begin(Job begun, Path fileOrNull) {
    leave(() -> beginNow(begun, fileOrNull));
  }

  /** Likewise, once it is asked. */
  void beginNow(Job begun, Path fileOrNull) {
    problem.set("");
    take(EditedJob.Sitting.own(begun, fileOrNull, null));
    keeper.changed(begun, fileOrNull);
    claimFile();
    rankIfPossible();
  }

  /** The open job was turned to without its file being read. */
  private void claimFile() {
    int opening = ++latestOpening;
    Path fileOrNull = edited.fileProperty().get();
    elsewhere.set(false);
    background.execute(() -> claimBegun(fileOrNull, opening));
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
    change(what, page.get(), change);
  }

  /** Likewise, where every page shows it. */
  public void changeAnywhere(String what, UnaryOperator<Job> change) {
    change(what, "", change);
  }

  private void change(String what, String where, UnaryOperator<Job> change) {
    if (edited.alter(what, where, change)) {
      keep();
    }
  }

  private void keep() {
    if (edited.unsaved().get()) {
      keeper.changed(edited.now(), edited.fileProperty().get());
    } else {
      keeper.saved(edited.now(), edited.fileProperty().get());
    }
  }

  /** Adds a reading to a test; of all changes the one that must never be lost. */
  public void addReading(String test, Reading reading) {
    Job before = edited.now();
    boolean first = !edited.unsaved().get();
    boolean added =
        edited.alter(
            "reading",
            page.get(),
            was ->
                JobEdits.change(
                    was,
                    test,
                    hold -> TestEdits.withLog(hold, JobEdits.withReading(hold.log(), reading))));
    if (added && first) {
      keeper.changed(before, edited.fileProperty().get());
    }
    if (added) {
      keeper.read(test, reading);
    }
  }

  public void undo() {
    go(edited::undo);
  }

  public void redo() {
    go(edited::redo);
  }

  private void go(BooleanSupplier step) {
    EditedJob.Sitting before = edited.sitting();
    if (!step.getAsBoolean()) {
      return;
    }
    boolean other = edited.sitting() != before;
    if (other) {
      forget();
      keeper.turnedTo(edited.sitting());
    }
    keep();
    if (other) {
      claimFile();
      rankIfPossible();
    }
  }

  /** Saves the open job where it came from; only where {@link #fileProperty} knows that. */
  public void save() {
    if (edited.now() != null && edited.fileProperty().get() != null) {
      saveAs(edited.fileProperty().get());
    }
  }

  /** Saves the open job. */
  public void saveAs(Path target) {
    saveAs(target, () -> {});
  }

  /**
   * Likewise.
   *
   * @param then run once it is saved, if it is still the open job
   */
  public void saveAs(Path target, Runnable then) {
    Job saved = edited.now();
    EditedJob.Sitting savedOf = edited.sitting();
    savings++;
    work.startLasting(
            "Saving",
            progress -> {
              claim.need(target);
              JobWriter.write(target, saved);
              return target;
            },
            path -> {
              if (edited.sitting() == savedOf) {
                stands(saved, path);
                then.run();
              }
              savingEnded();
            })
        .ifBrokenOff(this::savingEnded);
  }

  /** What was changed while it was saved still has to be kept. */
  private void stands(Job saved, Path path) {
    elsewhere.set(false);
    edited.stands(saved, path);
    noteRecent();
    keep();
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
    } else if (edited.now() != null) {
      unproved().map(Timeline::holdAgain).ifPresent(problem::set);
    }
  }

  /** The last repair of the open job, if no hold followed it yet. */
  public Optional<Repair> unproved() {
    try {
      return edited.now() == null ? Optional.empty() : RankableTests.unproved(edited.now());
    } catch (InputException e) {
      LOG.log(Level.DEBUG, "repairs and holds can't be put in order; a ranking says so", e);
      return Optional.empty();
    }
  }

  /**
   * Adds a hold and turns to it; can be taken back.
   *
   * @param wanted its name, if that is free
   */
  public void beginHold(String wanted, Set<String> clamped) {
    String id = JobEdits.freeId(edited.now(), wanted);
    change("new hold", job -> JobEdits.addTest(job, id, clamped));
    hold.set(id);
  }

  /** Turns to a hold that nothing was read in yet; adds one if there is none. */
  public void startHold() {
    Optional<HoldTest> empty =
        edited.now().tests().stream().filter(test -> test.log().readings().isEmpty()).findFirst();
    if (empty.isPresent()) {
      hold.set(empty.get().id());
    } else {
      beginHold("hold", Set.of());
    }
  }

  /**
   * Makes a test ready that a plan advises: a hold with its clamps, and its steps beside it. Other
   * tests stand beside the hold there is.
   */
  public void doTest(Procedure procedure) {
    if (procedure.isHold()) {
      beginHold(procedure.name(), procedure.clamped());
    }
    planned.set(
        new PlannedSteps(hold.get(), procedure.name(), procedure.steps(), procedure.cautions()));
  }

  /** The steps of the test that was chosen last; null for none. */
  public ReadOnlyObjectProperty<PlannedSteps> plannedProperty() {
    return planned;
  }

  /** The check of the last holds. */
  public ComputedResult<RepairCheck> check() {
    return check;
  }

  /** Jobs that were open lately. */
  public RecentJobs recent() {
    return recent;
  }

  /** Id of the hold that is being read, for all pages; empty for none. */
  public StringProperty holdProperty() {
    return hold;
  }

  private boolean rankIfPossible() {
    Job rankable = RankableTests.of(edited.now());
    if (rankable.tests().isEmpty()) {
      return false;
    }
    problem.set("");
    if (unproved().isPresent()) {
      return true;
    }
    try {
      boolean whole = rankable.tests().size() == edited.now().tests().size();
      ranking.start(CurrentTests.of(whole ? edited.now() : rankable), edited.now());
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

  /** Bench sheet that goes into the report of the job; null for none. */
  public ObjectProperty<BenchReport> reportedSheetProperty() {
    return reportedSheet;
  }

  /** In which unit pressures are shown. */
  public PressureFormat pressures() {
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

  /** Where the open job was read from or saved to; null for none, and for a shipped job. */
  public ReadOnlyObjectProperty<Path> fileProperty() {
    return edited.fileProperty().getReadOnlyProperty();
  }

  /** Whether the open job is a shipped one that was not saved anywhere yet. */
  public ReadOnlyBooleanProperty exampleProperty() {
    return edited.exampleProperty().getReadOnlyProperty();
  }

  /** What the person at the window is asked. */
  public QuestionModel questions() {
    return questions;
  }

  /** Title of the page where {@link #undo} would take something back; empty for any. */
  public String undoPage() {
    return edited.undoPage();
  }

  /** Title of the page where {@link #redo} would do something again; empty for any. */
  public String redoPage() {
    return edited.redoPage();
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
