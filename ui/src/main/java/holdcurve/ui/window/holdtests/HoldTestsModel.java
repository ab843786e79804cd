package holdcurve.ui.window.holdtests;

import holdcurve.finding.Finding;
import holdcurve.job.HoldTest;
import holdcurve.job.Job;
import holdcurve.log.GaugeLog;
import holdcurve.log.GaugeLogReader;
import holdcurve.log.Reading;
import holdcurve.part.Hose;
import holdcurve.ui.window.job.JobEdits;
import holdcurve.ui.window.job.OpenJobModel;
import holdcurve.ui.window.job.Pressures;
import holdcurve.ui.window.job.TestEdits;
import holdcurve.ui.window.plot.HoldPlot;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleSupplier;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/**
 * The hold test being read: its readings, what is expected of them, and what can be said so far.
 * Long, because it is everything the page can do, one method a deed.
 */
public final class HoldTestsModel {
  /** A hold is read for ten minutes: common practice [s]. */
  private static final double USUAL_SPAN = 600;

  private static final double KELVIN = 273.15;

  private final OpenJobModel jobs;
  private final Stopwatch watch;
  private final Supplier<LocalDate> today;
  private final SoundBand sound;

  private final ObservableList<String> testIds = FXCollections.observableArrayList();
  private final ObservableList<String> shownIds = FXCollections.unmodifiableObservableList(testIds);
  private final StringProperty chosen = new SimpleStringProperty("");
  private final ObjectProperty<HoldTest> test = new SimpleObjectProperty<>();
  private final ObservableList<Reading> readings = FXCollections.observableArrayList();
  private final ObservableList<Reading> shownReadings =
      FXCollections.unmodifiableObservableList(readings);
  private final ObjectProperty<HoldPlot> plot = new SimpleObjectProperty<>();
  private final ObjectProperty<JudgementWords> judgement = new SimpleObjectProperty<>();
  private final ObjectProperty<Preview> preview = new SimpleObjectProperty<>();
  private final ObjectProperty<Reading> correcting = new SimpleObjectProperty<>();
  private final BooleanProperty showBuildUp = new SimpleBooleanProperty();
  private final BooleanProperty clampsOn = new SimpleBooleanProperty();
  private final StringProperty hint = new SimpleStringProperty("");

  private GaugeLog shownLog;
  private List<Reading> hold = List.of();

  /**
   * @param clock any steady clock [s]
   * @param today the date of holds begun now
   */
  public HoldTestsModel(OpenJobModel jobs, DoubleSupplier clock, Supplier<LocalDate> today) {
    this.jobs = jobs;
    this.watch = new Stopwatch(clock);
    this.today = today;
    this.sound = new SoundBand(jobs.work(), this::show);
    jobs.takenUpProperty().addListener((property, before, now) -> watch.stop());
    jobs.jobProperty().addListener((property, before, now) -> update());
    jobs.pressures().unitProperty().addListener((property, before, now) -> update());
    chosen.addListener((property, before, now) -> update());
    showBuildUp.addListener((property, before, now) -> show());
    watch.runningProperty().addListener((property, before, now) -> show());
    update();
  }

  private void update() {
    Job job = jobs.jobProperty().get();
    List<String> ids = job == null ? List.of() : job.tests().stream().map(HoldTest::id).toList();
    if (!testIds.equals(ids)) {
      testIds.setAll(ids);
    }
    if (!ids.contains(chosen.get())) {
      watch.stop();
      chosen.set(ids.isEmpty() ? "" : ids.get(0));
    }
    test.set(ids.isEmpty() ? null : JobEdits.test(job, chosen.get()));
    show();
  }

