package holdcurve.physics.part;

import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Ports;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.network.NetworkBuilder;
import holdcurve.physics.network.PartEquations;
import java.util.List;

/**
 * The valve that keeps the pressure in when the pump stops.
 *
 * <p>Forward it opens smoothly once its inlet exceeds its outlet by {@code crack}; backward it lets
 * past its {@code weep}, which is stated at 2 bar and goes in proportion to pressure. {@code from}
 * is the pump side.
 */
public final class CheckValve implements PartEquations {
  public static final Property CRACK =
      Property.of("crack", Unit.BAR, 0.1, 0, 2, 0.4, "pressure that opens it", "assumed");
  public static final Property WEEP =
      Property.of(
          "weep",
          Unit.MILLILITRE_PER_MINUTE,
          0.015,
          0,
          50,
          0.8,
          "flow back past its healthy seat at 2 bar",
          "assumed");

  public static final CheckValve KIND = new CheckValve();

  private static final List<Property> PROPERTIES = List.of(CRACK, WEEP);

  private CheckValve() {}

  @Override
  public String id() {
    return "check-valve";
  }

  @Override
  public String title() {
    return "Check valve";
  }

  @Override
  public Ports ports() {
    return Ports.TWO;
  }

  @Override
  public boolean isOpen() {
    return false;
  }

  @Override
  public List<Property> properties() {
    return PROPERTIES;
  }

  @Override
  public void assemble(Part part, NetworkBuilder network) {
    network.addPassage(
        part.id(), part.from(), part.to(), new CheckValveLaw(part.value(CRACK), part.value(WEEP)));
  }
}
