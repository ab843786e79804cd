package holdcurve.advice.whatif;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.PartKind;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.part.Filter;
import holdcurve.physics.part.Injector;
import holdcurve.physics.part.Pump;
import holdcurve.physics.part.Regulator;
import java.util.Map;
import java.util.Set;
import org.apache.commons.math3.random.Well19937c;

/**
 * Spreads what a circuit file leaves to its defaults and a hold can't tell: what the pump delivers,
 * what the injectors spray, how steep the regulator is.
 */
final class Unstated {
  private static final Map<PartKind, Set<Property>> UNSEEN_IN_HOLDS =
      Map.of(
          Pump.KIND, Set.of(Pump.FREE_FLOW, Pump.STALL, Pump.RELIEF),
          Injector.KIND, Set.of(Injector.STATIC_FLOW),
          Regulator.KIND, Set.of(Regulator.GAIN),
          Filter.KIND, Set.copyOf(Filter.KIND.properties()));

  private Unstated() {}

  /**
   * @param seed of the spread; a property of a part spreads alike whatever else is changed
   */
  static Circuit spread(Circuit circuit, long seed) {
    return circuit.map(part -> spread(part, seed));
  }

  private static Part spread(Part part, long seed) {
    Part changed = part;
    for (Property property : UNSEEN_IN_HOLDS.getOrDefault(part.kind(), Set.of())) {
      if (!part.states(property) && property.spread() > 0) {
        long own = seed * 31 + (part.id() + "." + property.stem()).hashCode();
        double z = new Well19937c(own).nextGaussian();
        double value = part.value(property) * Math.exp(property.spread() * z);
        changed = changed.with(property, clipped(property, value));
      }
    }
    return changed;
  }

  private static double clipped(Property property, double value) {
    return Math.max(property.least(), Math.min(property.most(), value));
  }
}
