package holdcurve.ui.window.suspects;

import holdcurve.infer.Interval;
import java.util.Locale;

/** Numbers in words, as a mechanic reads them. */
final class Figures {
  private static final double ML_PER_MIN = 6e7;

  /** Drops of petrol in a millilitre [1/mL]: common practice, no source. */
  private static final double DROPS_PER_ML = 30;

  private Figures() {}

  /**
   * @param probability [-]
   * @param error its standard error [-], shown where it reaches half a per cent
   */
  static String percent(double probability, double error) {
    double percent = 100 * probability;
    if (percent < 1) {
      return "below 1 %";
    }
    if (percent > 99) {
      return "above 99 %";
    }
    String text = Math.round(percent) + " %";
    return error < 0.005 ? text : Math.round(percent) + " ± " + Math.round(100 * error) + " %";
  }

  /**
   * @param leak [m³/s]
   */
  static String leak(Interval leak) {
    return mL(leak.middle()) + " mL/min (" + mL(leak.low()) + " to " + mL(leak.high()) + ")";
  }

  /**
   * @param leak [m³/s]
   */
  static String drops(Interval leak) {
    double perMinute = leak.middle() * ML_PER_MIN * DROPS_PER_ML;
    if (perMinute >= 1.5) {
      return "about " + twoDigits(perMinute) + " drops a minute";
    }
    double minutes = 1 / perMinute;
    return minutes > 60
        ? "less than a drop an hour"
        : "about a drop " + (minutes < 1.5 ? "a minute" : "in " + Math.round(minutes) + " min");
  }

  private static String mL(double flow) {
    double value = flow * ML_PER_MIN;
    int decimals = value < 0.1 ? 3 : value < 1 ? 2 : value < 10 ? 1 : 0;
    return String.format(Locale.ROOT, "%." + decimals + "f", value);
  }

  private static long twoDigits(double value) {
    double step = Math.pow(10, Math.max(0, Math.floor(Math.log10(value)) - 1));
    return Math.round(Math.round(value / step) * step);
  }

  /**
   * @param pressure [Pa]
   */
  static String bar(double pressure) {
    return String.format(Locale.ROOT, "%.1f bar", pressure / 1e5);
  }

  /**
   * @param seconds [s]
   */
  static String duration(double seconds) {
    return seconds < TimeAxis.LONGEST_IN_SECONDS
        ? Math.round(seconds) + " s"
        : String.format(Locale.ROOT, "%.0f min", seconds / 60);
  }
}
