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
 * Gas-charged damper: a diaphragm with shut-in gas behind it, which follows p·Vⁿ = const. Up to its
 * charge pressure the gas holds the diaphragm on its stop and takes nothing; above, it takes much.
 * Gas keeps its temperature in slow changes (n = 1) and not in fast ones (n = 1.4).
 *
 * <p>Sits at one connection point. A leak of its gas shows as a low {@code charge}, a torn
 * diaphragm as a leak to the air with no {@code gas}.
 */
public final class Accumulator implements PartEquations {
  public static final Property GAS =
      Property.of(
          "gas", Unit.MILLILITRE, 10, 0, 500, 0.5, "gas in it at its charge pressure", "assumed");
  public static final Property CHARGE =
      Property.of(
          "charge", Unit.BAR, 1.2, 0.1, 6, 0.2, "pressure at which it was filled", "assumed");

  public static final Accumulator KIND = new Accumulator();

  private static final List<Property> PROPERTIES = List.of(GAS, CHARGE);

  private Accumulator() {}

  @Override
  public String id() {
    return "accumulator";
  }

  @Override
  public String title() {
    return "Gas damper";
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
    double exponent = network.operation().pace().gasExponent();
    network.addStorage(
        part.from(), GasSpring.charged(part.value(GAS), part.value(CHARGE), exponent, STOP_WIDTH));
  }

  /** Over what pressure the diaphragm leaves its stop: assumed, 20 mbar [Pa]. */
  private static final double STOP_WIDTH = 2e3;
}
