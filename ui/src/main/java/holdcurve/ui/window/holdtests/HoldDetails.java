package holdcurve.ui.window.holdtests;

import holdcurve.job.Job;
import holdcurve.part.Hose;
import holdcurve.ui.window.job.TestEdits;
import java.util.List;
import java.util.OptionalDouble;

/** What is noted beside the readings of a hold; each change can be taken back. */
final class HoldDetails {
  private static final double KELVIN = 273.15;

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
              : OptionalDouble.of(Double.parseDouble(plain) + KELVIN);
      if (kelvins.isPresent() && !(Math.abs(kelvins.getAsDouble() - KELVIN - 35) <= 55)) {
        throw new NumberFormatException();
      }
      hold.change("fuel temperature", one -> TestEdits.withTemperature(one, kelvins));
      return true;
    } catch (NumberFormatException e) {
      hold.hintProperty().set("Fuel temperature: type a number from -20 to 90 °C, or nothing.");
      return false;
    }
  }

  /** Sets the day. */
  void date(String date) {
    hold.change("date", one -> TestEdits.dated(one, date.strip()));
  }

  /** Sets the notes. */
  void notes(String notes) {
    hold.change("notes", one -> TestEdits.noted(one, notes.strip()));
  }
}