  private void show() {
    HoldTest now = test.get();
    if (now == null) {
      shownLog = null;
      readings.clear();
      plot.set(null);
      judgement.set(null);
      return;
    }
    if (now.log() != shownLog) {
      shownLog = now.log();
      readings.setAll(shownLog.fromPumpStop().readings());
      hold = shownLog.hold();
      correcting.set(null);
    }
    sound.ask(job(), now, hold, span(now));
    plot.set(
        HoldPlot.of(
            now,
            new HoldPlot.Wish(
                sound.curve(),
                sound.curve().stream().toList(),
                span(now),
                showBuildUp.get(),
                jobs.pressures().unit())));
    judgement.set(sound.words(hold));
  }

  private double span(HoldTest now) {
    double read = now.log().holdSpan();
    boolean done = !watch.runningProperty().get() && hold.size() > 2;
    return done ? read : Math.max(USUAL_SPAN, USUAL_SPAN / 2 * Math.ceil(read / (USUAL_SPAN / 2)));
  }

  private void change(String what, UnaryOperator<HoldTest> change) {
    jobs.change(what, job -> JobEdits.change(job, chosen.get(), change));
  }

  private void changeLog(String what, UnaryOperator<GaugeLog> change) {
    change(what, hold -> TestEdits.withLog(hold, change.apply(hold.log())));
  }

  // ---- stopwatch and typing

  /** The one key: the pump stops now, or this is the moment of the next reading. */
  void mark() {
    if (test.get() == null) {
      return;
    }
    if (!watch.runningProperty().get()) {
      pumpStopped();
    } else {
      watch.hold();
      hint.set("Reading at " + Entry.clock(watch.held().orElse(0)) + ": type it, then Enter.");
    }
  }

  /** The pump stops now. A test that has readings is left alone: the hold goes into a new one. */
  void pumpStopped() {
    if (!test.get().log().readings().isEmpty()) {
      again();
    }
    if (test.get().date().isEmpty()) {
      change("date", hold -> TestEdits.dated(hold, today.get().toString()));
    }
    clampsOn.set(false);
    watch.start();
    hint.set("The watch runs. Type what the gauge shows, then Enter.");
  }

  private void again() {
    Set<String> clamped = test.get().clamped();
    addTest(JobEdits.freeId(jobs.jobProperty().get(), chosen.get()));
    clamped.forEach(hose -> clamp(hose, true));
  }

  /** The hold is over. */
  void finish() {
    watch.stop();
    hint.set("");
    show();
  }

  /** The clamps are on now. */
  void clampsAreOn() {
    if (watch.runningProperty().get()) {
      double time = watch.time();
      change("time of the clamps", hold -> TestEdits.clampedAt(hold, time));
      clampsOn.set(true);
    }
  }

  /** Something is being typed: the reading is of this moment, unless one was marked before. */
  void typing() {
    if (correcting.get() == null) {
      watch.hold();
    }
  }

  /**
   * Takes what was typed for a reading.
   *
   * @return whether it was understood; if not, {@link #hintProperty} says what would be right
   */
  boolean enter(String typed) {
    Optional<Entry> entry = Entry.parse(typed, jobs.pressures());
    if (entry.isEmpty() || test.get() == null) {
      hint.set(
          "Type a pressure such as "
              + jobs.pressures().number(1.85e5)
              + ", or time and pressure such as 1:30 "
              + jobs.pressures().number(1.85e5)
              + ".");
      return false;
    }
    return correcting.get() == null ? add(entry.get()) : correct(entry.get());
  }

  private boolean add(Entry entry) {
    watch.hold();
    OptionalDouble time = entry.time().isPresent() ? entry.time() : watch.held();
    if (time.isEmpty()) {
      hint.set(
          "When was that? Type the time before it, such as 1:30 "
              + jobs.pressures().number(entry.pressure())
              + ", or start the watch with Space.");
      return false;
    }
    watch.release();
    hint.set("");
    double own = time.getAsDouble() + test.get().log().pumpStop();
    jobs.addReading(
        chosen.get(),
        new Reading(own, entry.pressure(), Double.NaN, Optional.empty(), entry.doubtful()));
    return true;
  }

