package holdcurve.bench.droptest;

import holdcurve.bench.flowsheet.Standing;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.part.Injector;
import holdcurve.record.finding.DropTestResult;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/** What a drop test tells a job. */
public final class DropFinding {
  private DropFinding() {}

  /**
   * The result as a finding on the circuit's injectors.
   *
   * @return empty where the circuit has no set of injectors, or more than one
   */
  public static Optional<DropTestResult> of(
      DropReport report, Circuit circuit, Optional<LocalDate> day) {
    List<Part> sets = circuit.partsOf(Injector.KIND);
    if (sets.size() != 1) {
      return Optional.empty();
    }
    boolean watched =
        !report.test().idleFalls().isEmpty()
            && report.test().firings().stream().anyMatch(f -> f.later().isPresent());
    return Optional.of(
        new DropTestResult(
            sets.get(0).id(),
            ids(report, i -> isOut(i) && i.departure().middle() < 0),
            ids(report, i -> isOut(i) && i.departure().middle() > 0),
            ids(report, InjectorDrop::staysOpen),
            watched,
            day));
  }

  private static boolean isOut(InjectorDrop injector) {
    return !injector.moves() || injector.sure() && injector.standing() != Standing.IN_LINE;
  }

  private static List<String> ids(DropReport report, Predicate<InjectorDrop> of) {
    return report.injectors().stream().filter(of).map(InjectorDrop::id).sorted().toList();
  }
}
