package holdcurve.finding;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A look into the thin hose, or the vent, on the dry side of the regulator's diaphragm.
 *
 * @param fuel whether there was fuel in it
 * @param when under which pressure
 */
public record ReferenceHoseLook(boolean fuel, Moment when) implements Finding {
  @Override
  public Optional<String> test() {
    return when.test();
  }

  @Override
  public Optional<LocalDate> date() {
    return when.date();
  }

  @Override
  public ReferenceHoseLook on(LocalDate day) {
    return new ReferenceHoseLook(fuel, when.on(day));
  }

  @Override
  public String inWords() {
    return fuel ? "fuel in the regulator's thin hose" : "no fuel in the regulator's thin hose";
  }
}