  private boolean correct(Entry entry) {
    Reading was = correcting.get();
    double time = entry.time().orElse(was.time());
    correcting.set(null);
    hint.set("");
    replace(
        "correction",
        was,
        new Reading(time, entry.pressure(), was.fuelTemperature(), was.event(), entry.doubtful()));
    return true;
  }

  // ---- readings in the list

  /** Starts typing over a reading; null gives that up. */
  void startCorrecting(Reading reading) {
    correcting.set(reading);
    hint.set(
        reading == null ? "" : "Type over the reading at " + Entry.clock(reading.time()) + ".");
  }

  /** A reading as it would be typed. */
  String typed(Reading reading) {
    return Entry.clock(reading.time()).replace("−", "-")
        + " "
        + jobs.pressures().number(reading.pressure())
        + (reading.doubtful() ? "?" : "");
  }

  /** Marks a reading as doubtful, or as sure after all. */
  void toggleDoubt(Reading reading) {
    replace(
        reading.doubtful() ? "mark as sure" : "mark as doubtful",
        reading,
        new Reading(
            reading.time(),
            reading.pressure(),
            reading.fuelTemperature(),
            reading.event(),
            !reading.doubtful()));
  }

  void delete(Reading reading) {
    replace("deleting a reading", reading, null);
  }

  /** Readings are shown on the clock of the hold; the log may have one of its own. */
  private void replace(String what, Reading was, Reading now) {
    int index = readings.indexOf(was);
    if (index < 0) {
      return;
    }
    changeLog(
        what,
        log -> {
          Reading own = log.readings().get(index);
          Reading next =
              now == null
                  ? null
                  : new Reading(
                      now.time() + log.pumpStop(),
                      now.pressure(),
                      now.fuelTemperature(),
                      own.event(),
                      now.doubtful());
          return JobEdits.withReading(log, own, next);
        });
  }

  /**
   * Moves the mark of the pump stop.
   *
   * @param later by how much [s]
   */
  void movePumpStop(double later) {
    if (later != 0 && test.get() != null && !test.get().log().readings().isEmpty()) {
      changeLog("moving the pump stop", log -> TestEdits.stoppedAt(log, log.pumpStop() + later));
    }
  }

  // ---- import

  /** Reads a pasted table, to be looked at before it is taken. */
  void paste(String text) {
    read("pasted table", () -> new Preview(GaugeLogReader.read("pasted table", text)));
  }

  /** Reads a log file, to be looked at before it is taken. */
  void open(Path file) {
    read(file.getFileName().toString(), () -> new Preview(GaugeLogReader.read(file)));
  }

  private void read(String name, Supplier<Preview> reading) {
    jobs.work().start("Reading " + name, progress -> reading.get(), preview::set);
  }

  /** Takes the readings looked at into the chosen test, or a new one if that has some. */
  void takePreview() {
    GaugeLog taken = preview.get().readings();
    preview.set(null);
    watch.stop();
    if (!test.get().log().readings().isEmpty()) {
      again();
    }
    changeLog("import", log -> taken);
  }

  void dropPreview() {
    preview.set(null);
  }

  // ---- the test itself

  /** Adds a hold and turns to it. */
  void addTest(String wanted) {
    watch.stop();
    String id = JobEdits.freeId(jobs.jobProperty().get(), wanted);
    jobs.change("new hold", job -> JobEdits.addTest(job, id));
    chosen.set(id);
  }

  /** Takes the chosen hold out of the job. */
  void removeTest() {
    String id = chosen.get();
    if (isFree(id)) {
      jobs.change("removing " + id, job -> JobEdits.removeTest(job, id));
    }
  }

  /** Gives the chosen hold another name; an empty one or one that is taken changes nothing. */
  void rename(String wanted) {
    String id = wanted.strip();
    String before = chosen.get();
    if (!id.isEmpty() && !testIds.contains(id) && isFree(before)) {
      Job renamed = JobEdits.change(job(), before, hold -> TestEdits.named(hold, id));
      jobs.change("name of the hold", job -> renamed);
      chosen.set(id);
    }
  }

