package holdcurve.physics.part;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Ports;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.circuit.TankEnd;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.flow.LaminarLaw;
import holdcurve.physics.network.NetworkBuilder;
import holdcurve.physics.network.PartEquations;
import java.util.List;

/**
 * The electric pump. Its check valve is a part of its own, since it fails by itself.
 *
 * <p>Running: {@code free_flow} falling as a parabola to nothing at {@code stall}, less what its
 * relief valve lets back from {@code relief} on. Stopped: a passage that fuel slips back through.
 * {@code from} is the suction side, mostly the tank.
 */
public final class Pump implements PartEquations {
  public static final Property FREE_FLOW =
      Property.of(
          "free_flow",
          Unit.LITRE_PER_MINUTE,
          2.0,
          0.1,
          20,
          0.3,
          "flow against no pressure",
          "assumed");
  public static final Property STALL =
      Property.of(
          "stall",
          Unit.BAR,
          6.0,
          1,
          20,
          0.2,
          "pressure at which the pump delivers nothing",
          "assumed");
  public static final Property RELIEF =
      Property.of(
          "relief",
          Unit.BAR,
          5.0,
          1,
          20,
          0.2,
          "pressure at which its own relief valve opens",
          "assumed");

  public static final Pump KIND = new Pump();

  private static final List<Property> PROPERTIES = List.of(FREE_FLOW, STALL, RELIEF);

  private Pump() {}

  @Override
  public String id() {
    return "pump";
  }

  @Override
  public String title() {
    return "Pump";
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
  public TankEnd tankEnd() {
    return TankEnd.FROM;
  }

  @Override
  public List<Property> properties() {
    return PROPERTIES;
  }

  @Override
  public void assemble(Part part, NetworkBuilder network) {
    if (network.operation().pumpRunning()) {
      PumpCurve curve = new PumpCurve(part.value(FREE_FLOW), part.value(STALL), part.value(RELIEF));
      network.addPassage("pump", part.from(), part.to(), curve);
    } else {
      network.addOpenLine("stopped pump", part.from(), part.to(), STOPPED);
    }
  }

  /** A stopped roller pump lets fuel slip back freely: assumed, 50 mL/min at 1 bar. */
  private static final LaminarLaw STOPPED =
      LaminarLaw.throughPoint(Unit.MILLILITRE_PER_MINUTE.toSi(50), Unit.BAR.toSi(1));

  /**
   * The highest pressure that any pump of a circuit holds behind its check valve, sound as the
   * circuit is described; infinite without a pump [Pa gauge].
   */
  public static double reach(Circuit circuit) {
    double crack =
        circuit.partsOf(CheckValve.KIND).stream()
            .mapToDouble(valve -> valve.value(CheckValve.CRACK))
            .min()
            .orElse(0);
    return circuit.partsOf(KIND).stream()
        .mapToDouble(pump -> Math.min(pump.value(STALL), pump.value(RELIEF)) - crack)
        .max()
        .orElse(Double.POSITIVE_INFINITY);
  }
}
