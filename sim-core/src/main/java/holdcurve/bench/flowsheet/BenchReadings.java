package holdcurve.bench.flowsheet;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What was read from one injector on the bench at one time. Anything may be missing.
 *
 * @param staticFlow held open [m³/s], at the bench's pressure and in its fluid
 * @param dynamicFlows one a pulse width
 * @param drops counted with the injector shut
 * @param spray grade of the spray picture, 1 the best; see {@link BenchLimits}
 * @param coil resistance [Ω]
 */
public record BenchReadings(
    OptionalDouble staticFlow,
    List<DynamicFlow> dynamicFlows,
    Optional<BenchDrops> drops,
    Optional<Integer> spray,
    OptionalDouble coil) {
  public BenchReadings {
    dynamicFlows = List.copyOf(dynamicFlows);
  }

  /** Whether nothing was measured: a line that was begun and left. */
  public boolean isEmpty() {
    return staticFlow.isEmpty()
        && dynamicFlows.isEmpty()
        && drops.isEmpty()
        && spray.isEmpty()
        && coil.isEmpty();
  }

  /** Volume of a pulse of this width [m³], if one was measured. */
  public OptionalDouble dynamicFlow(double pulse) {
    return dynamicFlows.stream()
        .filter(flow -> Math.abs(flow.pulse() - pulse) < 1e-6)
        .mapToDouble(DynamicFlow::volume)
        .findFirst();
  }
}
