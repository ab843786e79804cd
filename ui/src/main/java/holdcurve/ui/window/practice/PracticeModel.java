package holdcurve.ui.window.practice;

import holdcurve.common.message.Message;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.ExerciseReader;
import holdcurve.inference.ranking.Ranker;
import holdcurve.physics.circuit.Circuit;
import holdcurve.record.finding.Finding;
import holdcurve.record.job.HoldTest;
import holdcurve.record.log.Reading;
import holdcurve.training.Debrief;
import holdcurve.training.Debriefing;
import holdcurve.training.Exercise;
import holdcurve.training.PossibleAnswers.Suspicion;
import holdcurve.training.RandomExercises;
import holdcurve.training.RepairChoice;
import holdcurve.training.RepairScore;
import holdcurve.training.StatedOdds;
import holdcurve.training.Step;
import holdcurve.training.TrainingSession;
import holdcurve.ui.practice.PracticeResults;
import holdcurve.ui.window.job.WorkModel;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import javafx.beans.Observable;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.IntegerBinding;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleIntegerProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/** A learner at a car with a hidden fault. Called on the thread of the screen. */
public final class PracticeModel {
  /** Every second of a hold is worked out, so that the needle moves evenly. */
  private static final int FINEST = 1;

  /**
   * An answer and how sure the learner is of it.
   *
   * @param percent 0 to 100
   */
  public record Sureness(Suspicion answer, IntegerProperty percent) {}

  /**
   * What came of a step, for the list.
   *
   * @param step in words
   * @param came one line each
   */
  public record Entry(String step, List<Message> came) {}

  /**
   * A hold under way.
   *
   * @param times since the pump stop [s]
   * @param needle where it stands then [Pa gauge]
   */
  public record Watch(TrainingSession.Taken taken, double[] times, double[] needle) {
    /** Where the needle stands at a moment [Pa gauge]. */
    public double at(double seconds) {
      int i = (int) Math.min(needle.length - 1, Math.max(0, Math.floor(seconds / FINEST)));
      int next = Math.min(needle.length - 1, i + 1);
      double share = Math.min(1, Math.max(0, seconds / FINEST - i));
      return needle[i] + share * (needle[next] - needle[i]);
    }

    /** How long it goes on [s]. */
    public double duration() {
      return times[times.length - 1];
    }
  }

  private final WorkModel work;
  private final Supplier<FaultCatalogue> catalogue;
  private final Function<FaultCatalogue, Ranker> ranker;
  private final ObjectProperty<TrainingSession> session = new SimpleObjectProperty<>();
  private final ObjectProperty<Watch> watch = new SimpleObjectProperty<>();
  private final ObjectProperty<Debrief> debrief = new SimpleObjectProperty<>();
  private final ReadOnlyObjectWrapper<RepairChoice> repairs = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyObjectWrapper<RepairScore> repair = new ReadOnlyObjectWrapper<>();
  private final ReadOnlyStringWrapper named = new ReadOnlyStringWrapper("");
  private final ReadOnlyStringWrapper saved = new ReadOnlyStringWrapper("");
  private final BooleanProperty busy = new SimpleBooleanProperty();
  private final ReadOnlyDoubleWrapper used = new ReadOnlyDoubleWrapper();
  private final ObservableList<Entry> entries = FXCollections.observableArrayList();
  private final ObservableList<Sureness> answers =
      FXCollections.observableArrayList(one -> new Observable[] {one.percent()});
  private final IntegerBinding stated =
      Bindings.createIntegerBinding(
          () -> answers.stream().mapToInt(one -> one.percent().get()).sum(), answers);

  private Debrief prepared;
  private List<RepairChoice.Option> done;

  /**
   * @param work runs what takes long
   * @param catalogue faults that a car may have
   * @param ranker judges the evidence for the debrief
   */
  public PracticeModel(
      WorkModel work, Supplier<FaultCatalogue> catalogue, Function<FaultCatalogue, Ranker> ranker) {
    this.work = work;
    this.catalogue = catalogue;
    this.ranker = ranker;
  }

  /** Takes an exercise from a file. */
  public void open(Path file) {
    start("Opening the exercise", () -> ExerciseReader.read(file));
  }

  /**
   * Makes a car up.
   *
   * @param level from 1, easy, to 5, nasty
   */
  public void makeUp(Supplier<Circuit> circuit, int level, long seed) {
    start(
        "Making up a car",
        () -> new RandomExercises(circuit.get(), catalogue.get()).of(level, seed));
  }

  private void start(String what, Supplier<Exercise> exercise) {
    work.start(what, progress -> new TrainingSession(exercise.get(), catalogue.get()), this::begin);
  }

  private void begin(TrainingSession fresh) {
    entries.clear();
    forgetAnswer();
    used.set(0);
    watch.set(null);
    debrief.set(null);
    answers.setAll(
        fresh.answers().stream()
            .map(answer -> new Sureness(answer, new SimpleIntegerProperty()))
            .toList());
    session.set(fresh);
  }

  /** Back to the choice of a car. */
  public void leave() {
    session.set(null);
    watch.set(null);
    debrief.set(null);
    forgetAnswer();
  }

  private void forgetAnswer() {
    prepared = null;
    done = null;
    repairs.set(null);
    repair.set(null);
    saved.set("");
  }

  /** Whether a step can be done now. */
  public boolean canTake(Step step) {
    return session.get() != null
        && debrief.get() == null
        && repairs.get() == null
        && !busy.get()
        && watch.get() == null
        && stated.get() <= 100
        && session.get().hasTimeFor(step);
  }

