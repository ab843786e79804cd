package holdcurve.bench.flowsheet;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.part.Injector;
import holdcurve.record.finding.DropCount;
import holdcurve.record.finding.Finding;
import holdcurve.record.finding.Moment;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What a bench sheet tells a job about its circuit. */
public final class SheetFindings {
  /** Id of the fault that stands for injectors that pass too little. */
  public static final String TIRED = "tired-injector";

  private SheetFindings() {}

  /**
   * The drops counted last, as findings for the ranking: under the bench's pressure, and each for
   * its own number where the sheet has as many injectors as the circuit.
   */
  public static List<Finding> drops(BenchReport report, Circuit circuit) {
    List<Finding> findings = new ArrayList<>();
    Optional<Part> part = injectors(circuit);
    List<InjectorReport> all = report.injectors();
    if (part.isEmpty() || all.size() != Math.round(part.get().value(Injector.COUNT))) {
      return findings;
    }
    double pressure = report.sheet().bench(report.latest()).point().pressure();
    for (int i = 0; i < all.size(); i++) {
      int number = i + 1;
      all.get(i)
          .now()
          .readings()
          .drops()
          .ifPresent(
              d ->
                  findings.add(
                      new DropCount(
                          part.get().id(),
                          java.util.OptionalInt.of(number),
                          d.drops(),
                          d.time(),
                          Moment.at(pressure))));
    }
    return findings;
  }

  /**
   * A set that passes less than the maker states, as the size of a fault: what goes behind {@code
   * --fault} to simulate it. Empty if it isn't low or nothing is stated.
   */
  public static Optional<String> tired(BenchReport report, Circuit circuit, BenchLimits limits) {
    return injectors(circuit)
        .flatMap(
            part ->
                report
                    .flowLeft()
                    .filter(left -> left.high() < 1 - limits.outOfLine())
                    .map(
                        left ->
                            String.format(
                                Locale.ROOT,
                                "%s@%s=%.0f",
                                TIRED,
                                part.id(),
                                Unit.PERCENT.fromSi(left.middle()))));
  }

  private static Optional<Part> injectors(Circuit circuit) {
    List<Part> parts = circuit.partsOf(Injector.KIND);
    return parts.size() == 1 ? Optional.of(parts.get(0)) : Optional.empty();
  }
}
