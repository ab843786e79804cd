package holdcurve.calibration.blind;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.DoubleUnaryOperator;

/** Writes what a person, or now and then a logger, puts down of one hold. */
final class HoldLog {
  private final Draw draw;
  private final SimulatedNeedle needle;
  private final boolean logger;

  HoldLog(Draw draw, SimulatedNeedle needle, boolean logger) {
    this.draw = draw;
    this.needle = needle;
    this.logger = logger;
  }

  /** How long a person keeps watching [s]. */
  double span() {
    return draw.one(List.of(300.0, 420.0, 600.0, 600.0, 600.0, 900.0));
  }

  /**
   * The log as text.
   *
   * @param pressure every tenth of a second [Pa]
   * @param temperature measured, by time [°C]; null where none was
   */
  List<String> write(double[] pressure, DoubleUnaryOperator temperature) {
    double[] shown = needle.follow(pressure);
    boolean commas = draw.chance(0.2);
    boolean clock = !logger && draw.chance(0.3);
    boolean kilopascals = draw.chance(0.1);
    String mark = commas ? ";" : ",";
    List<String> lines = new ArrayList<>();
    String heading = (clock ? "time_mm:ss" : "time_s") + mark + "pressure_";
    lines.add(
        heading
            + (kilopascals ? "kPa" : "bar")
            + (temperature == null ? "" : mark + "fuel_temp_C"));
    for (double time : times((pressure.length - 1) / 10.0)) {
      int looked = (int) Math.round(10 * time + (logger || time == 0 ? 0 : draw.normal(5)));
      double at = shown[Math.max(0, Math.min(shown.length - 1, looked))];
      boolean doubtful = !logger && draw.chance(0.03);
      double eye = needle.resolution() * draw.normal(doubtful ? 1.5 : 0.3);
      double read = Math.max(0, Math.rint((at + eye) / needle.resolution()) * needle.resolution());
      if (!logger && draw.chance(0.005)) {
        read = Math.max(0, read + (draw.chance(0.5) ? 1e4 : -1e4));
      }
      String value = String.format(Locale.ROOT, "%.3f", read / (kilopascals ? 1e3 : 1e5));
      String line =
          written(time, clock)
              + mark
              + value
              + (doubtful ? "?" : "")
              + (temperature == null
                  ? ""
                  : mark + String.format(Locale.ROOT, "%.1f", temperature.applyAsDouble(time)));
      lines.add(commas ? line.replace('.', ',') : line);
    }
    return lines;
  }

  private static String written(double time, boolean clock) {
    int seconds = (int) Math.round(time);
    return clock
        ? String.format(Locale.ROOT, "%d:%02d", seconds / 60, seconds % 60)
        : String.valueOf(seconds);
  }

  /** Every half minute or minute, more often at first, some seconds off, and some left out. */
  private List<Double> times(double end) {
    List<Double> times = new ArrayList<>();
    if (logger) {
      for (double t = 0; t <= end; t += 1) {
        times.add(t);
      }
      return times;
    }
    double step = draw.one(List.of(15.0, 30.0, 30.0, 60.0));
    boolean denseStart = draw.chance(0.5);
    boolean regular = draw.chance(0.5);
    times.add(draw.chance(0.7) ? 0.0 : 3.0);
    for (double t = denseStart ? 10 : step; t <= end; t += denseStart && t < 60 ? 10 : step) {
      double off = regular ? 0 : Math.rint(draw.between(-3, 3));
      if (!draw.chance(0.04) && t + off <= end) {
        times.add(t + off);
      }
    }
    return times;
  }
}
