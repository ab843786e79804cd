package holdcurve.ui.window.suspects;

import holdcurve.infer.HoldCurve;
import holdcurve.infer.Suspect;
import holdcurve.job.HoldTest;
import holdcurve.log.Reading;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

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

  /** Room at the ends, so that marks there stay whole [-]. */
  private static final double TIME_MARGIN = 0.015;

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
        PlotWords.caption(test),
        clamped,
        unit,
        Scale.around(0, unit.in(Math.max(span, 1)), TIME_MARGIN, 0),
        PressureRange.of(marks, plausible(suspects, test.id(), unit), curve),
        marks,
        PlotWords.legend(readings.size(), marks.size()),
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

  private static List<Curve> plausible(List<Suspect> suspects, String test, TimeAxis unit) {
    return suspects.stream()
        .filter(suspect -> suspect.probability() >= PLAUSIBLE)
        .flatMap(suspect -> curve(suspect, test, unit).stream())
        .toList();
  }

  private static double[] pick(double[] values, int[] kept) {
    return IntStream.of(kept).mapToDouble(i -> values[i]).toArray();
  }

  private static double[] bar(double[] pressures) {
    return Arrays.stream(pressures).map(p -> p / 1e5).toArray();
  }
}
