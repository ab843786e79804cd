package holdcurve.physics.part;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Ports;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.network.NetworkBuilder;
import holdcurve.physics.network.PartEquations;
import java.util.List;

/**
 * The extra injector for cold starts: shut in every test here, and as able to drip as the others.
 *
 * <p>Sits at one connection point and weeps into the intake manifold, in proportion to pressure.
 */
public final class ColdStartInjector implements PartEquations {
  public static final Property WEEP =
      Property.of(
          "weep",
          Unit.MILLILITRE_PER_MINUTE,
          0.003,
          0,
          50,
          0.8,
          "flow past its healthy tip at 2 bar",
          "assumed");

  public static final ColdStartInjector KIND = new ColdStartInjector();

  private static final List<Property> PROPERTIES = List.of(WEEP);

  private ColdStartInjector() {}

  @Override
  public String id() {
    return "cold-start-injector";
  }

  @Override
  public String title() {
    return "Cold-start injector";
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
    network.addPassage(
        part.id() + " tip", part.from(), Circuit.MANIFOLD, Seats.weep(part.value(WEEP)));
  }
}
