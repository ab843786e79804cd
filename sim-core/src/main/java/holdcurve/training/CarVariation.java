package holdcurve.training;

import holdcurve.inference.likelihood.SoundWeep;
import holdcurve.inference.prior.PriorFile;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Property;
import holdcurve.record.limit.PassLimit;
import org.apache.commons.math3.random.Well19937c;

/** Makes a car that differs from its description, as every car does. */
final class CarVariation {
  /** Share of a property's spread by which cars of one description differ [-]. */
  private static final double SHARE = PriorFile.section("training").value("spread_share");

  private CarVariation() {}

  /**
   * Parts of one kind are of one make, and differ alike. Without a fault the car is sound, as in a
   * ranking: else an apprentice would look for a second fault.
   */
  static Circuit of(Circuit circuit, long seed) {
    SoundWeep weep = new SoundWeep(circuit, PassLimit.usual(circuit), TrainingCar.PRIME_TIME);
    return weep.within(circuit.map(part -> spread(part, seed)));
  }

  private static Part spread(Part part, long seed) {
    Part changed = part;
    for (Property property : part.kind().properties()) {
      if (!part.states(property) && property.spread() > 0) {
        long own = seed * 31 + (part.kind().id() + "." + property.stem()).hashCode();
        double z = new Well19937c(own).nextGaussian();
        double value = part.value(property) * Math.exp(SHARE * property.spread() * z);
        changed =
            changed.with(property, Math.max(property.least(), Math.min(property.most(), value)));
      }
    }
    return changed;
  }
}
