package holdcurve.record.finding;

import java.time.LocalDate;

/**
 * A look into the thin hose, or the vent, on the dry side of the regulator's diaphragm.
 *
 * @param fuel whether there was fuel in it
 * @param when under which pressure
 */
public record ReferenceHoseLook(boolean fuel, Moment when) implements SeenAtMoment {
  @Override
  public ReferenceHoseLook on(LocalDate day) {
    return new ReferenceHoseLook(fuel, when.on(day));
  }

  @Override
  public String inWords() {
    return fuel ? "fuel in the regulator's thin hose" : "no fuel in the regulator's thin hose";
  }
}
