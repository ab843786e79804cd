package holdcurve.ui.window.plot;

import holdcurve.common.message.PartName;
import holdcurve.common.number.Celsius;
import holdcurve.record.job.HoldTest;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Words around a plot. */
final class PlotWords {
  private PlotWords() {}

  /** What the marks of a plot are, and how many of the readings they stand for. */
  static String legend(int readings, int marks) {
    return marks == readings ? "measured" : "measured (" + marks + " of " + readings + " readings)";
  }

  /**
   * A length of time in seconds or minutes.
   *
   * @param seconds [s]
   */
  static String duration(double seconds) {
    return seconds < TimeAxis.LONGEST_IN_SECONDS
        ? Math.round(seconds) + " s"
        : String.format(Locale.ROOT, "%.0f min", seconds / 60);
  }

  /**
   * How a test was done.
   *
   * @param readings after the pump stop
   */
  static String caption(HoldTest test, int readings) {
    List<String> words = new ArrayList<>();
    words.add(
        test.clamped().isEmpty()
            ? "No clamps"
            : "Clamped: "
                + String.join(", ", test.clamped().stream().map(PartName::of).sorted().toList()));
    words.add(readings + " readings in " + duration(test.log().holdSpan()));
    test.fuelTemperature()
        .ifPresent(t -> words.add(String.format(Locale.ROOT, "fuel %.0f °C", Celsius.of(t))));
    if (!test.date().isEmpty()) {
      words.add(test.date());
    }
    return String.join("  ·  ", words);
  }
}
