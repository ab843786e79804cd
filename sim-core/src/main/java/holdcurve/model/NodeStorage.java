package holdcurve.model;

import holdcurve.fluid.Fluid;
import holdcurve.line.Storage;
import java.util.ArrayList;
import java.util.List;

/** What each node of a network can hold. */
final class NodeStorage {
  private final NetworkBuilder parts;
  private final NodePlacement placement;
  private final Fluid fluid;
  private final Operation operation;

  NodeStorage(NetworkBuilder parts, NodePlacement placement) {
    this.parts = parts;
    this.placement = placement;
    this.fluid = parts.fluid();
    this.operation = parts.operation();
  }

  /** Liquid at each node in one region [m³]. */
  double[] liquid(Region region) {
    double[] volumes = new double[placement.inner().size()];
    for (NetworkBuilder.Liquid liquid : parts.liquids) {
      if (liquid.region() == region) {
        add(volumes, liquid.point(), liquid.volume());
      }
    }
    return volumes;
  }

  /** Liquid at each node, with what any fitting holds [m³]. */
  private double[] allLiquid() {
    double[] volumes = new double[placement.inner().size()];
    for (int i = 0; i < volumes.length; i++) {
      volumes[i] = NetworkBuilder.FITTING_VOLUME;
    }
    for (NetworkBuilder.Liquid liquid : parts.liquids) {
      add(volumes, liquid.point(), liquid.volume());
    }
    return volumes;
  }

  /** Capacity of each node that doesn't depend on its pressure: liquid and walls [m³/Pa]. */
  double[] constantCapacity() {
    double[] capacity = allLiquid();
    double modulus = bulkModulus();
    for (int i = 0; i < capacity.length; i++) {
      capacity[i] /= modulus;
    }
    for (NetworkBuilder.Wall wall : parts.walls) {
      add(capacity, wall.point(), wall.compliance());
    }
    return capacity;
  }

  private double bulkModulus() {
    double temperature = operation.fuelTemperature();
    return operation.pace() == Pace.FAST
        ? fluid.bulkModulusIsentropic(temperature, Fluid.ATMOSPHERE)
        : fluid.bulkModulusIsothermal(temperature, Fluid.ATMOSPHERE);
  }

  /** Storages of each node whose capacity depends on its pressure, vapour the last of them. */
  Storage[][] storages() {
    List<List<Storage>> held = new ArrayList<>();
    placement.inner().forEach(node -> held.add(new ArrayList<>()));
    for (NetworkBuilder.Held storage : parts.storages) {
      Node node = placement.node(storage.point(), "a storage");
      if (!node.boundary()) {
        held.get(node.row()).add(storage.storage());
      }
    }
    double vapourPressure = fluid.vapourPressure(operation.fuelTemperature());
    double[] liquid = allLiquid();
    for (int i = 0; i < liquid.length; i++) {
      held.get(i).add(new VapourStorage(liquid[i], vapourPressure));
    }
    return held.stream().map(list -> list.toArray(Storage[]::new)).toArray(Storage[][]::new);
  }

  private void add(double[] rows, String point, double value) {
    Node node = placement.node(point, "a part");
    if (!node.boundary()) {
      rows[node.row()] += value;
    }
  }
}
