package holdcurve.physics.network;

import holdcurve.physics.flow.FlowLaw;
import holdcurve.physics.fluid.Fluid;
import holdcurve.physics.network.NetworkAssembler.Detail;
import holdcurve.physics.storage.Storage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToIntFunction;

/**
 * How a network is put together: which connection points share a node, which row of the state
 * stands for what. That hangs on how parts are joined, not on their sizes, so it is worked out once
 * for many networks; {@link #build} fills sizes in. Not thread-safe.
 */
final class NetworkStructure {
  private final Contributions pattern;
  private final Detail detail;
  private final NodePlacement placement;
  private final Node[] from;
  private final Node[] to;
  private final int[] elementOf;
  private final int[] firstPassage;
  private final int[] firstMade;
  private final int[] firstCreep;
  private final Map<String, Integer> flowRows = new LinkedHashMap<>();
  private final CreepPlan creep;
  private final Map<Region, Integer> warmthRows = new EnumMap<>(Region.class);
  private final String gaugePoint;
  private final int gaugeRow;
  private final int rows;
  private Fluid fluidAsked;
  private Operation operationAsked;
  private FuelNumbers fuel;

  NetworkStructure(Contributions pattern, Detail detail, Set<String> kept) {
    this.pattern = pattern;
    this.detail = detail;
    Operation operation = pattern.operation();
    placement = new NodePlacement(pattern.circuit(), operation, detail, kept, pattern.passages());
    List<Node[]> ends = new ArrayList<>();
    int next = placement.rows();
    for (NetworkBuilder part : pattern.parts()) {
      for (NetworkBuilder.Passage passage : part.passages) {
        Node[] pair = nodes(passage.from(), passage.to(), passage.name());
        ends.add(pair);
        if (pair[0] != pair[1] && hasFlowRow(passage, operation)) {
          flowRows.put(passage.name(), next++);
        }
      }
    }
    for (NetworkBuilder part : pattern.parts()) {
      for (NetworkBuilder.Made made : part.made) {
        ends.add(nodes(made.from(), made.to(), "a part"));
      }
    }
    from = ends.stream().map(pair -> pair[0]).toArray(Node[]::new);
    to = ends.stream().map(pair -> pair[1]).toArray(Node[]::new);
    int passages = pattern.passages().size();
    elementOf = elementPlaces(passages);
    firstPassage = places(part -> part.passages.size(), 0);
    firstMade = places(part -> part.made.size(), passages);
    firstCreep = places(part -> part.creeps.size(), 0);
    creep = new CreepPlan(pattern, placement, next);
    next = placeWarmth(next + creep.size());
    NetworkBuilder gauge = gauge(pattern);
    gaugePoint = gauge == null ? "" : gauge.gaugePoint;
    gaugeRow = gauge == null ? -1 : next++;
    rows = next;
  }

  private Node[] nodes(String a, String b, String what) {
    return new Node[] {placement.node(a, what), placement.node(b, what)};
  }

  private static boolean hasFlowRow(NetworkBuilder.Passage passage, Operation operation) {
    return operation.pace() != Pace.SLOW && passage.inertance() != 0;
  }

  /** Passages within one node bring no element. */
  private int[] elementPlaces(int passages) {
    int[] place = new int[from.length];
    int next = 0;
    for (int i = 0; i < place.length; i++) {
      place[i] = i < passages && from[i] == to[i] ? -1 : next++;
    }
    return place;
  }

  /**
   * Fuel under the bonnet always has a row, so that a circuit's states are the same whether it
   * holds liquid there or not; the floor has one only if some is there.
   */
  private int placeWarmth(int first) {
    int next = first;
    if (pattern.operation().temperatureCourse().isEmpty()) {
      double[][] liquid = liquid(pattern);
      for (Region region : Region.values()) {
        if (region == Region.ENGINE || any(liquid[region.ordinal()])) {
          warmthRows.put(region, next++);
        }
      }
    }
    return next;
  }

  private static boolean any(double[] values) {
    return Arrays.stream(values).anyMatch(value -> value > 0);
  }

