package holdcurve.ui.window.plot;

import holdcurve.common.message.PressureUnit;
import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** Ends of the pressure axis: readings, plausible suspects and the chosen one all fit. */
final class PressureRange {
  /** Shown at least [Pa]: readings to 0.02 bar then look quiet. */
  private static final double NARROWEST = 1e4;

  /** Room at the ends, so that marks there stay whole [-]. */
  private static final double MARGIN = 0.06;

  /** Shown where nothing was read yet [Pa]. */
  private static final double EMPTY = 3e5;

  private PressureRange() {}

  /**
   * @param plausible curves of suspects worth looking through: the axis holds still meanwhile
   * @param unit of all pressures
   */
  static Scale of(
      List<HoldPlot.Mark> marks,
      List<HoldPlot.Curve> plausible,
      Optional<HoldPlot.Curve> chosen,
      PressureUnit unit) {
    DoubleSummaryStatistics seen =
        Stream.of(
                marks.stream().mapToDouble(HoldPlot.Mark::pressure),
                plausible.stream().flatMapToDouble(PressureRange::ends),
                chosen.stream().flatMapToDouble(PressureRange::ends))
            .flatMapToDouble(values -> values)
            .filter(Double::isFinite)
            .summaryStatistics();
    return seen.getCount() == 0
        ? Scale.around(0, unit.fromPascal(EMPTY), 0, 0)
        : Scale.around(seen.getMin(), seen.getMax(), MARGIN, unit.fromPascal(NARROWEST));
  }

  private static DoubleStream ends(HoldPlot.Curve curve) {
    return DoubleStream.concat(Arrays.stream(curve.low()), Arrays.stream(curve.high()));
  }
}
