package holdcurve.ui.window.plot;

import holdcurve.common.message.PressureUnit;
import holdcurve.inference.answer.HoldCurve;
import holdcurve.record.job.HoldTest;
import holdcurve.record.log.Reading;
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
 * @param unit unit of all pressures here
 * @param pressure ends of the pressure axis
 * @param marks readings
 * @param legend what the marks are
 * @param curve what is expected; absent before that is known
 * @param clampsOn when the clamps went on; absent for a test without
 * @param buildUp readings before the pump stop, shown or not
 */
public record HoldPlot(
    String test,
    String caption,
    boolean clamped,
    TimeAxis timeAxis,
    Scale time,
    PressureUnit unit,
    Scale pressure,
    List<Mark> marks,
    String legend,
    Optional<Curve> curve,
    OptionalDouble clampsOn,
    int buildUp) {

  /** Most marks drawn: more would hide one another, and take long to draw. */
  public static final int MOST_MARKS = 400;

  private static final int MOST_CURVE_POINTS = 1000;

  /** Room at the ends, so that marks there stay whole [-]. */
  private static final double TIME_MARGIN = 0.015;

  /**
   * One reading.
   *
   * @param time since the pump stopped; negative before it
   * @param doubtful whether the person who read it marked it so
   */
  public record Mark(double time, double pressure, boolean doubtful) {}

  /**
   * An expected curve with its 90 % band.
   *
   * @param time ascending
   */
  public record Curve(double[] time, double[] middle, double[] low, double[] high) {}

  /**
   * What a plot is asked to show.
   *
   * @param chosen the curve to draw; absent for none
   * @param plausible curves that have a say in the ends of the axes
   * @param span shortest length of the time axis [s]
   * @param buildUp whether readings before the pump stop are shown
   * @param unit in which pressures are shown
   */
  public record Wish(
      Optional<HoldCurve> chosen,
      List<HoldCurve> plausible,
      double span,
      boolean buildUp,
      PressureUnit unit) {
    /** Readings alone, in bar. */
    public static final Wish PLAIN =
        new Wish(Optional.empty(), List.of(), 1, false, PressureUnit.BAR);
  }

  public static HoldPlot of(HoldTest test, Wish wish) {
    double span = Math.max(test.log().holdSpan(), wish.span());
    TimeAxis axis = TimeAxis.of(span);
    double stop = test.log().pumpStop();
    List<Reading> all = test.log().readings();
    int before = test.log().beforeStop();
    List<Reading> shown = wish.buildUp() ? all : all.subList(before, all.size());
    List<Mark> marks = marks(shown, stop, axis, wish.unit());
    Optional<Curve> curve = wish.chosen().map(chosen -> curve(chosen, axis, wish.unit()));
    boolean clamped = !test.clamped().isEmpty();
    double first = shown.isEmpty() ? 0 : Math.min(0, shown.get(0).time() - stop);
    return new HoldPlot(
        test.id(),
        PlotWords.caption(test, all.size() - before),
        clamped,
        axis,
        Scale.around(axis.in(first), axis.in(span), TIME_MARGIN, 0),
        wish.unit(),
        PressureRange.of(
            marks,
            wish.plausible().stream().map(one -> curve(one, axis, wish.unit())).toList(),
            curve,
            wish.unit()),
        marks,
        PlotWords.legend(shown.size(), marks.size()),
        curve,
        clamped ? OptionalDouble.of(axis.in(test.clampTime())) : OptionalDouble.empty(),
        before);
  }

  /** Only what is kept is looked at closely: a logger's log is long. */
  private static List<Mark> marks(
      List<Reading> readings, double stop, TimeAxis axis, PressureUnit unit) {
    double[] pressures = readings.stream().mapToDouble(Reading::pressure).toArray();
    return Arrays.stream(Thinning.keep(pressures, MOST_MARKS))
        .mapToObj(readings::get)
        .map(r -> new Mark(axis.in(r.time() - stop), unit.fromPascal(r.pressure()), r.doubtful()))
        .toList();
  }

  private static Curve curve(HoldCurve curve, TimeAxis axis, PressureUnit unit) {
    int[] kept = Thinning.keep(curve.middle(), MOST_CURVE_POINTS);
    return new Curve(
        Arrays.stream(pick(curve.time(), kept)).map(axis::in).toArray(),
        in(unit, pick(curve.middle(), kept)),
        in(unit, pick(curve.low(), kept)),
        in(unit, pick(curve.high(), kept)));
  }

  private static double[] pick(double[] values, int[] kept) {
    return IntStream.of(kept).mapToDouble(i -> values[i]).toArray();
  }

  private static double[] in(PressureUnit unit, double[] pressures) {
    return Arrays.stream(pressures).map(unit::fromPascal).toArray();
  }
}
