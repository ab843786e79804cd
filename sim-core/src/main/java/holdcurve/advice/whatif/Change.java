package holdcurve.advice.whatif;

import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/**
 * Something done to a circuit, or several things in order.
 *
 * @param what in plain words, one entry a thing done
 * @param circuit what it does to the circuit as described
 * @param cures which faults are gone afterwards
 * @param adds what it does to the condition, faults included
 * @param fuelTemperature of the fuel at the pump stop [K], where it is changed
 * @param warmth of the fuel over its surroundings at the pump stop [K], where it is changed
 */
public record Change(
    List<String> what,
    UnaryOperator<Circuit> circuit,
    Predicate<Hypothesis.Member> cures,
    UnaryOperator<Condition> adds,
    OptionalDouble fuelTemperature,
    OptionalDouble warmth) {
  public Change {
    what = List.copyOf(what);
    Objects.requireNonNull(circuit);
    Objects.requireNonNull(cures);
    Objects.requireNonNull(adds);
  }

  /** Everything stays as it is. */
  public static Change none() {
    return new Change(
        List.of(), c -> c, m -> false, c -> c, OptionalDouble.empty(), OptionalDouble.empty());
  }

  static Change ofCircuit(String what, UnaryOperator<Circuit> circuit) {
    return none().with(what, circuit);
  }

  private Change with(String words, UnaryOperator<Circuit> change) {
    return new Change(List.of(words), change, cures, adds, fuelTemperature, warmth);
  }

  /** This, then another. */
  public Change and(Change next) {
    List<String> both = new ArrayList<>(what);
    both.addAll(next.what);
    return new Change(
        both,
        c -> next.circuit.apply(circuit.apply(c)),
        cures.or(next.cures),
        c -> next.adds.apply(adds.apply(c)),
        next.fuelTemperature.isPresent() ? next.fuelTemperature : fuelTemperature,
        next.warmth.isPresent() ? next.warmth : warmth);
  }

  /** Whether nothing is done. */
  public boolean isNone() {
    return what.isEmpty();
  }
}
