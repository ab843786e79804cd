package holdcurve.part;

import holdcurve.circuit.Part;
import holdcurve.circuit.PartKind;
import holdcurve.circuit.Ports;
import holdcurve.circuit.Property;
import holdcurve.circuit.Unit;
import holdcurve.flow.FlowLaw;
import holdcurve.flow.LaminarLaw;
import holdcurve.flow.Pipe;
import holdcurve.model.NetworkBuilder;
import java.util.List;

/**
 * Flexible hose: it stretches with pressure, at once and then for minutes, and it can be clamped.
 */
public final class Hose implements PartKind {
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
          0.4,
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
          0.6,
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
          CLAMPABLE);

  private Hose() {}

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
      network.addOpenLine(part.id(), part.from(), part.to(), () -> openBore(part, network));
    } else {
      network.addPassage("clamped " + part.id(), part.from(), part.to(), new LaminarLaw(clamp));
    }
  }

  private static void addHalf(Part part, String point, double share, NetworkBuilder network) {
    double length = share * part.value(LENGTH);
    double bore = part.value(BORE);
    double compliance = length * part.value(COMPLIANCE);
    network.addLiquid(point, Math.PI / 4 * bore * bore * length);
    network.addWall(point, compliance);
    network.addCreep(point, compliance * part.value(QUICK_CREEP), part.value(QUICK_CREEP_TIME));
    network.addCreep(point, compliance * part.value(SLOW_CREEP), part.value(SLOW_CREEP_TIME));
  }

  private static FlowLaw openBore(Part part, NetworkBuilder network) {
    Pipe pipe = new Pipe(part.value(BORE), part.value(LENGTH), SMOOTH, HOSE_ENDS);
    return Lines.law(pipe, network);
  }

  /** Roughness of rubber hose: assumed [m]. */
  private static final double SMOOTH = 5e-6;

  /** Sharp entrance 0.5 and exit 1.0, handbook values [-]. */
  private static final double HOSE_ENDS = 1.5;
}
