package holdcurve.physics.part;

import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Ports;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.network.NetworkBuilder;
import holdcurve.physics.network.PartEquations;
import holdcurve.physics.storage.GasSpring;
import java.util.List;

/**
 * Where the pressure gauge is tee’d in, with the short hose that leads to it.
 *
 * <p>Sits at one connection point; a circuit has exactly one. The needle follows with a first-order
 * lag. The gauge hose is a dead end that priming doesn't flush, so some air stays in it: it is
 * squeezed as pV = const and is often the softest thing in the whole circuit. Its class error and
 * the eye's reading error belong to the job, not here.
 */
public final class Gauge implements PartEquations {
  public static final Property LAG =
      Property.of(
          "lag", Unit.SECOND, 0.5, 0.01, 10, 0.8, "how slowly the needle follows", "assumed");
  public static final Property AIR =
      Property.of(
          "air",
          Unit.MILLILITRE,
          1,
          0,
          30,
          0.7,
          "air trapped in its dead-end hose, at no pressure",
          "assumed");

  public static final Gauge KIND = new Gauge();

  private static final List<Property> PROPERTIES = List.of(LAG, AIR);

  private Gauge() {}

  @Override
  public String id() {
    return "gauge";
  }

  @Override
  public String title() {
    return "Gauge tee";
  }

  @Override
  public Ports ports() {
    return Ports.ONE;
  }

  @Override
  public List<Property> properties() {
    return PROPERTIES;
  }

  @Override
  public void assemble(Part part, NetworkBuilder network) {
    network.setGauge(part.from(), part.value(LAG));
    if (part.value(AIR) > 0) {
      network.addStorage(
          part.from(),
          GasSpring.trappedAir(part.value(AIR), network.operation().pace().gasExponent()));
    }
  }
}