  /** Does a step; a hold is then watched until {@link #stopWatching}. */
  public void take(Step step) {
    if (!canTake(step)) {
      return;
    }
    TrainingSession at = session.get();
    StatedOdds before = belief();
    busyWith(work.start("At the car", progress -> watched(at, at.take(step, before)), this::taken));
  }

  private static Watch watched(TrainingSession at, TrainingSession.Taken taken) {
    if (!(taken.step() instanceof Step.Hold hold)) {
      return new Watch(taken, new double[1], new double[1]);
    }
    int seconds = (int) Math.round(hold.watched() * 60);
    double[] times =
        IntStream.rangeClosed(0, seconds / FINEST).mapToDouble(i -> i * FINEST).toArray();
    double[] needle = at.car().needle(hold, at.taken().size() - 1, times);
    return new Watch(taken, times, needle);
  }

  private void taken(Watch now) {
    used.set(session.get().used());
    if (now.taken().hold().isPresent()) {
      watch.set(now);
    } else {
      entries.add(
          new Entry(
              now.taken().step().words(),
              now.taken().found().stream().map(Finding::message).toList()));
    }
  }

  /** The hold is over: its readings go into the list. */
  public void stopWatching() {
    Watch over = watch.get();
    if (over != null) {
      watch.set(null);
      HoldTest hold = over.taken().hold().orElseThrow();
      entries.add(
          new Entry(
              over.taken().step().words(),
              hold.log().hold().stream().map(PracticeModel::line).toList()));
    }
  }

  private static Message line(Reading reading) {
    int seconds = (int) Math.round(reading.time());
    return Message.of(
        "%d:%02d  %s", seconds / 60, seconds % 60, Message.pressure(reading.pressure()));
  }

  /** What the learner thinks now; answers left at 0 share what is left evenly. */
  public StatedOdds belief() {
    Map<String, Double> said = new LinkedHashMap<>();
    answers.stream()
        .filter(one -> one.percent().get() > 0)
        .forEach(one -> said.put(one.answer().id(), one.percent().get() / 100.0));
    return session.get().belief(said);
  }

  /** Gives the answer. What to repair is asked for while the debrief is prepared. */
  public void answer() {
    if (session.get() == null || busy.get() || watch.get() != null || stated.get() > 100) {
      return;
    }
    TrainingSession at = session.get();
    StatedOdds last = belief();
    forgetAnswer();
    named.set(words(at, last.leading()));
    repairs.set(RepairChoice.of(at, last.leading()));
    busyWith(
        work.start(
                "Preparing the debrief",
                progress ->
                    new Debriefing(ranker.apply(catalogue.get()), catalogue.get(), 1)
                        .of(at, last, progress),
                this::prepared)
            .ifBrokenOff(this::forgetAnswer));
  }

  private static String words(TrainingSession at, String id) {
    return at.answers().stream()
        .filter(one -> one.id().equals(id))
        .map(Suspicion::words)
        .findFirst()
        .orElse(id);
  }

  private void prepared(Debrief ready) {
    prepared = ready;
    showDebrief();
  }

  /** Does the repairs chosen; the debrief follows when it is ready. */
  public void repair(List<RepairChoice.Option> chosen) {
    if (repairs.get() != null && !chosen.isEmpty()) {
      done = List.copyOf(chosen);
      showDebrief();
    }
  }

  private void showDebrief() {
    if (prepared != null && done != null) {
      repair.set(repairs.get().judge(done, prepared));
      repairs.set(null);
      debrief.set(prepared);
    }
  }

  /** Adds the score to a class's file, in the background. */
  public void saveScore(Path file, String mark) {
    Exercise exercise = session.get().exercise();
    Debrief told = debrief.get();
    Optional<RepairScore> repaired = Optional.ofNullable(repair.get());
    work.start(
        "Writing the score",
        progress -> {
          PracticeResults.add(file, exercise, told, repaired, mark);
          return file;
        },
        written -> saved.set("Added to " + written.getFileName() + "."));
  }

  /** However the work ends, done, failed or stopped, the page can be used again. */
  private void busyWith(WorkModel.Item item) {
    busy.bind(Bindings.createBooleanBinding(() -> work.running().contains(item), work.running()));
  }

  /** The learner's session; null before a car is chosen. */
  public ObjectProperty<TrainingSession> session() {
    return session;
  }

  /** The hold that is being watched; null if none. */
  public ObjectProperty<Watch> watch() {
    return watch;
  }

  /** The debrief; null before the answer. */
  public ObjectProperty<Debrief> debrief() {
    return debrief;
  }

  /** What may be done about the car; null before the answer, and after the repair. */
  public ReadOnlyObjectProperty<RepairChoice> repairs() {
    return repairs.getReadOnlyProperty();
  }

  /** What was named, in words. */
  public ReadOnlyStringProperty named() {
    return named.getReadOnlyProperty();
  }

  /** What the repairs done are worth; null before. */
  public ReadOnlyObjectProperty<RepairScore> repairScore() {
    return repair.getReadOnlyProperty();
  }

  /** Where the score was added, in a sentence; empty for nowhere yet. */
  public ReadOnlyStringProperty saved() {
    return saved.getReadOnlyProperty();
  }

  /** Whether something is being worked out. */
  public BooleanProperty busy() {
    return busy;
  }

  /** Minutes spent. */
  public ReadOnlyDoubleProperty used() {
    return used.getReadOnlyProperty();
  }

  /** What has been found out, oldest first. */
  public ObservableList<Entry> entries() {
    return entries;
  }

  /** What can be answered, and how sure the learner is of each. */
  public ObservableList<Sureness> answers() {
    return answers;
  }

  /** Sum of the certainties [%]. */
  public IntegerBinding stated() {
    return stated;
  }
}
