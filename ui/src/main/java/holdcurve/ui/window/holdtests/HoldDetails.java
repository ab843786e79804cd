package holdcurve.ui.window.holdtests;

import holdcurve.common.number.Celsius;
import holdcurve.common.text.Days;
import holdcurve.physics.part.Hose;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.ui.window.job.TestEdits;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/** What is noted beside the readings of a hold; each change can be taken back. */
final class HoldDetails {

  private final ChosenHold hold;

  HoldDetails(ChosenHold hold) {
    this.hold = hold;
  }

  /** Puts a clamp on a hose, or takes it off. */
  void clamp(String hose, boolean on) {
    hold.change(
        on ? "clamp on " + hose : "no clamp on " + hose, one -> TestEdits.clamped(one, hose, on));
  }

  /** Hoses that can be clamped. */
  List<String> hoses() {
    Job job = hold.job();
    return job == null ? List.of() : Hose.clampable(job.circuit());
  }

  /**
   * Sets the temperature of the fuel.
   *
   * @param typed [°C]; empty for not measured
   * @return whether it was understood
   */
  boolean temperature(String typed) {
    String plain = typed.strip().replace(',', '.').replace("°C", "").strip();
    try {
      OptionalDouble kelvins =
          plain.isEmpty()
              ? OptionalDouble.empty()
              : OptionalDouble.of(Celsius.toKelvins(Double.parseDouble(plain)));
      if (kelvins.isPresent() && !(Math.abs(Celsius.of(kelvins.getAsDouble()) - 35) <= 55)) {
        throw new NumberFormatException();
      }
      note("fuel temperature", one -> TestEdits.withTemperature(one, kelvins));
      return true;
    } catch (NumberFormatException e) {
      hold.hintProperty().set("Fuel temperature: type a number from -20 to 90 °C, or nothing.");
      return false;
    }
  }

  /**
   * Sets the day.
   *
   * @param typed ISO 8601, as 2026-04-11; empty for not known
   * @return whether there is such a day
   */
  boolean date(String typed) {
    String plain = typed.strip();
    HoldTest test = hold.testProperty().get();
    boolean asItWas = test != null && test.date().equals(plain);
    if (!plain.isEmpty() && !asItWas && !Days.isDay(plain)) {
      hold.hintProperty()
          .set("Date: type a day that there is, as year-month-day: 2026-04-11. Or nothing.");
      return false;
    }
    note("date", one -> TestEdits.dated(one, plain));
    return true;
  }

  /** What was wrong before is no longer said. */
  private void note(String what, UnaryOperator<HoldTest> change) {
    Job before = hold.job();
    hold.change(what, change);
    if (hold.job() != before) {
      hold.hintProperty().set("");
    }
  }

  /** Sets the notes. */
  void notes(String notes) {
    hold.change("notes", one -> TestEdits.noted(one, notes.strip()));
  }
}
