package holdcurve.ui.window.holdtests;

import holdcurve.common.message.Message;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.HoldTest;
import holdcurve.record.log.OddReading;
import holdcurve.record.log.Reading;
import holdcurve.ui.window.job.TestEdits;
import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;

/** Readings typed against the stopwatch, or over one that is there. */
final class ReadingEntry {
  private final ChosenHold hold;
  private final Stopwatch watch;
  private final ReadingEdits edits;
  private final Supplier<LocalDate> today;
  private final ObjectProperty<Reading> correcting = new SimpleObjectProperty<>();
  private final BooleanProperty clampsOn = new SimpleBooleanProperty();
  private Reading taken;
  private String saidOfIt = "";

  /**
   * @param today the date of holds begun now
   */
  ReadingEntry(ChosenHold hold, Stopwatch watch, ReadingEdits edits, Supplier<LocalDate> today) {
    this.hold = hold;
    this.watch = watch;
    this.edits = edits;
    this.today = today;
    hold.testProperty().addListener((property, before, now) -> forget(now));
  }

  /** The one key: the pump stops now, or this is the moment of the next reading. */
  void mark() {
    if (hold.testProperty().get() == null) {
      return;
    }
    if (!watch.runningProperty().get()) {
      pumpStopped();
    } else {
      watch.hold();
      hold.hintProperty()
          .set("Reading at " + Entry.clock(watch.held().orElse(0)) + ": type it, then Enter.");
    }
  }

  /** The pump stops now. A test that has readings is left alone: the hold goes into a new one. */
  void pumpStopped() {
    if (hold.hasReadings()) {
      hold.again();
    }
    if (hold.testProperty().get().date().isEmpty()) {
      hold.change("date", one -> TestEdits.dated(one, today.get().toString()));
    }
    clampsOn.set(false);
    watch.start();
    hold.hintProperty().set("The watch runs. Type what the gauge shows, then Enter.");
  }

  /** The hold is over. */
  void finish() {
    watch.stop();
    hold.hintProperty().set("");
  }

  /** The clamps are on now. */
  void clampsAreOn() {
    if (watch.runningProperty().get()) {
      double time = watch.time();
      hold.change("time of the clamps", one -> TestEdits.clampedAt(one, time));
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
    Optional<Entry> entry = Entry.parse(typed, hold.pressures());
    if (entry.isEmpty() || hold.testProperty().get() == null) {
      hold.hintProperty()
          .set(
              "Type a pressure such as "
                  + hold.pressures().number(1.85e5)
                  + ", or time and pressure such as 1:30 "
                  + hold.pressures().number(1.85e5)
                  + ".");
      return false;
    }
    GaugeSpec gauge = hold.job().gauge();
    if (entry.get().pressure() > gauge.most()) {
      hold.hintProperty().set(hold.pressures().text(tooMuch(entry.get(), gauge)));
      return false;
    }
    return correcting.get() == null ? add(entry.get()) : correct(entry.get());
  }

  private static Message tooMuch(Entry entry, GaugeSpec gauge) {
    return Message.of(
        "%s on a gauge to %s? Type it again, or say on the right what scale the gauge has.",
        Message.round(entry.pressure()), Message.round(gauge.range()));
  }

  private boolean add(Entry entry) {
    watch.hold();
    OptionalDouble time = entry.time().isPresent() ? entry.time() : watch.held();
    if (time.isEmpty()) {
      hold.hintProperty()
          .set(
              "When was that? Type the time before it, such as 1:30 "
                  + hold.pressures().number(entry.pressure())
                  + ", or start the watch with Space.");
      return false;
    }
    watch.release();
    double own = time.getAsDouble() + hold.testProperty().get().log().pumpStop();
    Reading reading =
        new Reading(own, entry.pressure(), Double.NaN, Optional.empty(), entry.doubtful());
    hold.jobs().addReading(hold.idProperty().get(), reading);
    hold.hintProperty()
        .set(
            entry.time().isEmpty()
                ? ""
                : "Taken: "
                    + hold.pressures().text(entry.pressure())
                    + " at "
                    + Entry.clock(time.getAsDouble())
                    + " after the pump stop.");
    askAboutOddOnes();
    taken = reading;
    saidOfIt = hold.hintProperty().get();
    return true;
  }

  /** A slipped decimal mark is asked about in the words in which a log file is. */
  private void askAboutOddOnes() {
    OddReading.in(hold.testProperty().get().log().fromPumpStop()).stream()
        .reduce((first, last) -> last)
        .ifPresent(
            odd ->
                hold.hintProperty()
                    .set(
                        "Look at "
                            + Entry.clock(odd.reading().time())
                            + ": "
                            + hold.pressures().text(odd.question())));
  }

  /** A reading that was taken back is no longer said to be taken. */
  private void forget(HoldTest now) {
    if (taken == null) {
      return;
    }
    boolean there = now != null && now.log().readings().contains(taken);
    if (!there && hold.hintProperty().get().equals(saidOfIt)) {
      hold.hintProperty().set("");
    }
  }

  private boolean correct(Entry entry) {
    Reading was = correcting.get();
    double time = entry.time().orElse(was.time());
    correcting.set(null);
    hold.hintProperty().set("");
    edits.replace(
        "correction",
        was,
        new Reading(time, entry.pressure(), was.fuelTemperature(), was.event(), entry.doubtful()));
    askAboutOddOnes();
    return true;
  }

  /** Starts typing over a reading; null gives that up. */
  void startCorrecting(Reading reading) {
    correcting.set(reading);
    hold.hintProperty()
        .set(
            reading == null ? "" : "Type over the reading at " + Entry.clock(reading.time()) + ".");
  }

  /** A reading as it would be typed. */
  String typed(Reading reading) {
    return Entry.clock(reading.time()).replace("−", "-")
        + " "
        + hold.pressures().number(reading.pressure())
        + (reading.doubtful() ? "?" : "");
  }

  /** The reading that is being typed over; null for none. */
  ObjectProperty<Reading> correctingProperty() {
    return correcting;
  }

  /** Whether the clamps were marked as on in this hold. */
  BooleanProperty clampsOnProperty() {
    return clampsOn;
  }
}
