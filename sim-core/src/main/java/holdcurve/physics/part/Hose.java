package holdcurve.physics.part;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Ports;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.flow.LaminarLaw;
import holdcurve.physics.flow.Pipe;
import holdcurve.physics.network.NetworkBuilder;
import holdcurve.physics.network.PartEquations;
import java.util.List;

/**
 * Flexible hose: it stretches with pressure, at once and then for minutes, and it can be clamped.
 *
 * <p>What it takes up at once is in proportion to pressure and length. Two creep branches follow,
 * each tending to its share of that with its own time constant: after priming they go on taking
 * fuel, so the pressure falls though nothing leaks. A clamp sits at {@code clamp_at}, which decides
 * how much of the hose is left on either side, and lets past what the test says. All values are
 * guesses with a wide spread: no measured fuel hose was found.
 */
public final class Hose implements PartEquations {
  public static final Property LENGTH =
      Property.of("length", Unit.METRE, 0.5, 0.01, 20, 0.3, "length", "assumed");
  public static final Property BORE =
      Property.of("bore", Unit.MILLIMETRE, 7.5, 2, 20, 0.1, "bore", "common practice");
  public static final Property COMPLIANCE =
      Property.of(
          "compliance",
          Unit.MILLILITRE_PER_BAR_METRE,
          0.35,
          0.01,
          5,
          0.5,
          "what it takes up at once, for each bar and metre",
          "assumed");
  public static final Property QUICK_CREEP =
      Property.of(
          "quick_creep",
          Unit.PERCENT,
          8,
          0,
          200,
          0.6,
          "further stretch within seconds, of what it takes up at once",
          "assumed");
  public static final Property QUICK_CREEP_TIME =
      Property.of(
          "quick_creep_time",
          Unit.SECOND,
          22,
          1,
          120,
          0.4,
          "time constant of the quick stretch",
          "assumed");
  public static final Property SLOW_CREEP =
      Property.of(
          "slow_creep",
          Unit.PERCENT,
          12,
          0,
          200,
          0.45,
          "further stretch within minutes, of what it takes up at once",
          "assumed");
  public static final Property SLOW_CREEP_TIME =
      Property.of(
          "slow_creep_time",
          Unit.SECOND,
          450,
          60,
          7200,
          0.4,
          "time constant of the slow stretch",
          "assumed");
  public static final Property CLAMP_AT =
      Property.of(
          "clamp_at",
          Unit.PERCENT,
          50,
          1,
          99,
          0,
          "where along it a clamp is set, from its upstream end",
          "convention");
  public static final Property CLAMPABLE =
      Property.flag("clampable", true, "whether a clamp can be set on it");

  public static final Property UNDER_FLOOR = Lines.UNDER_FLOOR;

  public static final Hose KIND = new Hose();

  private static final List<Property> PROPERTIES =
      List.of(
          LENGTH,
          BORE,
          COMPLIANCE,
          QUICK_CREEP,
          QUICK_CREEP_TIME,
          SLOW_CREEP,
          SLOW_CREEP_TIME,
          CLAMP_AT,
          CLAMPABLE,
          UNDER_FLOOR);

  private Hose() {}

  /** Ids of the hoses of a circuit that a clamp can be set on, in circuit order. */
  public static List<String> clampable(Circuit circuit) {
    return circuit.partsOf(KIND).stream().filter(hose -> hose.is(CLAMPABLE)).map(Part::id).toList();
  }

  @Override
  public String id() {
    return "hose";
  }

  @Override
  public String title() {
    return "Hose";
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
    double split = part.value(CLAMP_AT);
    addHalf(part, part.from(), split, network);
    addHalf(part, part.to(), 1 - split, network);
    Double clamp = network.operation().clamps().get(part.id());
    if (clamp == null) {
      Pipe pipe = new Pipe(part.value(BORE), part.value(LENGTH), SMOOTH, HOSE_ENDS);
      Lines.addOpenBore(part, pipe, network);
    } else {
      network.addPassage("clamped " + part.id(), part.from(), part.to(), new LaminarLaw(clamp));
    }
  }

  private static void addHalf(Part part, String point, double share, NetworkBuilder network) {
    double length = share * part.value(LENGTH);
    double bore = part.value(BORE);
    double compliance = length * part.value(COMPLIANCE);
    network.addLiquid(point, Math.PI / 4 * bore * bore * length, Lines.region(part));
    network.addWall(point, compliance);
    network.addCreep(point, compliance * part.value(QUICK_CREEP), part.value(QUICK_CREEP_TIME));
    network.addCreep(point, compliance * part.value(SLOW_CREEP), part.value(SLOW_CREEP_TIME));
  }

  /** Roughness of rubber hose: assumed [m]. */
  private static final double SMOOTH = 5e-6;

  /** Sharp entrance 0.5 and exit 1.0, handbook values [-]. */
  private static final double HOSE_ENDS = 1.5;
}
