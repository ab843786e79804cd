package holdcurve.bench.flowsheet;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.stat.regression.SimpleRegression;

/**
 * The straight line through an injector's dynamic flows, in the words of SAE J1832: Q_d = m · PW +
 * Y = m · (PW − X), with slope m, flow offset Y and time offset X. The slope is the flow of the
 * open injector; the time offset is what opening later than it shuts costs.
 *
 * <p>The shortest pulses bend away from the line; those that depart by more than the limit are left
 * out one by one, which gives the beginning of the linear range.
 *
 * @param slope m [m³/s]
 * @param slopeError its standard error [m³/s]; NaN with two pulse widths
 * @param flowOffset Y [m³]
 * @param flowOffsetError its standard error [m³]; NaN with two pulse widths
 * @param linearFrom shortest pulse on the line [s]
 * @param linearTo longest pulse on the line [s]
 */
public record DynamicLine(
    double slope,
    double slopeError,
    double flowOffset,
    double flowOffsetError,
    double linearFrom,
    double linearTo) {
  /** A bend at the short end can only be seen while so many points are left. */
  private static final int FEWEST_TO_DROP = 4;

  /** Time offset X = −Y/m [s]. */
  public double timeOffset() {
    return -flowOffset / slope;
  }

  /** Flow of a pulse on the line [m³]. */
  public double at(double pulse) {
    return slope * pulse + flowOffset;
  }

  /**
   * Fits the line.
   *
   * @param limit departure from the line, as a share of the flow, that ends the linear range [-]
   * @return empty with fewer than two pulse widths, or if flow doesn't rise with the pulse
   */
  public static Optional<DynamicLine> fit(List<DynamicFlow> flows, double limit) {
    List<DynamicFlow> kept =
        flows.stream().sorted(Comparator.comparingDouble(DynamicFlow::pulse)).toList();
    if (kept.stream().mapToDouble(DynamicFlow::pulse).distinct().count() < 2) {
      return Optional.empty();
    }
    while (kept.size() >= FEWEST_TO_DROP && isBentAtShortest(kept, limit)) {
      kept = kept.subList(1, kept.size());
    }
    return Optional.of(through(kept)).filter(line -> line.slope > 0);
  }

  private static boolean isBentAtShortest(List<DynamicFlow> flows, double limit) {
    DynamicFlow shortest = flows.get(0);
    double expected = through(flows.subList(1, flows.size())).at(shortest.pulse());
    return Math.abs(shortest.volume() - expected) > limit * shortest.volume();
  }

  private static DynamicLine through(List<DynamicFlow> flows) {
    SimpleRegression regression = new SimpleRegression();
    flows.forEach(flow -> regression.addData(flow.pulse(), flow.volume()));
    return new DynamicLine(
        regression.getSlope(),
        regression.getSlopeStdErr(),
        regression.getIntercept(),
        regression.getInterceptStdErr(),
        flows.get(0).pulse(),
        flows.get(flows.size() - 1).pulse());
  }
}
