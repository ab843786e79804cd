package holdcurve.record.finding;

import holdcurve.common.input.Require;
import holdcurve.common.message.PartName;
import java.time.LocalDate;
import java.util.Locale;
import java.util.OptionalInt;

/**
 * Drops counted at injectors lifted with the circuit under pressure.
 *
 * @param part id of the injectors, or of the cold-start injector
 * @param number which of them, counted from 1; absent where all were counted together
 * @param drops how many fell
 * @param duration how long they were counted [s]
 * @param when under which pressure
 */
public record DropCount(String part, OptionalInt number, int drops, double duration, Moment when)
    implements SeenAtMoment {
  public DropCount {
    Require.notNegative(drops, "drops", "-");
    Require.positive(duration, "time over which drops were counted", "s");
    number.ifPresent(n -> Require.within(n, 1, 16, "number of the injector", "-"));
  }

  /** Counted at all injectors of a part together, just primed. */
  public static DropCount ofAll(String part, int drops, double duration) {
    return new DropCount(part, OptionalInt.empty(), drops, duration, Moment.PRIMED);
  }

  /** Counted at one injector of a part, just primed. */
  public static DropCount ofOne(String part, int number, int drops, double duration) {
    return new DropCount(part, OptionalInt.of(number), drops, duration, Moment.PRIMED);
  }

  @Override
  public DropCount on(LocalDate day) {
    return new DropCount(part, number, drops, duration, when.on(day));
  }

  @Override
  public String inWords() {
    String name = PartName.of(part);
    String which = number.isPresent() ? name + " no. " + number.getAsInt() : name;
    String count = drops == 0 ? "no drop" : drops == 1 ? "1 drop" : drops + " drops";
    double minutes = duration / 60;
    String format = minutes == Math.rint(minutes) ? "%s: %s in %.0f min" : "%s: %s in %.1f min";
    return String.format(Locale.ROOT, format, which, count, minutes);
  }
}
