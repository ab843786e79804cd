package holdcurve.model;

import holdcurve.circuit.Circuit;
import holdcurve.circuit.Condition;
import holdcurve.circuit.LeakPath;
import holdcurve.circuit.Part;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

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

  private final Circuit circuit;
  private final Operation operation;
  private final NetworkBuilder parts;
  private final NodePlacement placement;
  private final NodeStorage storage;
  private final Map<String, Integer> flowRows = new LinkedHashMap<>();
  private final List<Element> elements = new ArrayList<>();
  private int rows;

  private NetworkAssembler(Condition condition, Operation operation, Detail detail) {
    this.circuit = condition.circuit();
    this.operation = operation;
    this.parts = new NetworkBuilder(circuit.fluid(), operation);
    for (Part part : circuit.parts()) {
      if (part.kind() instanceof PartEquations kind) {
        kind.assemble(part, parts);
      }
    }
    for (LeakPath leak : condition.leaks()) {
      parts.addPassage(
          "leak from " + leak.from() + " to " + leak.to(), leak.from(), leak.to(), leak.law());
    }
    this.placement = new NodePlacement(circuit, operation, detail, parts.passages);
    this.storage = new NodeStorage(parts, placement);
    this.rows = placement.rows();
  }

  /**
   * @throws IllegalArgumentException if a leak or part names a point that isn't in the circuit
   */
  public static Network assemble(Condition condition, Operation operation, Detail detail) {
    return new NetworkAssembler(condition, operation, detail).build();
  }

  private Network build() {
    addPassages();
    HoseWalls walls = new HoseWalls(parts.creeps, placement, rows);
    elements.addAll(walls.elements());
    rows += walls.rows().size();
    FuelTemperature temperature = new FuelTemperature(parts, placement, storage, rows);
    elements.addAll(temperature.elements());
    rows += temperature.rows().size();
    int gaugeRow = addGauge();
    NetworkLayout layout =
        new NetworkLayout(
            placement.inner(),
            placement.places(),
            walls.rows(),
            temperature.rows(),
            flowRows,
            gaugeRow,
            parts.gaugePoint == null ? "" : parts.gaugePoint,
            placement.ledger(),
            rows);
    return new Network(
        layout,
        elements,
        storage.constantCapacity(),
        storage.storages(),
        thresholds(),
        operation.measuredTemperature().isPresent());
  }

  private void addPassages() {
    for (NetworkBuilder.Passage passage : parts.passages) {
      Node from = placement.node(passage.from(), passage.name());
      Node to = placement.node(passage.to(), passage.name());
      if (from != to) {
        elements.add(passage(passage, from, to));
      }
    }
    for (NetworkBuilder.Made made : parts.made) {
      Node[] ends = {placement.node(made.from(), "a part"), placement.node(made.to(), "a part")};
      elements.add(made.factory().apply(ends));
    }
  }

  private Element passage(NetworkBuilder.Passage passage, Node from, Node to) {
    if (operation.pace() == Pace.SLOW || passage.inertance() == 0) {
      return new FlowElement(passage.name(), from, to, passage.law());
    }
    flowRows.put(passage.name(), rows);
    return InertLineElement.of(
        passage.name(), from, to, rows++, passage.inertance(), passage.law());
  }

  private int addGauge() {
    if (parts.gaugePoint == null) {
      return -1;
    }
    Node node = placement.node(parts.gaugePoint, "the gauge");
    elements.add(new GaugeElement("gauge", node, rows, parts.gaugeLag));
    return rows++;
  }

  private List<Threshold> thresholds() {
    List<Threshold> thresholds = new ArrayList<>();
    for (NetworkBuilder.Watched watched : parts.watched) {
      Node node = placement.node(watched.point(), watched.part());
      thresholds.add(
          new Threshold(
              watched.part(), node, watched.level(), watched.rising(), watched.becomes()));
    }
    return thresholds;
  }
}
