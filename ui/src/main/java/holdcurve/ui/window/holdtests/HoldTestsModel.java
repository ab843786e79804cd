package holdcurve.ui.window.holdtests;

import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.job.RankableTests;
import holdcurve.record.log.GaugeLog;
import holdcurve.record.log.Reading;
import holdcurve.ui.window.job.OpenJobModel;
import holdcurve.ui.window.job.PressureFormat;
import holdcurve.ui.window.plot.HoldPlot;
import java.time.LocalDate;
import java.util.List;
import java.util.function.DoubleSupplier;
import java.util.function.Supplier;
import javafx.beans.binding.Bindings;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableBooleanValue;
import javafx.beans.value.ObservableValue;
import javafx.collections.FXCollections;
import javafx.collections.ObservableList;

/**
 * The hold test being read: its readings, what is expected of them, and what can be said so far.
 */
public final class HoldTestsModel {
  /** A hold is read for ten minutes: common practice [s]. */
  private static final double USUAL_SPAN = 600;

  private final OpenJobModel jobs;
  private final Stopwatch watch;
  private final ChosenHold hold;
  private final ReadingEntry entry;
  private final ReadingEdits edits;
  private final LogIntake intake;
  private final HoldDetails details;
  private final GaugeDetails gauge;
  private final JobFindings findings;
  private final SoundBand sound;
  private final FollowModel follow;
  private final BenchModel bench;

  private final ObservableList<Reading> readings = FXCollections.observableArrayList();
  private final ObservableList<Reading> shownReadings =
      FXCollections.unmodifiableObservableList(readings);
  private final ObjectProperty<HoldPlot> plot = new SimpleObjectProperty<>();
  private final ObjectProperty<JudgementWords> judgement = new SimpleObjectProperty<>();
  private final BooleanProperty showBuildUp = new SimpleBooleanProperty();

  private GaugeLog shownLog;
  private boolean taking;
  private List<Reading> afterStop = List.of();

  /**
   * @param clock any steady clock [s]
   * @param today the date of holds begun now
   */
  public HoldTestsModel(OpenJobModel jobs, DoubleSupplier clock, Supplier<LocalDate> today) {
    this.jobs = jobs;
    this.watch = new Stopwatch(clock);
    this.hold = new ChosenHold(jobs, watch);
    this.edits = new ReadingEdits(hold, () -> readings);
    this.entry = new ReadingEntry(hold, watch, edits, today);
    this.intake = new LogIntake(hold, watch);
    this.details = new HoldDetails(hold);
    this.gauge = new GaugeDetails(hold);
    this.findings = new JobFindings(hold, today);
    this.sound = new SoundBand(jobs.work(), this::show);
    this.follow = new FollowModel(hold, watch);
    jobs.jobProperty().addListener((property, before, now) -> show());
    jobs.pressures().unitProperty().addListener((property, before, now) -> show());
    hold.testProperty().addListener((property, before, now) -> show());
    showBuildUp.addListener((property, before, now) -> show());
    watch.runningProperty().addListener((property, before, now) -> show());
    show();
    this.bench = new BenchModel(this);
  }

  private void show() {
    HoldTest now = hold.testProperty().get();
    if (now == null) {
      shownLog = null;
      readings.clear();
      plot.set(null);
      judgement.set(null);
      return;
    }
    if (now.log() != shownLog) {
      take(now.log());
    }
    sound.ask(jobs.jobProperty().get(), now, afterStop, span(now));
    plot.set(HoldPlot.of(now, wish(now)));
    judgement.set(sound.words(afterStop));
  }

  private void take(GaugeLog log) {
    shownLog = log;
    taking = true;
    readings.setAll(log.fromPumpStop().readings());
    taking = false;
    afterStop = log.hold();
    entry.correctingProperty().set(null);
  }

  private HoldPlot.Wish wish(HoldTest now) {
    return new HoldPlot.Wish(
        sound.curve(),
        sound.curve().stream().toList(),
        span(now),
        showBuildUp.get(),
        jobs.pressures().unit());
  }

  private double span(HoldTest now) {
    double read = now.log().holdSpan();
    boolean done = !watch.runningProperty().get() && afterStop.size() > 2;
    return done ? read : Math.max(USUAL_SPAN, USUAL_SPAN / 2 * Math.ceil(read / (USUAL_SPAN / 2)));
  }

  /** Ranks what was read. */
  void rank() {
    entry.finish();
    jobs.rank();
  }

  /** Which hold is looked at. */
  ChosenHold hold() {
    return hold;
  }

  /** Readings typed against the stopwatch. */
  ReadingEntry entry() {
    return entry;
  }

  /** Changes of readings that are there. */
  ReadingEdits edits() {
    return edits;
  }

  /** Logs that come from elsewhere. */
  LogIntake intake() {
    return intake;
  }

  /** A growing log that is followed. */
  FollowModel follow() {
    return follow;
  }

  /** Readings taken from two metres away. */
  BenchModel bench() {
    return bench;
  }

  /** Clamps, temperature, day and notes. */
  HoldDetails details() {
    return details;
  }

  /** The gauge of the job. */
  GaugeDetails gauge() {
    return gauge;
  }

  /** What was seen beside the gauge. */
  JobFindings findings() {
    return findings;
  }

  /** Whether the readings are just being exchanged for others. */
  boolean isTaking() {
    return taking;
  }

  /** All readings of the test, on the clock of the hold. */
  ObservableList<Reading> readings() {
    return shownReadings;
  }

  /** Whether the way on is the ranking: enough was read, and the watch stands. */
  ObservableBooleanValue rankable() {
    return Bindings.createBooleanBinding(
        () ->
            !watch.runningProperty().get()
                && hold.testProperty().get() != null
                && afterStop.size() >= RankableTests.FEWEST_READINGS,
        watch.runningProperty(),
        judgement,
        hold.testProperty());
  }

  /** The open job; null for none. */
  ObservableValue<Job> job() {
    return jobs.jobProperty();
  }

  ObjectProperty<HoldPlot> plotProperty() {
    return plot;
  }

  ObjectProperty<JudgementWords> judgementProperty() {
    return judgement;
  }

  BooleanProperty showBuildUpProperty() {
    return showBuildUp;
  }

  Stopwatch watch() {
    return watch;
  }

  PressureFormat pressures() {
    return jobs.pressures();
  }
}
