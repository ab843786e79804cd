package holdcurve.record.finding;

import holdcurve.common.input.Require;
import holdcurve.common.message.Message;
import holdcurve.common.message.PressureUnit;
import java.time.LocalDate;
import java.util.Collections;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * Fuel drawn off at the gauge tee into a measuring cylinder, with the pressure before and after:
 * how much the circuit stores for each bar.
 *
 * @param volume drawn off [m³]
 * @param from pressure before [Pa gauge]
 * @param to pressure after, lower [Pa gauge]
 * @param duration how long it took [s]
 * @param clamped hoses that were clamped meanwhile
 * @param date the day; absent if not noted
 */
public record DrawOff(
    double volume,
    double from,
    double to,
    double duration,
    Set<String> clamped,
    Optional<LocalDate> date)
    implements Finding {
  public DrawOff {
    Require.positive(volume, "volume drawn off", "m³");
    Require.positive(from - to, "drop of the pressure while drawing off", "Pa");
    Require.notNegative(to, "pressure after drawing off", "Pa");
    Require.positive(duration, "time of drawing off", "s");
    clamped = Collections.unmodifiableSet(new TreeSet<>(clamped));
  }

  /** On a day that wasn't noted. */
  public DrawOff(double volume, double from, double to, double duration, Set<String> clamped) {
    this(volume, from, to, duration, clamped, Optional.empty());
  }

  @Override
  public Optional<String> test() {
    return Optional.empty();
  }

  @Override
  public DrawOff on(LocalDate day) {
    return new DrawOff(volume, from, to, duration, clamped, Optional.of(day));
  }

  @Override
  public String inWords() {
    return inWords(PressureUnit.BAR);
  }

  @Override
  public Message message() {
    return Message.of(
        "%.1f mL drawn off from %s to %s",
        volume * 1e6, Message.number(from), Message.pressure(to));
  }
}
