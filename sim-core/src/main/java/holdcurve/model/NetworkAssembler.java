package holdcurve.model;

import holdcurve.circuit.Circuit;
import holdcurve.circuit.Condition;
import holdcurve.circuit.LeakPath;
import holdcurve.circuit.Part;
import holdcurve.fluid.Fluid;
import holdcurve.line.Storage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;

/** Turns a circuit in some condition and operation into its equations. */
public final class NetworkAssembler {
  /**
   * How much of the network's fast part is kept.
   *
   * <p>{@code FULL} keeps every connection point as a node. {@code LUMPED} treats points joined by
   * an open line as one place, which is right for a hold to far less than a gauge can show and
   * costs a fraction. {@code LEDGER} is {@code FULL} with the volume that each boundary received as
   * further states.
   */
  public enum Detail {
    FULL,
    LUMPED,
    LEDGER
  }

  /**
   * Time constant with which fuel trapped under a bonnet follows its surroundings: assumed, 25 min
   * [s].
   */
  static final double THERMAL_TIME = 1500;

  private static final Storage[] NO_STORAGE = {};

  /** Ways in which one circuit is clamped and plumbed that are worth remembering. */
  private static final int MOST_KNOWN = 32;

  private final Circuit circuit;
  private final Operation operation;
  private final Detail detail;
  private final NetworkBuilder parts;
  private final Map<String, Node> places;
  private final List<Node> inner;
  private final List<Node> ledger;
  private final List<NetworkLayout.CreepRow> creepRows = new ArrayList<>();
  private final List<Element> elements = new ArrayList<>();
  private int rows;

  private NetworkAssembler(
      Condition condition, Operation operation, Detail detail, List<Placement> known) {
    this.circuit = condition.circuit();
    this.operation = operation;
    this.detail = detail;
    this.parts = new NetworkBuilder(circuit.fluid(), operation);
    for (Part part : circuit.parts()) {
      part.kind().assemble(part, parts);
    }
    for (LeakPath leak : condition.leaks()) {
      parts.addPassage(
          "leak from " + leak.from() + " to " + leak.to(), leak.from(), leak.to(), leak.law());
    }
    Placement placement = placement(known);
    places = placement.places();
    inner = placement.inner();
    ledger = placement.ledger();
    rows = placement.rows();
  }

  private Placement placement(List<Placement> known) {
    double manifold = operation.manifoldPressure();
    for (Placement placement : known) {
      if (placement.serves(circuit, parts.passages, manifold, detail)) {
        return placement;
      }
    }
    Placement fresh = Placement.of(circuit, parts.passages, manifold, detail);
    if (known.size() < MOST_KNOWN) {
      known.add(fresh);
    }
    return fresh;
  }

  /**
   * @throws IllegalArgumentException if a leak or part names a point that isn't in the circuit
   */
  public static Network assemble(Condition condition, Operation operation, Detail detail) {
    return new NetworkAssembler(condition, operation, detail, new ArrayList<>()).build();
  }

  /**
   * A way to assemble many networks of one detail, which remembers how the same parts were joined
   * before. Not thread-safe.
   */
  public static BiFunction<Condition, Operation, Network> repeated(Detail detail) {
    List<Placement> known = new ArrayList<>();
    return (condition, operation) ->
        new NetworkAssembler(condition, operation, detail, known).build();
  }

  private Network build() {
    addPassages();
    addCreep();
    double[] swelling = liquidVolumes();
    int warmthRow = addTemperature(swelling);
    int gaugeRow = addGauge();
    NetworkLayout layout =
        new NetworkLayout(
            inner,
            places,
            creepRows,
            warmthRow,
            gaugeRow,
            parts.gaugePoint == null ? "" : parts.gaugePoint,
            detail == Detail.LEDGER ? ledger : List.of(),
            rows);
    return new Network(
        layout,
        elements,
        constantCapacity(swelling),
        storages(),
        operation.measuredTemperature().isPresent());
  }

  private void addPassages() {
    for (NetworkBuilder.Passage passage : parts.passages) {
      Node from = place(passage.from(), passage.name());
      Node to = place(passage.to(), passage.name());
      if (from != to) {
        elements.add(new FlowElement(passage.name(), from, to, passage.law().get()));
      }
    }
    for (NetworkBuilder.Made made : parts.made) {
      Node[] ends = {place(made.from(), "a part"), place(made.to(), "a part")};
      elements.add(made.factory().apply(ends));
    }
  }