  private boolean isFree(String id) {
    boolean free = !JobEdits.isNamed(job(), id);
    if (!free) {
      hint.set("A finding or a repair names the hold " + id + ": remove that first.");
    }
    return free;
  }

  void clamp(String hose, boolean on) {
    change(
        on ? "clamp on " + hose : "no clamp on " + hose, hold -> TestEdits.clamped(hold, hose, on));
  }

  /** Hoses that can be clamped. */
  List<String> hoses() {
    Job job = jobs.jobProperty().get();
    return job == null ? List.of() : Hose.clampable(job.circuit());
  }

  /**
   * @param typed [°C]; empty for not measured
   * @return whether it was understood
   */
  boolean temperature(String typed) {
    String plain = typed.strip().replace(',', '.').replace("°C", "").strip();
    try {
      OptionalDouble kelvins =
          plain.isEmpty()
              ? OptionalDouble.empty()
              : OptionalDouble.of(Double.parseDouble(plain) + KELVIN);
      if (kelvins.isPresent() && !(Math.abs(kelvins.getAsDouble() - KELVIN - 35) <= 55)) {
        throw new NumberFormatException();
      }
      change("fuel temperature", hold -> TestEdits.withTemperature(hold, kelvins));
      return true;
    } catch (NumberFormatException e) {
      hint.set("Fuel temperature: type a number from -20 to 90 °C, or nothing.");
      return false;
    }
  }

  void date(String date) {
    change("date", hold -> TestEdits.dated(hold, date.strip()));
  }

  void notes(String notes) {
    change("notes", hold -> TestEdits.noted(hold, notes.strip()));
  }

  /** The day that a finding is offered: that of the hold shown, or today. */
  LocalDate findingDay() {
    return Optional.ofNullable(test.get()).flatMap(HoldTest::day).orElseGet(today);
  }

  void add(Finding finding) {
    jobs.change(
        "finding",
        job -> {
          List<Finding> more = new ArrayList<>(job.findings());
          more.add(finding);
          return job.withFindings(more);
        });
  }

  void remove(Finding finding) {
    jobs.change(
        "removing a finding",
        job ->
            job.withFindings(job.findings().stream().filter(other -> other != finding).toList()));
  }

  /** Ranks what was read. */
  void rank() {
    finish();
    jobs.rank();
  }

  // ---- what the page shows

  ObservableList<String> testIds() {
    return shownIds;
  }

  /** Id of the test that is shown; empty for none. */
  StringProperty chosenProperty() {
    return chosen;
  }

  /** The test that is shown; null for none. */
  ObjectProperty<HoldTest> testProperty() {
    return test;
  }

  /** All readings of the test, on the clock of the hold. */
  ObservableList<Reading> readings() {
    return shownReadings;
  }

  ObjectProperty<HoldPlot> plotProperty() {
    return plot;
  }

  ObjectProperty<JudgementWords> judgementProperty() {
    return judgement;
  }

  /** The log that waits to be taken; null for none. */
  ObjectProperty<Preview> previewProperty() {
    return preview;
  }

  /** The reading that is being typed over; null for none. */
  ObjectProperty<Reading> correctingProperty() {
    return correcting;
  }

  BooleanProperty showBuildUpProperty() {
    return showBuildUp;
  }

  /** Whether the clamps were marked as on in this hold. */
  BooleanProperty clampsOnProperty() {
    return clampsOn;
  }

  /** What to do next, or what was wrong; may be empty. */
  StringProperty hintProperty() {
    return hint;
  }

  Stopwatch watch() {
    return watch;
  }

  Pressures pressures() {
    return jobs.pressures();
  }

  /** The open job; null for none. */
  Job job() {
    return jobs.jobProperty().get();
  }
}
