package holdcurve.physics.network;

import holdcurve.physics.ode.StiffEquations;
import holdcurve.physics.storage.Storage;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * The equations of a circuit under one {@link Operation}:
 *
 * <pre>C_i(p_i) dp_i/dt = Σ Q_in − Σ Q_out + α V_i dT/dt − Σ dv/dt</pre>
 *
 * <p>State rows, in this order: node pressures [Pa gauge], with a ledger the volume each boundary
 * has received [m³], flows of lines whose fuel has mass [m³/s], creep volumes [m³], the excess
 * temperature of each region's fuel [K] unless it was measured, the gauge reading [Pa] if there is
 * a gauge. Immutable and without scratch space: threads may share it.
 */
public final class Network implements StiffEquations {
  private final NetworkLayout layout;
  private final Element[] elements;
  private final LinearRates linear;
  private final Element[] bent;
  private final double[] constantCapacity;
  private final Storage[][] storages;
  private final List<Threshold> thresholds;
  private final boolean timed;
  private final Origin origin;

  /** Where a network comes from, to vary it and to hand its state over to another. */
  record Origin(NetworkStructure structure, Contributions contributions, CreepPlan.Walls walls) {}

  Network(
      NetworkLayout layout,
      List<Element> elements,
      double[] constantCapacity,
      Storage[][] storages,
      List<Threshold> thresholds,
      boolean timed,
      Origin origin) {
    this.layout = layout;
    this.elements = elements.toArray(Element[]::new);
    this.linear = LinearRates.of(elements, layout.dimension());
    this.bent = bent(this.elements);
    this.constantCapacity = constantCapacity;
    this.storages = storages;
    this.thresholds = List.copyOf(thresholds);
    this.timed = timed;
    this.origin = origin;
  }

  Origin origin() {
    return origin;
  }

  private static Element[] bent(Element[] elements) {
    Element[] bent = new Element[elements.length];
    int count = 0;
    for (Element element : elements) {
      if (!element.isLinear()) {
        bent[count++] = element;
      }
    }
    return Arrays.copyOf(bent, count);
  }

  /** Which row is what. */
  public NetworkLayout layout() {
    return layout;
  }

  /** The elements, for tests and for messages. */
  public List<Element> elements() {
    return List.of(elements);
  }

  LinearRates linear() {
    return linear;
  }

  /** Elements that aren't linear. */
  Element[] bent() {
    return bent;
  }

  Element element(int i) {
    return elements[i];
  }

  double constantCapacity(int node) {
    return constantCapacity[node];
  }

  Storage[] storages(int node) {
    return storages[node];
  }

  boolean hasCapacityOf(Network other, int node) {
    return constantCapacity[node] == other.constantCapacity[node]
        && Arrays.equals(storages[node], other.storages[node]);
  }

  /** Whether each row of the state stands for the same in the other network. */
  public boolean hasStatesOf(Network other) {
    return layout.isLike(other.layout);
  }

  /** Pressures at which a valve changes its state. */
  public List<Threshold> thresholds() {
    return thresholds;
  }

  @Override
  public int getDimension() {
    return layout.dimension();
  }

  @Override
  public boolean isAutonomous() {
    return !timed;
  }

  @Override
  public void computeDerivatives(double t, double[] y, double[] rates) {
    collect(t, y, rates);
    for (int i = 0; i < constantCapacity.length; i++) {
      rates[i] /= capacity(i, y[i]);
    }
  }

  @Override
  public boolean jumpsOver(double[] from, double[] to) {
    for (Element element : bent) {
      if (element.jumpsOver(from, to)) {
        return true;
      }
    }
    for (int i = 0; i < storages.length; i++) {
      for (Storage storage : storages[i]) {
        if (storage.isJumped(from[i], to[i])) {
          return true;
        }
      }
    }
    return false;
  }

  /** Flows into the nodes and rates of the other rows, before division by the capacities. */
  void collect(double t, double[] y, double[] rates) {
    linear.fill(y, rates);
    for (Element element : bent) {
      element.addRates(t, y, rates);
    }
  }

