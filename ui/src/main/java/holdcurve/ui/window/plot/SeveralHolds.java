package holdcurve.ui.window.plot;

import holdcurve.common.message.PressureUnit;
import holdcurve.common.number.Interpolation;
import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;

/**
 * Several holds over one time axis, and how far each reading lies from what was expected.
 *
 * @param timeAxis unit of all times here
 * @param time ends of the time axis
 * @param unit unit of all pressures here
 * @param pressure ends of the pressure axis
 * @param off ends of the axis of residuals; absent where nothing was expected
 * @param holds in the order of the legend
 */
public record SeveralHolds(
    TimeAxis timeAxis,
    Scale time,
    PressureUnit unit,
    Scale pressure,
    Optional<Scale> off,
    List<Hold> holds) {
  /** Readings that are off by less than this look quiet [Pa]. */
  private static final double NARROWEST_OFF = 5e3;

  private static final double MARGIN = 0.08;

  public SeveralHolds {
    holds = List.copyOf(holds);
  }

  /**
   * One hold of them.
   *
   * @param name id of the hold test
   * @param marks readings
   * @param curve what is expected; absent before that is known
   * @param residuals one a reading; empty where nothing is expected
   */
  public record Hold(
      String name,
      List<HoldPlot.Mark> marks,
      Optional<HoldPlot.Curve> curve,
      List<Residual> residuals) {
    public Hold {
      marks = List.copyOf(marks);
      residuals = List.copyOf(residuals);
    }
  }

  /**
   * A reading against what was expected.
   *
   * @param off measured minus expected
   * @param low lower end of where nine in ten lie; {@code high} the upper
   */
  public record Residual(double time, double off, double low, double high) {}

  /**
   * @param plots of one time axis; at least one
   */
  public static SeveralHolds of(List<HoldPlot> plots) {
    return of(plots.stream().map(HoldPlot::test).toList(), plots);
  }

  /**
   * Likewise, under other names.
   *
   * @param names one a plot
   */
  public static SeveralHolds of(List<String> names, List<HoldPlot> plots) {
    HoldPlot first = plots.get(0);
    List<Hold> holds = new ArrayList<>();
    for (int i = 0; i < plots.size(); i++) {
      holds.add(hold(names.get(i), plots.get(i)));
    }
    return new SeveralHolds(
        first.timeAxis(),
        first.time(),
        first.unit(),
        around(
            plots.stream()
                .flatMapToDouble(p -> DoubleStream.of(p.pressure().low(), p.pressure().high())),
            0,
            0),
        holds.stream().allMatch(hold -> hold.residuals().isEmpty())
            ? Optional.empty()
            : Optional.of(
                around(
                    holds.stream()
                        .flatMap(hold -> hold.residuals().stream())
                        .flatMapToDouble(r -> DoubleStream.of(0, r.off(), r.low(), r.high())),
                    MARGIN,
                    first.unit().fromPascal(NARROWEST_OFF))),
        holds);
  }

  private static Scale around(DoubleStream values, double margin, double narrowest) {
    DoubleSummaryStatistics seen = values.filter(Double::isFinite).summaryStatistics();
    return Scale.around(seen.getMin(), seen.getMax(), margin, narrowest);
  }

  /** The same without what is off. */
  public SeveralHolds withoutResiduals() {
    return new SeveralHolds(timeAxis, time, unit, pressure, Optional.empty(), holds);
  }

  private static Hold hold(String name, HoldPlot plot) {
    List<Residual> residuals = new ArrayList<>();
    plot.curve().ifPresent(curve -> plot.marks().forEach(mark -> residual(mark, curve, residuals)));
    return new Hold(name, plot.marks(), plot.curve(), residuals);
  }

  /** Beyond the ends of the curve nothing was expected. */
  private static void residual(HoldPlot.Mark mark, HoldPlot.Curve curve, List<Residual> residuals) {
    double[] time = curve.time();
    int last = time.length - 1;
    if (last < 1 || mark.time() < time[0] || mark.time() > time[last]) {
      return;
    }
    double middle = Interpolation.at(time, curve.middle(), mark.time());
    residuals.add(
        new Residual(
            mark.time(),
            mark.pressure() - middle,
            Interpolation.at(time, curve.low(), mark.time()) - middle,
            Interpolation.at(time, curve.high(), mark.time()) - middle));
  }
}
