package holdcurve.physics.part;

import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Ports;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.network.NetworkBuilder;
import holdcurve.physics.network.PartEquations;
import java.util.List;

/**
 * The rail or ring line that feeds the injectors: fuel at one connection point, in a wall taken as
 * rigid. Hoses that join its pieces are parts of their own.
 */
public final class Rail implements PartEquations {
  public static final Property VOLUME =
      Property.of("volume", Unit.MILLILITRE, 60, 1, 1000, 0.3, "fuel it holds", "assumed");

  public static final Rail KIND = new Rail();

  private static final List<Property> PROPERTIES = List.of(VOLUME);

  private Rail() {}

  @Override
  public String id() {
    return "rail";
  }

  @Override
  public String title() {
    return "Rail";
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
    network.addLiquid(part.from(), part.value(VOLUME));
  }
}