  @Override
  public void computeJacobian(double t, double[] y, double[][] jacobian) {
    double[] flow = new double[y.length];
    collect(t, y, flow);
    fillJacobian(t, y, flow, jacobian);
  }

  @Override
  public void linearize(double t, double[] y, double[] rates, double[][] jacobian) {
    collect(t, y, rates);
    fillJacobian(t, y, rates, jacobian);
    for (int i = 0; i < constantCapacity.length; i++) {
      rates[i] /= capacity(i, y[i]);
    }
  }

  /**
   * @param flow what {@link #collect} gives at y
   */
  void fillJacobian(double t, double[] y, double[] flow, double[][] jacobian) {
    linear.fillJacobian(jacobian);
    for (Element element : bent) {
      element.addJacobian(t, y, jacobian);
    }
    for (int i = 0; i < constantCapacity.length; i++) {
      double inverse = 1 / capacity(i, y[i]);
      double[] row = jacobian[i];
      for (int j = 0; j < row.length; j++) {
        row[j] *= inverse;
      }
      row[i] -= flow[i] * inverse * inverse * capacitySlope(i, y[i]);
    }
  }

  @Override
  public void computeTimeDerivative(double t, double[] y, double[] derivative) {
    Arrays.fill(derivative, 0);
    for (Element element : elements) {
      element.addTimeDerivative(t, y, derivative);
    }
    for (int i = 0; i < constantCapacity.length; i++) {
      derivative[i] /= capacity(i, y[i]);
    }
  }

  /** Capacity C_i [m³/Pa] of a node at pressure p [Pa gauge]. */
  public double capacity(int node, double p) {
    double capacity = constantCapacity[node];
    for (Storage storage : storages[node]) {
      capacity += storage.capacity(p);
    }
    return capacity;
  }

  private double capacitySlope(int node, double p) {
    double slope = 0;
    for (Storage storage : storages[node]) {
      slope += storage.capacitySlope(p);
    }
    return slope;
  }

  /**
   * Volume taken up by pressure in all nodes and hose walls, relative to a circuit at rest without
   * pressure [m³].
   */
  public double storedVolume(double[] y) {
    double volume = 0;
    for (int i = 0; i < constantCapacity.length; i++) {
      volume += constantCapacity[i] * y[i];
      for (Storage storage : storages[i]) {
        volume += storage.volume(y[i]);
      }
    }
    for (NetworkLayout.CreepRow creep : layout.creepRows()) {
      volume += y[creep.row()];
    }
    return volume;
  }

  /**
   * A state to start from.
   *
   * @param pressure of each connection point [Pa gauge]
   * @param soak how long that pressure has stood, for the hose walls [s]
   * @param warmth temperature of the fuel under the bonnet over its surroundings [K]; fuel
   *     elsewhere is as warm as its surroundings
   */
  public double[] stateAt(ToDoubleFunction<String> pressure, double soak, double warmth) {
    return stateAt(pressure, soak, warmth, origin.walls());
  }

  double[] stateAt(
      ToDoubleFunction<String> pressure, double soak, double warmth, CreepPlan.Walls walls) {
    double[] y = new double[getDimension()];
    for (int i = 0; i < layout.nodes().size(); i++) {
      y[i] = pressure.applyAsDouble(layout.nodes().get(i).name());
    }
    walls.fillSoaked(y, soak);
    if (layout.warmthRow() >= 0) {
      y[layout.warmthRow()] = warmth;
    }
    if (layout.gaugeRow() >= 0) {
      y[layout.gaugeRow()] = layout.node(layout.gaugePoint()).pressure(y);
    }
    return y;
  }

  /**
   * Carries a state over a switch, by connection points: pressures stay, creep volumes are shared
   * out among the walls they belong to, temperature, gauge and ledger stay.
   *
   * @param y state of {@code before}
   */
  public double[] carryOver(double[] y, Network before) {
    return StateTransfer.between(before, this).carry(y, before.origin.walls(), origin.walls());
  }
}
