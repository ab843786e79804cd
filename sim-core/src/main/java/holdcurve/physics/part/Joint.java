package holdcurve.physics.part;

import holdcurve.physics.circuit.PartKind;
import holdcurve.physics.circuit.Ports;
import holdcurve.physics.circuit.Property;
import java.util.List;

/**
 * A hose or pipe joint worth naming, such as that of the gauge tee. It has no equations until it
 * leaks; naming it gives the leak a place of its own in a ranking.
 */
public final class Joint implements PartKind {

  public static final Joint KIND = new Joint();

  private static final List<Property> PROPERTIES = List.of();

  private Joint() {}

  @Override
  public String id() {
    return "joint";
  }

  @Override
  public String title() {
    return "Joint";
  }

  @Override
  public Ports ports() {
    return Ports.ONE;
  }

  @Override
  public boolean closesLine() {
    return false;
  }

  @Override
  public List<Property> properties() {
    return PROPERTIES;
  }
}