  private static NetworkBuilder gauge(Contributions contributions) {
    NetworkBuilder last = null;
    for (NetworkBuilder part : contributions.parts()) {
      last = part.gaugePoint == null ? last : part;
    }
    return last;
  }

  /**
   * Whether a network of these contributions has this structure.
   *
   * @param contributions joined like those that it was made of
   */
  boolean fits(Contributions contributions) {
    return creep.serves(contributions);
  }

  private int[] places(ToIntFunction<NetworkBuilder> count, int first) {
    int[] places = new int[pattern.parts().length];
    int next = first;
    for (int i = 0; i < places.length; i++) {
      places[i] = next;
      next += count.applyAsInt(pattern.parts()[i]);
    }
    return places;
  }

  /** Index of the first passage that the i-th part brings. */
  int firstPassage(int part) {
    return firstPassage[part];
  }

  /** Index of the first made element of the i-th part, all passages counted before. */
  int firstMade(int part) {
    return firstMade[part];
  }

  /** Index of the first creeping wall of the i-th part. */
  int firstCreep(int part) {
    return firstCreep[part];
  }

  CreepPlan creep() {
    return creep;
  }

  /** Upstream end of the i-th passage or made element, all passages before all made. */
  Node from(int i) {
    return from[i];
  }

  Node to(int i) {
    return to[i];
  }

  /** Place among the network's elements of the i-th passage or made element, or -1. */
  int elementOf(int i) {
    return elementOf[i];
  }

  /** Row of a connection point's pressure, or -1 at a boundary. */
  int row(String point) {
    Node node = placement.node(point, "a part");
    return node.boundary() ? -1 : node.row();
  }

  /** The network in the sizes given. */
  Network build(Contributions contributions) {
    learnFuel(contributions);
    double[][] liquid = liquid(contributions);
    double[] volume = volume(liquid);
    CreepPlan.Walls walls = creep.walls(contributions);
    List<Element> elements = new ArrayList<>();
    addPassages(contributions, elements);
    walls.addElements(elements);
    addTemperatures(contributions.operation(), liquid, elements);
    NetworkBuilder gauge = gauge(contributions);
    if (gauge != null) {
      Node node = placement.node(gaugePoint, "the gauge");
      elements.add(new GaugeElement("gauge", node, gaugeRow, gauge.gaugeLag));
    }
    NetworkLayout layout =
        new NetworkLayout(
            placement.inner(),
            placement.places(),
            walls.rows(),
            warmthRows,
            flowRows,
            gaugeRow,
            gaugePoint,
            placement.ledger(),
            rows);
    return new Network(
        layout,
        elements,
        constantCapacity(contributions, volume),
        storages(contributions, volume),
        thresholds(contributions),
        contributions.operation().temperatureCourse().isPresent(),
        new Network.Origin(this, contributions, walls));
  }

  private void learnFuel(Contributions contributions) {
    Fluid fluid = contributions.circuit().fluid();
    if (fluid != fluidAsked || contributions.operation() != operationAsked) {
      fuel = FuelNumbers.of(fluid, contributions.operation());
      fluidAsked = fluid;
      operationAsked = contributions.operation();
    }
  }

  private void addPassages(Contributions contributions, List<Element> elements) {
    int i = 0;
    for (NetworkBuilder part : contributions.parts()) {
      for (NetworkBuilder.Passage passage : part.passages) {
        if (from[i] != to[i]) {
          elements.add(passage(passage, i));
        }
        i++;
      }
    }
    for (NetworkBuilder part : contributions.parts()) {
      for (NetworkBuilder.Made made : part.made) {
        elements.add(made(made, i++));
      }
    }
  }

  /** Element of the i-th passage. */
  Element passage(NetworkBuilder.Passage passage, int i) {
    Integer row = flowRows.isEmpty() ? null : flowRows.get(passage.name());
    FlowLaw law = passage.law().get();
    if (row != null) {
      return InertLineElement.of(passage.name(), from[i], to[i], row, passage.inertance(), law);
    }
    return passage.open()
        ? FlowElement.open(passage.name(), from[i], to[i], law)
        : new FlowElement(passage.name(), from[i], to[i], law);
  }

