package holdcurve.physics.part;

import holdcurve.physics.circuit.PartKind;
import holdcurve.physics.circuit.Ports;
import holdcurve.physics.circuit.Property;
import java.util.List;

/** The tank, open to the air: a boundary that other parts name by its id. */
public final class Tank implements PartKind {
  public static final Tank KIND = new Tank();

  private Tank() {}

  @Override
  public String id() {
    return "tank";
  }

  @Override
  public String title() {
    return "Tank";
  }

  @Override
  public Ports ports() {
    return Ports.PLACE;
  }

  @Override
  public List<Property> properties() {
    return List.of();
  }
}
