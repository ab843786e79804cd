package holdcurve.ui.window.suspects;

import holdcurve.infer.HoldCurve;
import holdcurve.infer.Suspect;
import holdcurve.job.HoldTest;
import holdcurve.log.Reading;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * What the plot of one hold test shows, in the units of its axes.
 *
 * @param test id of the hold test
 * @param caption how the test was done, in words
 * @param clamped whether hoses were clamped
 * @param timeAxis unit of all times here
 * @param time ends of the time axis
 * @param pressure ends of the pressure axis [bar gauge]
 * @param marks readings
 * @param legend what the marks are
 * @param curve what the chosen suspect would show; absent before there is a ranking
 * @param clampsOn when the clamps went on; absent for a test without
 */
record HoldPlot(
    String test,
    String caption,
    boolean clamped,
    TimeAxis timeAxis,
    Scale time,
    Scale pressure,
    List<Mark> marks,
    String legend,
    Optional<Curve> curve,
    OptionalDouble clampsOn) {

  /** Most marks drawn: more would hide one another. */
  private static final int MOST_MARKS = 1000;

  private static final int MOST_CURVE_POINTS = 2000;

  /** Suspects below this have no say in the ends of the axes [-]. */
  private static final double PLAUSIBLE = 0.02;

  /** The pressure axis shows at least this much [bar]: readings to 0.02 bar then look quiet. */
  private static final double NARROWEST = 0.1;

  /** Room at the ends of the axes, so that marks there stay whole [-]. */
  private static final double TIME_MARGIN = 0.015;

  private static final double PRESSURE_MARGIN = 0.06;

  /**
   * One reading.
   *
   * @param pressure [bar gauge]
   * @param doubtful whether the person who read it marked it so
   */
  record Mark(double time, double pressure, boolean doubtful) {}

  /**
   * An expected curve with its 90 % band [bar gauge].
   *
   * @param time ascending
   */
  record Curve(double[] time, double[] middle, double[] low, double[] high) {}

  /**
   * @param suspects all suspects; empty before there is a ranking
   * @param chosen the one whose curve shows; absent if none is
   */
  static HoldPlot of(HoldTest test, List<Suspect> suspects, Optional<Suspect> chosen) {
    double span = test.log().holdSpan();
    TimeAxis unit = TimeAxis.of(span);
    List<Reading> readings = test.log().hold();
    List<Mark> marks = marks(readings, unit);
    Optional<Curve> curve = chosen.flatMap(s -> curve(s, test.id(), unit));
    boolean clamped = !test.clamped().isEmpty();
    return new HoldPlot(
        test.id(),
        caption(test, readings.size()),
        clamped,
        unit,
        Scale.around(0, unit.in(Math.max(span, 1)), TIME_MARGIN, 0),
        pressureScale(test.id(), unit, marks, suspects, curve),
        marks,
        legend(readings.size(), marks.size()),
        curve,
        clamped ? OptionalDouble.of(unit.in(test.clampTime())) : OptionalDouble.empty());
  }

  private static List<Mark> marks(List<Reading> readings, TimeAxis unit) {
    double[] pressures = readings.stream().mapToDouble(Reading::pressure).toArray();
    return Arrays.stream(Thinning.keep(pressures, MOST_MARKS))
        .mapToObj(readings::get)
        .map(r -> new Mark(unit.in(r.time()), r.pressure() / 1e5, r.doubtful()))
        .toList();
  }

  private static Optional<Curve> curve(Suspect suspect, String test, TimeAxis unit) {
    return suspect.curves().stream()
        .filter(curve -> curve.test().equals(test))
        .findFirst()
        .map(curve -> curve(curve, unit));
  }

  private static Curve curve(HoldCurve curve, TimeAxis unit) {
    int[] kept = Thinning.keep(curve.middle(), MOST_CURVE_POINTS);
    return new Curve(
        Arrays.stream(pick(curve.time(), kept)).map(unit::in).toArray(),
        bar(pick(curve.middle(), kept)),
        bar(pick(curve.low(), kept)),
        bar(pick(curve.high(), kept)));
  }

  private static double[] pick(double[] values, int[] kept) {
    return IntStream.of(kept).mapToDouble(i -> values[i]).toArray();
  }

  private static double[] bar(double[] pressures) {
    return Arrays.stream(pressures).map(p -> p / 1e5).toArray();
  }

  private static Scale pressureScale(
      String test,
      TimeAxis unit,
      List<Mark> marks,
      List<Suspect> suspects,
      Optional<Curve> chosen) {
    DoubleStream plausible =
        suspects.stream()
            .filter(suspect -> suspect.probability() >= PLAUSIBLE)
            .flatMap(suspect -> curve(suspect, test, unit).stream())
            .flatMapToDouble(HoldPlot::ends);
    double[] seen =
        Stream.of(
                plausible,
                chosen.stream().flatMapToDouble(HoldPlot::ends),
                marks.stream().mapToDouble(Mark::pressure))
            .flatMapToDouble(s -> s)
            .filter(Double::isFinite)
            .toArray();
    return seen.length == 0
        ? Scale.around(0, 1, 0, 1)
        : Scale.around(
            Arrays.stream(seen).min().getAsDouble(),
            Arrays.stream(seen).max().getAsDouble(),
            PRESSURE_MARGIN,
            NARROWEST);
  }

  private static DoubleStream ends(Curve curve) {
    return DoubleStream.concat(Arrays.stream(curve.low()), Arrays.stream(curve.high()));
  }

  private static String legend(int readings, int marks) {
    return marks == readings ? "measured" : "measured (" + marks + " of " + readings + " readings)";
  }

  private static String caption(HoldTest test, int readings) {
    List<String> words = new ArrayList<>();
    words.add(
        test.clamped().isEmpty()
            ? "No clamps"
            : "Clamped: " + String.join(", ", test.clamped().stream().sorted().toList()));
    words.add(readings + " readings in " + Figures.duration(test.log().holdSpan()));
    test.fuelTemperature()
        .ifPresent(t -> words.add(String.format(Locale.ROOT, "fuel %.0f °C", t - 273.15)));
    if (!test.date().isEmpty()) {
      words.add(test.date());
    }
    return String.join("  ·  ", words);
  }
}
