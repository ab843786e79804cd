package holdcurve.ui.window.practice;

import holdcurve.common.message.Message;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.ExerciseReader;
import holdcurve.physics.circuit.Circuit;
import holdcurve.record.finding.Finding;
import holdcurve.record.log.Reading;
import holdcurve.training.Debrief;
import holdcurve.training.Debriefing;
import holdcurve.training.EvidenceAssessor;
import holdcurve.training.Exercise;
import holdcurve.training.PossibleAnswers.Suspicion;
import holdcurve.training.RandomExercises;
import holdcurve.training.RepairChoice;
import holdcurve.training.StatedOdds;
import holdcurve.training.Step;
import holdcurve.training.TrainingSession;
import holdcurve.ui.practice.Course;
import holdcurve.ui.practice.PracticeResults;
import holdcurve.ui.practice.PracticeResults.Result;
import holdcurve.ui.window.frame.Desk;
import holdcurve.ui.window.job.PracticeLog;
import holdcurve.ui.window.job.PressureFormat;
import holdcurve.ui.window.job.QuestionModel;
import holdcurve.ui.window.job.WorkModel;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import javafx.beans.Observable;
import javafx.beans.binding.Bindings;
import javafx.beans.binding.IntegerBinding;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.IntegerProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyDoubleProperty;
import javafx.beans.property.ReadOnlyDoubleWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleDoubleProperty;
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

  /** How many times faster than in truth a hold may go by. */
  public static final List<Integer> SPEEDS = List.of(1, 20, 60);

  private final WorkModel work;
  private final QuestionModel questions;
  private final PracticeLog log;
  private final PressureFormat pressures;
  private final Supplier<FaultCatalogue> catalogue;
  private final Function<FaultCatalogue, EvidenceAssessor> evidence;
  private final ObservableList<Course.Lesson> lessons = FXCollections.observableArrayList();
  private final DoubleProperty elapsed = new SimpleDoubleProperty();
  private final IntegerProperty speed = new SimpleIntegerProperty(60);
  private final ObservableList<Reading> noted = FXCollections.observableArrayList();
  private final ReadOnlyStringWrapper told = new ReadOnlyStringWrapper("");
  private double typingSince = Double.NaN;
  private final ObjectProperty<TrainingSession> session = new SimpleObjectProperty<>();
  private final ObjectProperty<Watch> watch = new SimpleObjectProperty<>();
  private final ObjectProperty<Debrief> debrief = new SimpleObjectProperty<>();
  private final ReadOnlyObjectWrapper<RepairChoice> repairs = new ReadOnlyObjectWrapper<>();
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

  private String mark = "";
  private WorkModel.Item preparing;
  private Debrief prepared;
  private List<RepairChoice.Option> done;

  /**
   * @param desk runs what takes long, asks, and keeps what was scored
   * @param catalogue faults that a car may have
   * @param evidence judges what was found out, for the debrief
   */
  public PracticeModel(
      Desk desk,
      Supplier<FaultCatalogue> catalogue,
      Function<FaultCatalogue, EvidenceAssessor> evidence) {
    this.work = desk.jobs().work();
    this.questions = desk.jobs().questions();
    this.log = desk.practice();
    this.pressures = desk.jobs().pressures();
    this.catalogue = catalogue;
    this.evidence = evidence;
  }

  /** Lists the exercises that come with the program, once. */
  public void listLessons() {
    if (lessons.isEmpty()) {
      work.start("Listing the exercises", progress -> Course.lessons(), lessons::setAll);
    }
  }

  /** The course, in order; empty before it is listed. */
  public ObservableList<Course.Lesson> lessons() {
    return lessons;
  }

  /** The first exercise of the course without a score; empty where all have one. */
  public Optional<Course.Lesson> nextLesson() {
    return lessons.stream().filter(one -> log.best(one.title()).isEmpty()).findFirst();
  }

  /** What was scored here, newest first. */
  public PracticeLog log() {
    return log;
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
    watch(null);
    debrief.set(null);
    answers.setAll(
        fresh.answers().stream()
            .map(answer -> new Sureness(answer, new SimpleIntegerProperty()))
            .toList());
    session.set(fresh);
  }

  /** Back to the choice of a car. */
  public void leave() {
    if (preparing != null) {
      preparing.cancel();
    }
    session.set(null);
    watch(null);
    debrief.set(null);
    forgetAnswer();
  }

  private void forgetAnswer() {
    prepared = null;
    done = null;
    repairs.set(null);
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

  /** Does a step; a hold is then watched and read until {@link #doneReading}. */
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
      watch(now);
    } else {
      entries.add(
          0,
          new Entry(
              now.taken().step().words(),
              now.taken().found().stream().map(Finding::message).toList()));
    }
  }

  private void watch(Watch now) {
    noted.clear();
    told.set("");
    elapsed.set(0);
    typingSince = Double.NaN;
    watch.set(now);
  }

  /** Lets time go on. At more than one second a second it waits while a reading is typed. */
  public void advance(double seconds) {
    Watch now = watch.get();
    boolean waits = !Double.isNaN(typingSince) && speed.get() > 1;
    if (now != null && !waits) {
      elapsed.set(Math.min(now.duration(), elapsed.get() + speed.get() * seconds));
    }
  }

  /** To the end of the hold. */
  public void skip() {
    if (watch.get() != null) {
      elapsed.set(watch.get().duration());
    }
  }

  /** Where the needle stands now [Pa gauge]; dial and curve both show this. */
  public double needle() {
    return watch.get() == null ? 0 : watch.get().at(elapsed.get());
  }

  /** The reading that is typed belongs to the moment at which typing began. */
  public void typing(boolean now) {
    typingSince = !now ? Double.NaN : Double.isNaN(typingSince) ? elapsed.get() : typingSince;
  }

  /**
   * Notes a reading.
   *
   * @return whether it can be one; if not, {@link #told} says why
   */
  public boolean note(String typed) {
    OptionalDouble pressure = pressures.parse(typed);
    double most = session.get().exercise().gauge().most();
    if (watch.get() == null || pressure.isEmpty()) {
      told.set("'" + typed + "' is no number: type what the needle shows, such as 1.85.");
      return false;
    }
    if (pressure.getAsDouble() > most) {
      told.set(pressures.text(pressure.getAsDouble()) + " is beyond the end of this gauge.");
      return false;
    }
    if (noted.size() == TrainingSession.MOST_READINGS) {
      told.set(noted.size() + " readings are enough. Press Done.");
      return false;
    }
    double at = Math.rint(Double.isNaN(typingSince) ? elapsed.get() : typingSince);
    double shown = pressures.parse(pressures.number(pressure.getAsDouble())).orElseThrow();
    noted.removeIf(other -> other.time() >= at);
    noted.add(Reading.of(at, shown));
    typingSince = Double.NaN;
    told.set("");
    return true;
  }

  /** Takes the last reading back. */
  public void takeBack() {
    if (!noted.isEmpty()) {
      noted.remove(noted.size() - 1);
    }
  }

  /** The hold is over, and what the learner noted is what counts. */
  public void doneReading() {
    if (watch.get() != null && canBeDone()) {
      session.get().read(List.copyOf(noted));
      stopWatching(List.copyOf(noted));
    }
  }

  private boolean canBeDone() {
    return noted.size() >= TrainingSession.FEWEST_READINGS;
  }

  /** The hold is over, and a practised eye has read it. */
  public void readForMe() {
    if (watch.get() != null) {
      stopWatching(watch.get().taken().hold().orElseThrow().log().hold());
    }
  }

  private void stopWatching(List<Reading> readings) {
    Watch over = watch.get();
    watch(null);
    entries.add(
        0,
        new Entry(
            over.taken().step().words(), readings.stream().map(PracticeModel::line).toList()));
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

  /** Gives the answer; one without any odds is asked about first. */
  public void answer() {
    if (session.get() == null || busy.get() || watch.get() != null || stated.get() > 100) {
      return;
    }
    if (stated.get() == 0) {
      questions.ask(
          "You gave no odds, so every answer counts alike. Is that meant?",
          new QuestionModel.Answer("Submit without odds", this::submit, false));
    } else {
      submit();
    }
  }

  /** What to repair is asked for while the debrief is prepared. */
  private void submit() {
    TrainingSession at = session.get();
    StatedOdds last = belief();
    forgetAnswer();
    named.set(words(at, last.leading()));
    repairs.set(RepairChoice.of(at, last.leading()));
    preparing =
        work.start(
                "Preparing the debrief",
                progress ->
                    new Debriefing(evidence.apply(catalogue.get()), catalogue.get())
                        .of(at, last, progress),
                this::prepared)
            .ifBrokenOff(this::forgetAnswer);
    busyWith(preparing);
  }

  /** Stops preparing the debrief; the learner is back at the car. */
  public void stopPreparing() {
    if (preparing != null) {
      preparing.cancel();
      forgetAnswer();
    }
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
      Debrief told = prepared.repaired(repairs.get().judge(done, prepared));
      repairs.set(null);
      log.add(Result.of(session.get().exercise(), told, mark));
      debrief.set(told);
    }
  }

  /** The learner's own word for results, kept until another is given. */
  public void mark(String text) {
    mark = text;
    log.mark(text);
  }

  /** The learner's own word for results. */
  public String mark() {
    return mark;
  }

  /** Adds the score to a class's file, in the background. */
  public void saveScore(Path file) {
    Result result = Result.of(session.get().exercise(), debrief.get(), mark);
    work.start(
        "Writing the score",
        progress -> {
          PracticeResults.add(file, result);
          return file;
        },
        written -> saved.set("Added to " + written.getFileName() + "."));
  }

  /** Writes everything that was scored here. */
  public void saveResults(Path file) {
    List<Result> all = List.copyOf(log.all());
    work.start(
        "Writing the results",
        progress -> {
          PracticeResults.write(file, all);
          return file;
        },
        written -> saved.set("Written to " + written.getFileName() + "."));
  }

  /** Adds a class's results from a file. */
  public void addResults(Path file) {
    work.start(
        "Reading the results",
        progress -> PracticeResults.read(file),
        read -> {
          log.addFrom(read);
          saved.set("Added from " + file.getFileName() + ".");
        });
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

  /** How far the hold is [s]. */
  public ReadOnlyDoubleProperty elapsed() {
    return elapsed;
  }

  /** How many times faster than in truth it goes by [-]. */
  public IntegerProperty speed() {
    return speed;
  }

  /** What the learner read so far, in the order of time. */
  public ObservableList<Reading> noted() {
    return noted;
  }

  /** Why a reading can't be one; empty for nothing. */
  public ReadOnlyStringProperty told() {
    return told.getReadOnlyProperty();
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

  /** What has been found out, newest first. */
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
