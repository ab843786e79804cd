package holdcurve.physics.part;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Ports;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.flow.OrificeLaw;
import holdcurve.physics.network.NetworkBuilder;
import holdcurve.physics.network.PartEquations;
import java.util.List;

/**
 * One or several like injectors on the rail.
 *
 * <p>Shut, each weeps into the intake manifold in proportion to pressure. With the engine running
 * the spray is averaged over time: duty · Q_s · √(Δp/Δp_rated), Δp against the manifold; a duty of
 * 1 is one held open.
 */
public final class Injector implements PartEquations {
  public static final Property COUNT =
      Property.of("count", Unit.NONE, 1, 1, 16, 0, "how many", "convention");
  public static final Property STATIC_FLOW =
      Property.of(
          "static_flow",
          Unit.MILLILITRE_PER_MINUTE,
          250,
          20,
          3000,
          0.2,
          "flow of one, held open, at the rated pressure",
          "assumed");
  public static final Property RATED =
      Property.of("rated", Unit.BAR, 2.5, 0.5, 6, 0, "pressure of the stated flow", "convention");
  public static final Property WEEP =
      Property.of(
          "weep",
          Unit.MILLILITRE_PER_MINUTE,
          0.003,
          0,
          50,
          0.8,
          "flow past the healthy tip of one at 2 bar",
          "assumed");

  public static final Injector KIND = new Injector();

  private static final List<Property> PROPERTIES = List.of(COUNT, STATIC_FLOW, RATED, WEEP);

  private Injector() {}

  @Override
  public String id() {
    return "injector";
  }

  @Override
  public String title() {
    return "Injector";
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
    double count = part.value(COUNT);
    network.addPassage(
        part.id() + " tip", part.from(), Circuit.MANIFOLD, Seats.weep(count * part.value(WEEP)));
    double duty = network.operation().injectorDuty();
    if (duty > 0) {
      double flow = duty * count * part.value(STATIC_FLOW);
      network.addPassage(
          part.id() + " spray",
          part.from(),
          Circuit.MANIFOLD,
          OrificeLaw.throughPoint(flow, part.value(RATED), SPRAY_TRANSITION));
    }
  }

  /** The spray holes are turbulent but for the last hundredths of a bar: assumed [Pa]. */
  private static final double SPRAY_TRANSITION = 2e3;
}
