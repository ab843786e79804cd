package holdcurve.physics.part;

import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Ports;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.flow.OrificeLaw;
import holdcurve.physics.network.NetworkBuilder;
import holdcurve.physics.network.PartEquations;
import java.util.List;

/**
 * The fuel filter: a resistance to flow and some fuel in its housing, half of it on either side.
 *
 * <p>Its {@code drop} is stated at 1 L/min; the flow goes in proportion to pressure up to about
 * there, as through a fine medium, and with its root above. A clogged filter is a large {@code
 * drop}: it shows while the pump runs, and in a hold not at all.
 */
public final class Filter implements PartEquations {
  public static final Property DROP =
      Property.of("drop", Unit.BAR, 0.05, 0.001, 5, 0.6, "pressure it takes at 1 L/min", "assumed");
  public static final Property VOLUME =
      Property.of("volume", Unit.MILLILITRE, 150, 1, 2000, 0.3, "fuel in its housing", "assumed");

  public static final Filter KIND = new Filter();

  private static final List<Property> PROPERTIES = List.of(DROP, VOLUME);

  private Filter() {}

  @Override
  public String id() {
    return "filter";
  }

  @Override
  public String title() {
    return "Filter";
  }

  @Override
  public Ports ports() {
    return Ports.TWO;
  }

  @Override
  public List<Property> properties() {
    return PROPERTIES;
  }

  @Override
  public void assemble(Part part, NetworkBuilder network) {
    network.addLiquid(part.from(), part.value(VOLUME) / 2);
    network.addLiquid(part.to(), part.value(VOLUME) / 2);
    OrificeLaw element =
        OrificeLaw.throughPoint(ONE_LITRE_PER_MINUTE, part.value(DROP), part.value(DROP));
    network.addOpenLine(part.id(), part.from(), part.to(), element);
  }

  private static final double ONE_LITRE_PER_MINUTE = Unit.LITRE_PER_MINUTE.toSi(1);
}
