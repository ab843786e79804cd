package holdcurve.physics.network;

import holdcurve.physics.storage.Storage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** How the right side of one network differs from that of another with the same states. */
final class NetworkDifference {
  /** No difference at all. */
  static final NetworkDifference NONE =
      new NetworkDifference(null, new Element[0], new Element[0], new Capacity[0]);

  /**
   * How the capacity of a node differs.
   *
   * @param constant [m³/Pa]
   * @param gained storages that only the moved network has
   * @param lost storages that only the base has
   */
  record Capacity(int node, double constant, Storage[] gained, Storage[] lost) {
    Capacity plus(double more, Storage[] alsoGained, Storage[] alsoLost) {
      return new Capacity(
          node, constant + more, joined(gained, alsoGained), joined(lost, alsoLost));
    }

    private static Storage[] joined(Storage[] a, Storage[] b) {
      Storage[] both = Arrays.copyOf(a, a.length + b.length);
      System.arraycopy(b, 0, both, a.length, b.length);
      return both;
    }

    /** Capacity of the moved node less that of the base [m³/Pa]. */
    double at(double pressure) {
      double more = constant;
      for (Storage storage : gained) {
        more += storage.capacity(pressure);
      }
      for (Storage storage : lost) {
        more -= storage.capacity(pressure);
      }
      return more;
    }
  }

  private final LinearRates linear;
  private final Element[] added;
  private final Element[] removed;
  private final Capacity[] capacities;

  private NetworkDifference(
      LinearRates linear, Element[] added, Element[] removed, Capacity[] capacities) {
    this.linear = linear;
    this.added = added;
    this.removed = removed;
    this.capacities = capacities;
  }

  /**
   * @param added elements that only the moved network has
   * @param removed elements that only the base has
   * @param n dimension of the state
   */
  static NetworkDifference of(
      List<Element> added, List<Element> removed, List<Capacity> capacities, int n) {
    LinearRates linear = LinearRates.difference(added, removed, n);
    return new NetworkDifference(
        linear, bent(added), bent(removed), capacities.toArray(Capacity[]::new));
  }

  /** The difference of two whole networks. */
  static NetworkDifference between(Network base, Network moved) {
    List<Element> added = new ArrayList<>();
    List<Element> removed = new ArrayList<>();
    Element[] from = base.bent();
    Element[] to = moved.bent();
    for (int i = 0; i < Math.max(from.length, to.length); i++) {
      boolean same = i < from.length && i < to.length && from[i].equals(to[i]);
      if (!same && i < from.length) {
        removed.add(from[i]);
      }
      if (!same && i < to.length) {
        added.add(to[i]);
      }
    }
    List<Capacity> capacities = new ArrayList<>();
    for (int i = 0; i < base.layout().nodes().size(); i++) {
      if (!base.hasCapacityOf(moved, i)) {
        double constant = moved.constantCapacity(i) - base.constantCapacity(i);
        capacities.add(new Capacity(i, constant, moved.storages(i), base.storages(i)));
      }
    }
    return new NetworkDifference(
        moved.linear().minus(base.linear()),
        added.toArray(Element[]::new),
        removed.toArray(Element[]::new),
        capacities.toArray(Capacity[]::new));
  }

  private static Element[] bent(List<Element> elements) {
    List<Element> bent = new ArrayList<>(elements.size());
    for (Element element : elements) {
      if (!element.isLinear()) {
        bent.add(element);
      }
    }
    return bent.toArray(Element[]::new);
  }

  /** Elements that only the base has and that aren't linear. */
  Element[] removed() {
    return removed;
  }

  boolean isNone() {
    return this == NONE;
  }

  /** Capacity of the moved node less that of the base [m³/Pa]. */
  double capacity(int node, double pressure) {
    for (Capacity capacity : capacities) {
      if (capacity.node() == node) {
        return capacity.at(pressure);
      }
    }
    return 0;
  }

  /**
   * @param flow what the base collects at y, before division by its capacities
   * @param capacity of the base's nodes at y
   * @param lost what each removed element adds to the base, in the order of {@link #removed}
   * @param change filled with the moved right side less that of the base
   */
  void fill(
      double t, double[] y, double[] flow, double[] capacity, double[][] lost, double[] change) {
    if (linear == null) {
      Arrays.fill(change, 0);
      return;
    }
    linear.fill(y, change);
    for (Element element : added) {
      element.addRates(t, y, change);
    }
    for (double[] gone : lost) {
      for (int i = 0; i < gone.length; i++) {
        change[i] -= gone[i];
      }
    }
    for (Capacity other : capacities) {
      int i = other.node();
      double moved = capacity[i] + other.at(y[i]);
      change[i] = change[i] * (capacity[i] / moved) + flow[i] * ((capacity[i] - moved) / moved);
    }
    for (int i = 0; i < capacity.length; i++) {
      change[i] /= capacity[i];
    }
  }
}