  private Node place(String point, String what) {
    Node node = places.get(point);
    if (node == null) {
      throw new IllegalArgumentException(
          what + " names the point '" + point + "', which is not in " + circuit.title());
    }
    return node;
  }

  /** One state for all hose walls at a node that creep at the same pace. */
  private void addCreep() {
    List<NetworkBuilder.Creep> left = new ArrayList<>(parts.creeps.size());
    List<Node> nodes = new ArrayList<>(parts.creeps.size());
    for (NetworkBuilder.Creep creep : parts.creeps) {
      Node node = places.get(creep.point());
      if (!node.boundary() && creep.compliance() > 0) {
        left.add(creep);
        nodes.add(node);
      }
    }
    for (int i = 0; i < left.size(); i++) {
      if (left.get(i) != null) {
        addCreepRow(nodes.get(i), left.get(i).relaxationTime(), left, nodes, i);
      }
    }
  }

  private void addCreepRow(
      Node node, double time, List<NetworkBuilder.Creep> left, List<Node> nodes, int first) {
    double compliance = 0;
    Map<String, Double> shares = new LinkedHashMap<>();
    for (int i = first; i < left.size(); i++) {
      NetworkBuilder.Creep creep = left.get(i);
      if (creep != null && nodes.get(i) == node && creep.relaxationTime() == time) {
        compliance += creep.compliance();
        shares.merge(creep.point(), creep.compliance(), Double::sum);
        left.set(i, null);
      }
    }
    creepRows.add(new NetworkLayout.CreepRow(node, rows, time, compliance, shares));
    elements.add(new CreepElement("hose stretch at " + node.name(), node, rows, compliance, time));
    rows++;
  }

  private double[] liquidVolumes() {
    double[] volumes = new double[inner.size()];
    for (NetworkBuilder.Amount liquid : parts.liquids) {
      addAt(volumes, liquid.point(), liquid.value());
    }
    return volumes;
  }

  private int addTemperature(double[] volumes) {
    Fluid fluid = circuit.fluid();
    double expansion = fluid.thermalExpansion(operation.fuelTemperature());
    double[] swelling = new double[volumes.length];
    for (int i = 0; i < swelling.length; i++) {
      swelling[i] = expansion * volumes[i];
    }
    Node[] nodes = inner.toArray(Node[]::new);
    if (operation.measuredTemperature().isPresent()) {
      elements.add(
          new MeasuredTemperatureElement(
              "fuel temperature", operation.measuredTemperature().get(), nodes, swelling));
      return -1;
    }
    elements.add(new ThermalElement("fuel temperature", rows, THERMAL_TIME, nodes, swelling));
    return rows++;
  }

  private int addGauge() {
    if (parts.gaugePoint == null) {
      return -1;
    }
    Node node = place(parts.gaugePoint, "the gauge");
    elements.add(new GaugeElement("gauge", node, rows, parts.gaugeLag));
    return rows++;
  }

  private double[] constantCapacity(double[] volumes) {
    double modulus =
        circuit.fluid().bulkModulusIsothermal(operation.fuelTemperature(), Fluid.ATMOSPHERE);
    double[] capacity = new double[inner.size()];
    for (int i = 0; i < capacity.length; i++) {
      capacity[i] = (volumes[i] + NetworkBuilder.FITTING_VOLUME) / modulus;
    }
    for (NetworkBuilder.Amount wall : parts.walls) {
      addAt(capacity, wall.point(), wall.value());
    }
    return capacity;
  }

  private void addAt(double[] rows, String point, double value) {
    Node node = places.get(point);
    if (!node.boundary()) {
      rows[node.row()] += value;
    }
  }

  private Storage[][] storages() {
    Storage[][] storages = new Storage[inner.size()][];
    Arrays.fill(storages, NO_STORAGE);
    for (NetworkBuilder.Held held : parts.storages) {
      Node node = places.get(held.point());
      if (!node.boundary()) {
        Storage[] more = Arrays.copyOf(storages[node.row()], storages[node.row()].length + 1);
        more[more.length - 1] = held.storage();
        storages[node.row()] = more;
      }
    }
    return storages;
  }
}
