package holdcurve.physics.part;

import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Ports;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.flow.Pipe;
import holdcurve.physics.network.NetworkBuilder;
import holdcurve.physics.network.PartEquations;
import holdcurve.physics.storage.ThickTube;
import java.util.List;

/**
 * Rigid line of metal or plastic. It can't be clamped.
 *
 * <p>Half of its fuel and of its wall stands at each end. The wall gives as a thick tube held
 * lengthwise (Lamé); of steel that is next to nothing, of polyamide more than the fuel itself. Flow
 * by wall friction with sharp ends. Its defaults are a common steel line; state {@code length}.
 */
public final class RigidPipe implements PartEquations {
  public static final Property LENGTH =
      Property.of("length", Unit.METRE, 2, 0.01, 20, 0.3, "length", "assumed");
  public static final Property BORE =
      Property.of("bore", Unit.MILLIMETRE, 6, 2, 20, 0.1, "bore", "common practice");
  public static final Property WALL =
      Property.of("wall", Unit.MILLIMETRE, 1, 0.2, 5, 0.1, "wall thickness", "common practice");
  public static final Property STIFFNESS =
      Property.of(
          "stiffness",
          Unit.GIGAPASCAL,
          207,
          0.1,
          220,
          0,
          "modulus of elasticity of the wall: steel 207, polyamide about 0.4",
          "handbook, steel");

  public static final Property POISSON =
      Property.of(
          "poisson",
          Unit.NONE,
          0.3,
          0,
          0.5,
          0,
          "Poisson's ratio of the wall: steel 0.3, polyamide about 0.4",
          "handbook, steel");
  public static final Property UNDER_FLOOR = Lines.UNDER_FLOOR;

  public static final RigidPipe KIND = new RigidPipe();

  private static final List<Property> PROPERTIES =
      List.of(LENGTH, BORE, WALL, STIFFNESS, POISSON, UNDER_FLOOR);

  private RigidPipe() {}

  @Override
  public String id() {
    return "pipe";
  }

  @Override
  public String title() {
    return "Pipe";
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
    double bore = part.value(BORE);
    double length = part.value(LENGTH);
    double volume = Math.PI / 4 * bore * bore * length;
    double outer = bore / 2 + part.value(WALL);
    ThickTube tube =
        new ThickTube(
            bore / 2, outer, part.value(STIFFNESS), part.value(POISSON), ThickTube.Ends.HELD);
    double wall = volume * tube.distensibility();
    for (String end : List.of(part.from(), part.to())) {
      network.addLiquid(end, volume / 2, Lines.region(part));
      network.addWall(end, wall / 2);
    }
    Lines.addOpenBore(part, new Pipe(bore, length, DRAWN, ENDS), network);
  }

  /** Roughness of drawn tube, handbook value [m]. */
  private static final double DRAWN = 1.5e-6;

  /** Sharp entrance 0.5 and exit 1.0, handbook values [-]. */
  private static final double ENDS = 1.5;
}
