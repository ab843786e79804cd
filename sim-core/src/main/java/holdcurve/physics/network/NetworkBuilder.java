package holdcurve.physics.network;

import holdcurve.physics.flow.FlowLaw;
import holdcurve.physics.fluid.Fluid;
import holdcurve.physics.storage.Storage;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Collects what one part of a circuit brings, by the names of connection points; {@link
 * NetworkStructure} turns it into equations. Kinds of part are its only callers.
 */
public final class NetworkBuilder {
  /** Fuel that stands in any fitting, so that no connection point is without storage [m³]. */
  static final double FITTING_VOLUME = 0.3e-6;

  private final Fluid fluid;
  private final Operation operation;
  final List<Passage> passages = new ArrayList<>(4);
  final List<Made> made = new ArrayList<>(1);
  final List<Held> storages = new ArrayList<>(1);
  final List<Liquid> liquids = new ArrayList<>(2);
  final List<Wall> walls = new ArrayList<>(2);
  final List<Creep> creeps = new ArrayList<>(4);
  final List<Watched> watched = new ArrayList<>(1);
  String gaugePoint;
  double gaugeLag;

  /** A passage; an open one may be left out where its two ends are treated as one place. */
  record Passage(
      String name, String from, String to, Supplier<FlowLaw> law, boolean open, double inertance) {}

  record Made(String from, String to, Function<Node[], Element> factory) {}

  record Held(String point, Storage storage) {}

  record Liquid(String point, double volume, Region region) {}

  record Wall(String point, double compliance) {}

  record Creep(String point, double compliance, double relaxationTime) {}

  record Watched(String part, String point, double level, boolean rising, ValveState becomes) {}

  public NetworkBuilder(Fluid fluid, Operation operation) {
    this.fluid = fluid;
    this.operation = operation;
  }

  /** What is being done with the circuit. */
  public Operation operation() {
    return operation;
  }

  /** The fluid; its temperature is {@link Operation#fuelTemperature()}. */
  public Fluid fluid() {
    return fluid;
  }

  /**
   * Liquid volume at a point [m³], under the bonnet: it is compressed by pressure and swells with
   * temperature.
   */
  public void addLiquid(String point, double volume) {
    addLiquid(point, volume, Region.ENGINE);
  }

  /** Liquid volume at a point [m³] in a region. */
  public void addLiquid(String point, double volume, Region region) {
    liquids.add(new Liquid(point, volume, region));
  }

  /** A wall that gives with pressure by the same amount everywhere in its range [m³/Pa]. */
  public void addWall(String point, double compliance) {
    walls.add(new Wall(point, compliance));
  }

  /** A storage whose capacity depends on pressure, such as a damper or trapped air. */
  public void addStorage(String point, Storage storage) {
    storages.add(new Held(point, storage));
  }

  /**
   * A wall that goes on stretching after a change of pressure.
   *
   * @param compliance final extra volume per pressure [m³/Pa]
   * @param relaxationTime time constant [s]
   */
  public void addCreep(String point, double compliance, double relaxationTime) {
    creeps.add(new Creep(point, compliance, relaxationTime));
  }

  /**
   * A line that stands open: with the pump stopped its ends are at one pressure for all that a
   * gauge can show.
   */
  public void addOpenLine(String name, String from, String to, FlowLaw law) {
    addOpenLine(name, from, to, law, 0);
  }

  /**
   * An open line whose fuel has mass. It counts where changes are fast ({@link Pace#FAST}).
   *
   * @param inertance ρ·L/A [Pa·s²/m³]
   */
  public void addOpenLine(String name, String from, String to, FlowLaw law, double inertance) {
    addOpenLine(name, from, to, () -> law, inertance);
  }

  /** Likewise, for a law that costs something to work out: it is asked for only if it is needed. */
  public void addOpenLine(
      String name, String from, String to, Supplier<FlowLaw> law, double inertance) {
    passages.add(new Passage(name, from, to, law, true, inertance));
  }

  /** A passage that matters however little flows: a seat, a leak, a clamped hose. */
  public void addPassage(String name, String from, String to, FlowLaw law) {
    passages.add(new Passage(name, from, to, () -> law, false, 0));
  }

  /** Any other element between two points. */
  public void addElement(String from, String to, Function<Node[], Element> factory) {
    made.add(new Made(from, to, factory));
  }

  /**
   * A pressure at which a part changes from the {@link ValveState} that it was assembled in.
   *
   * @param level at {@code point} [Pa gauge]
   * @param rising whether on the way up, else on the way down
   */
  public void addThreshold(
      String part, String point, double level, boolean rising, ValveState becomes) {
    watched.add(new Watched(part, point, level, rising, becomes));
  }

  /**
   * Where the gauge is tee'd in, and how slowly it follows.
   *
   * @param lag time constant [s]
   */
  public void setGauge(String point, double lag) {
    gaugePoint = point;
    gaugeLag = lag;
  }
}
