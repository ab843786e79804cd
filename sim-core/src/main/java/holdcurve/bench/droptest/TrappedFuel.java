package holdcurve.bench.droptest;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.network.Network;
import holdcurve.physics.network.NetworkAssembler;
import holdcurve.physics.network.NetworkAssembler.Detail;
import holdcurve.physics.network.NetworkLayout;
import holdcurve.physics.network.Node;
import holdcurve.physics.network.Operation;
import holdcurve.record.finding.DrawOff;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

/**
 * The fuel trapped around the rail: how far its pressure falls when an injector has passed some.
 *
 * <p>An open injector passes k √p, and C(p) dp/dt = −k √p, so that k t = F(before) − F(after) with
 * F(p) = ∫ C/√p dp. That is the correction for the falling pressure; with a constant C it reads k t
 * = 2 C (√before − √after). C holds what the hose walls give back until the gauge is read again.
 */
public final class TrappedFuel {
  private static final int STEPS = 800;

  /** Gauge pressures above this are not met in these circuits [Pa]. */
  private static final double MOST = 12e5;

  private final double rootStep = Math.sqrt(MOST) / STEPS;
  private final double[] f = new double[STEPS + 1];
  private final DoubleUnaryOperator compliance;
  private final double spread;
  private final boolean known;

  /**
   * @param compliance against pressure [m³/Pa against Pa gauge]
   * @param spread standard deviation of its logarithm [-]
   * @param known whether its size means anything, or only its shape
   */
  private TrappedFuel(DoubleUnaryOperator compliance, double spread, boolean known) {
    this.compliance = compliance;
    this.spread = spread;
    this.known = known;
    for (int i = 0; i < STEPS; i++) {
      double middle = (i + 0.5) * rootStep;
      f[i + 1] = f[i] + 2 * rootStep * compliance.applyAsDouble(middle * middle);
    }
  }

  /** Nothing known of the circuit: the same compliance at every pressure, its size unknown. */
  public static TrappedFuel unknown() {
    return new TrappedFuel(p -> 2e-11, Double.POSITIVE_INFINITY, false);
  }

  /** As a test knows it: from the circuit where there is one, and from its draw-off. */
  public static TrappedFuel in(Optional<Circuit> circuit, DropTest test) {
    TrappedFuel fuel =
        circuit.map(known -> of(known, test.shot().pause())).orElseGet(TrappedFuel::unknown);
    return test.drawOff().map(d -> fuel.measuredBy(d, test.resolution())).orElse(fuel);
  }

  /**
   * As the circuit is described.
   *
   * @param wait time from firing to reading, for the hose walls [s]
   */
  public static TrappedFuel of(Circuit circuit, double wait) {
    double at = 2e5;
    double usual = compliance(circuit, wait).applyAsDouble(at);
    double variance = 0;
    for (Part part : circuit.parts()) {
      for (Property property : part.kind().properties()) {
        if (property.spread() > 0 && !part.states(property)) {
          double moved =
              Math.min(property.most(), part.value(property) * Math.exp(property.spread()));
          Circuit other = circuit.with(part.id(), property, moved);
          double change = Math.log(compliance(other, wait).applyAsDouble(at) / usual);
          variance += change * change;
        }
      }
    }
    return new TrappedFuel(compliance(circuit, wait), Math.sqrt(variance), true);
  }

  private static DoubleUnaryOperator compliance(Circuit circuit, double wait) {
    Network network =
        NetworkAssembler.assemble(Condition.sound(circuit), Operation.holding(), Detail.LUMPED);
    NetworkLayout layout = network.layout();
    Node node = layout.node(layout.gaugePoint());
    double walls = 0;
    for (NetworkLayout.CreepRow creep : layout.creepRows()) {
      if (creep.node() == node) {
        walls -= creep.compliance() * Math.expm1(-wait / creep.relaxationTime());
      }
    }
    double givenBack = walls;
    return pressure -> network.capacity(node.row(), pressure) + givenBack;
  }

  /**
   * The same shape with the size that a draw-off showed.
   *
   * @param resolution of the gauge it was read from [Pa]
   */
  public TrappedFuel measuredBy(DrawOff drawOff, double resolution) {
    double expected = 0;
    int steps = 200;
    double step = (drawOff.from() - drawOff.to()) / steps;
    for (int i = 0; i < steps; i++) {
      expected += step * compliance.applyAsDouble(drawOff.to() + (i + 0.5) * step);
    }
    double scale = drawOff.volume() / expected;
    double byGauge = resolution / Math.sqrt(6) / (drawOff.from() - drawOff.to());
    double byCylinder = CYLINDER / drawOff.volume();
    return new TrappedFuel(
        p -> scale * compliance.applyAsDouble(p), Math.hypot(byGauge, byCylinder), true);
  }

  /** Standard uncertainty of a reading of a small measuring cylinder: assumed, 0.3 mL [m³]. */
  private static final double CYLINDER = 0.3e-6;

  /** Whether flows can be told, or only how they compare. */
  public boolean isKnown() {
    return known;
  }

  /** Standard deviation of the logarithm of the compliance [-]. */
  public double spread() {
    return spread;
  }

  /** Compliance at a pressure [m³/Pa]. */
  public double compliance(double pressure) {
    return compliance.applyAsDouble(pressure);
  }

  /**
   * What an injector has passed while the pressure fell: k t [m³/√Pa].
   *
   * @param before [Pa gauge]
   * @param after [Pa gauge]
   */
  public double passed(double before, double after) {
    return integral(before) - integral(after);
  }

  /**
   * The pressure that is left.
   *
   * @param before [Pa gauge]
   * @param passed k t [m³/√Pa]
   * @return [Pa gauge], 0 if the circuit is emptied
   */
  public double after(double before, double passed) {
    double target = integral(before) - passed;
    if (target <= 0) {
      return 0;
    }
    int low = 0;
    int high = STEPS;
    while (high - low > 1) {
      int middle = (low + high) >>> 1;
      if (f[middle] <= target) {
        low = middle;
      } else {
        high = middle;
      }
    }
    double root = rootStep * (low + (target - f[low]) / (f[high] - f[low]));
    return root * root;
  }

  private double integral(double pressure) {
    double place = Math.sqrt(Math.max(0, Math.min(pressure, MOST))) / rootStep;
    int cell = Math.min(STEPS - 1, (int) place);
    return f[cell] + (place - cell) * (f[cell + 1] - f[cell]);
  }
}
