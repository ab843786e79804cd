package holdcurve.ui.window.suspects;

import java.util.Arrays;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** Ends of the pressure axis: readings, plausible suspects and the chosen one all fit. */
final class PressureRange {
  /** Shown at least [bar]: readings to 0.02 bar then look quiet. */
  private static final double NARROWEST = 0.1;

  /** Room at the ends, so that marks there stay whole [-]. */
  private static final double MARGIN = 0.06;

  private PressureRange() {}

  /**
   * @param plausible curves of suspects worth looking through: the axis holds still meanwhile
   * @return in bar
   */
  static Scale of(
      List<HoldPlot.Mark> marks, List<HoldPlot.Curve> plausible, Optional<HoldPlot.Curve> chosen) {
    DoubleSummaryStatistics seen =
        Stream.of(
                marks.stream().mapToDouble(HoldPlot.Mark::pressure),
                plausible.stream().flatMapToDouble(PressureRange::ends),
                chosen.stream().flatMapToDouble(PressureRange::ends))
            .flatMapToDouble(values -> values)
            .filter(Double::isFinite)
            .summaryStatistics();
    return seen.getCount() == 0
        ? Scale.around(0, 1, 0, 1)
        : Scale.around(seen.getMin(), seen.getMax(), MARGIN, NARROWEST);
  }

  private static DoubleStream ends(HoldPlot.Curve curve) {
    return DoubleStream.concat(Arrays.stream(curve.low()), Arrays.stream(curve.high()));
  }
}
