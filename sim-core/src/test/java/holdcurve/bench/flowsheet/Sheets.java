package holdcurve.bench.flowsheet;

import holdcurve.physics.fluid.PureLiquid;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Sheets for tests: invented flows. */
final class Sheets {
  static final BenchLimits LIMITS = BenchLimits.shipped();
  static final LocalDate TODAY = LocalDate.of(2026, 11, 24);
  static final FlowPoint POINT = new FlowPoint(3e5, PureLiquid.nHeptane(), 293.15);
  static final Bench BENCH = new Bench(POINT, 0.01, 0.02);

  private Sheets() {}

  static BenchReadings flow(double millilitresPerMinute) {
    return new BenchReadings(
        OptionalDouble.of(millilitresPerMinute * 1e-6 / 60),
        List.of(),
        Optional.empty(),
        Optional.empty(),
        OptionalDouble.empty());
  }

  /** Injectors 1, 2, 3 ... with these static flows, before and after service; 0 for none. */
  static BenchSheet sheet(double[] before, double[] after) {
    List<BenchInjector> injectors = new ArrayList<>();
    for (int i = 0; i < Math.max(before.length, after.length); i++) {
      injectors.add(
          new BenchInjector(
              Integer.toString(i + 1), Optional.empty(), reading(before, i), reading(after, i)));
    }
    return new BenchSheet(
        "invented",
        BENCH,
        BENCH,
        OptionalDouble.empty(),
        Optional.empty(),
        Optional.empty(),
        injectors,
        List.of());
  }

  private static Optional<BenchReadings> reading(double[] flows, int i) {
    return i < flows.length ? Optional.of(flow(flows[i])) : Optional.empty();
  }

  static BenchReport judge(double... flows) {
    return BenchAssessment.judge(sheet(flows, new double[0]), POINT, LIMITS, TODAY);
  }
}
