package holdcurve.ui.window.holdtests;

import holdcurve.record.log.Reading;
import holdcurve.ui.window.job.JobEdits;
import holdcurve.ui.window.job.TestEdits;
import java.util.List;
import java.util.function.Supplier;

/** Changes of readings that are there; each can be taken back. */
final class ReadingEdits {
  private final ChosenHold hold;
  private final Supplier<List<Reading>> shown;

  /**
   * @param shown all readings of the hold, on its clock
   */
  ReadingEdits(ChosenHold hold, Supplier<List<Reading>> shown) {
    this.hold = hold;
    this.shown = shown;
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

  /** Takes a reading out. */
  void delete(Reading reading) {
    replace("deleting a reading", reading, null);
  }

  /**
   * Puts a reading in the place of another. Readings are shown on the clock of the hold; the log
   * may have one of its own.
   *
   * @param now null to leave it out
   */
  void replace(String what, Reading was, Reading now) {
    int index = shown.get().indexOf(was);
    if (index < 0) {
      return;
    }
    hold.changeLog(
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
    if (later != 0 && hold.hasReadings()) {
      hold.changeLog(
          "moving the pump stop", log -> TestEdits.stoppedAt(log, log.pumpStop() + later));
    }
  }
}