  /** Element of the i-th of passages and made elements. */
  Element made(NetworkBuilder.Made made, int i) {
    return made.factory().apply(new Node[] {from[i], to[i]});
  }

  /** Liquid in each region at each node [m³]. */
  private double[][] liquid(Contributions contributions) {
    double[][] volumes = new double[Region.values().length][placement.inner().size()];
    for (NetworkBuilder part : contributions.parts()) {
      for (NetworkBuilder.Liquid liquid : part.liquids) {
        add(volumes[liquid.region().ordinal()], liquid.point(), liquid.volume());
      }
    }
    return volumes;
  }

  /** Liquid at each node, with what any fitting holds [m³]. */
  private static double[] volume(double[][] liquid) {
    double[] volume = new double[liquid[0].length];
    Arrays.fill(volume, NetworkBuilder.FITTING_VOLUME);
    for (double[] region : liquid) {
      for (int i = 0; i < volume.length; i++) {
        volume[i] += region[i];
      }
    }
    return volume;
  }

  private void addTemperatures(Operation operation, double[][] liquid, List<Element> elements) {
    Node[] nodes = placement.inner().toArray(Node[]::new);
    for (Region region : Region.values()) {
      double[] swelling = liquid[region.ordinal()];
      boolean any = region == Region.ENGINE || any(swelling);
      for (int i = 0; i < swelling.length; i++) {
        swelling[i] *= fuel.expansion();
      }
      String name = "fuel temperature, " + region.title();
      if (any && operation.temperatureCourse().isPresent()) {
        elements.add(
            new TemperatureCourseElement(
                name, operation.temperatureCourse().get(), nodes, swelling));
      } else if (any) {
        elements.add(
            new ThermalElement(
                name, warmthRows.get(region), region.timeConstant(), nodes, swelling));
      }
    }
  }

  /** Capacity of each node that doesn't depend on its pressure: liquid and walls [m³/Pa]. */
  private double[] constantCapacity(Contributions contributions, double[] volume) {
    double[] capacity = new double[volume.length];
    for (int i = 0; i < capacity.length; i++) {
      capacity[i] = volume[i] / fuel.modulus();
    }
    for (NetworkBuilder part : contributions.parts()) {
      for (NetworkBuilder.Wall wall : part.walls) {
        add(capacity, wall.point(), wall.compliance());
      }
    }
    return capacity;
  }

  /** Storages of each node whose capacity depends on its pressure, vapour the last of them. */
  private Storage[][] storages(Contributions contributions, double[] volume) {
    List<List<Storage>> held = new ArrayList<>(volume.length);
    for (int i = 0; i < volume.length; i++) {
      held.add(new ArrayList<>());
    }
    for (NetworkBuilder part : contributions.parts()) {
      for (NetworkBuilder.Held storage : part.storages) {
        int row = row(storage.point());
        if (row >= 0) {
          held.get(row).add(storage.storage());
        }
      }
    }
    Storage[][] storages = new Storage[volume.length][];
    for (int i = 0; i < volume.length; i++) {
      held.get(i).add(new VapourStorage(volume[i], fuel.vapourPressure()));
      storages[i] = held.get(i).toArray(Storage[]::new);
    }
    return storages;
  }

  private void add(double[] rows, String point, double value) {
    int row = row(point);
    if (row >= 0) {
      rows[row] += value;
    }
  }

  private List<Threshold> thresholds(Contributions contributions) {
    List<Threshold> thresholds = new ArrayList<>();
    for (NetworkBuilder part : contributions.parts()) {
      for (NetworkBuilder.Watched watched : part.watched) {
        Node node = placement.node(watched.point(), watched.part());
        thresholds.add(
            new Threshold(
                watched.part(), node, watched.level(), watched.rising(), watched.becomes()));
      }
    }
    return thresholds;
  }
}
