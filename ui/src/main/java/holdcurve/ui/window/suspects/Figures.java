package holdcurve.ui.window.suspects;

import holdcurve.common.message.Message;
import holdcurve.common.message.PressureUnit;
import holdcurve.common.number.Interval;
import holdcurve.inference.answer.FaultSize;
import holdcurve.physics.circuit.Unit;
import java.util.Locale;

/** Numbers in words, as a mechanic reads them. */
final class Figures {
  /** Drops of petrol in a millilitre [1/mL]: common practice, no source. */
  private static final double DROPS_PER_ML = 30;

  private Figures() {}

  /** A probability, as far as it is known. */
  static String percent(double probability) {
    double percent = 100 * probability;
    if (percent < 1) {
      return "below 1 %";
    }
    if (percent > 99) {
      return "above 99 %";
    }
    return Math.round(percent) + " %";
  }

  /** How bad a fault is, with its 90 % range; for a leak in drops too; pressures in a unit. */
  static String size(FaultSize size, PressureUnit unit) {
    String range = size.unit() == Unit.BAR ? pressures(size.value(), unit) : range(size);
    return size.isLeak() ? range + ", " + drops(size.value()) : size.words().in(unit) + " " + range;
  }

  private static String pressures(Interval value, PressureUnit unit) {
    return Message.of(
            "%s (%s to %s)",
            Message.pressure(value.middle()),
            Message.number(value.low()),
            Message.number(value.high()))
        .in(unit);
  }

  private static String range(FaultSize size) {
    Interval value = size.value();
    Unit unit = size.unit();
    String symbol = unit.symbol().isEmpty() ? "" : " " + unit.symbol();
    return number(unit.fromSi(value.middle()))
        + symbol
        + " ("
        + number(unit.fromSi(value.low()))
        + " to "
        + number(unit.fromSi(value.high()))
        + ")";
  }

  /**
   * @param leak [m³/s]
   */
  static String drops(Interval leak) {
    double perMinute = Unit.MILLILITRE_PER_MINUTE.fromSi(leak.middle()) * DROPS_PER_ML;
    if (perMinute >= 1.5) {
      return "about " + twoDigits(perMinute) + " drops a minute";
    }
    double minutes = 1 / perMinute;
    return minutes > 60
        ? "less than a drop an hour"
        : "about a drop " + (minutes < 1.5 ? "a minute" : "in " + Math.round(minutes) + " min");
  }

  private static String number(double value) {
    double size = Math.abs(value);
    int decimals = size < 0.1 ? 3 : size < 1 ? 2 : size < 10 ? 1 : 0;
    return String.format(Locale.ROOT, "%." + decimals + "f", value);
  }

  private static long twoDigits(double value) {
    double step = Math.pow(10, Math.max(0, Math.floor(Math.log10(value)) - 1));
    return Math.round(Math.round(value / step) * step);
  }
}
