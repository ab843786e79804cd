package holdcurve.advice.whatif;

import holdcurve.common.input.Require;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.physics.circuit.Circuit;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * A repair that could be ordered.
 *
 * @param name what the user calls it
 * @param part id of the part that is replaced, if one is: cures what sits in it alone
 * @param cures faults it puts right besides, as {@code fault} or {@code fault@site}
 * @param price of the material, in the currency of the list
 * @param minutes of work
 */
public record RepairOffer(
    String name, Optional<String> part, List<String> cures, double price, double minutes) {
  public RepairOffer {
    cures = List.copyOf(cures);
    Require.notNegative(price, "price of '" + name + "'", "");
    Require.notNegative(minutes, "time for '" + name + "'", "min");
  }

  /** Whether the user said what it costs, in money or in time. */
  public boolean isPriced() {
    return price > 0 || minutes > 0;
  }

  /** Whether a fault is gone after this repair. */
  public boolean cures(Hypothesis.Member member) {
    return part.filter(id -> member.site().parts().equals(List.of(id))).isPresent()
        || cures.stream().anyMatch(fault -> Changes.cures(fault, member));
  }

  /** As a change, to see what it would do. */
  public Change change(Circuit circuit) {
    UnaryOperator<Circuit> renewed =
        part.map(id -> Changes.replace(circuit.part(id)).circuit())
            .orElse(UnaryOperator.identity());
    Change none = Change.none();
    return new Change(
        List.of(name), renewed, this::cures, none.adds(), none.fuelTemperature(), none.warmth());
  }
}
