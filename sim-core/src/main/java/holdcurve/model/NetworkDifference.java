package holdcurve.model;

import holdcurve.line.Storage;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** How the right side of one network differs from that of another with the same states. */
final class NetworkDifference {
  private final Network moved;
  private final LinearRates linear;
  private final Element[] added;
  private final Element[] removed;
  private final boolean[] otherCapacity;
  private final double[] lost;

  private NetworkDifference(Network base, Network moved, Element[] added, Element[] removed) {
    this.moved = moved;
    this.linear = moved.linear().minus(base.linear());
    this.added = added;
    this.removed = removed;
    this.otherCapacity = new boolean[base.layout().nodes().size()];
    for (int i = 0; i < otherCapacity.length; i++) {
      otherCapacity[i] = !base.hasCapacityOf(moved, i);
    }
    this.lost = new double[base.getDimension()];
  }

  static NetworkDifference of(Network base, Network moved) {
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
    return new NetworkDifference(
        base, moved, added.toArray(Element[]::new), removed.toArray(Element[]::new));
  }

  /**
   * @param flow what the base collects at y, before division by its capacities
   * @param capacity of the base's nodes at y
   * @param change filled with the moved right side less that of the base
   */
  void fill(double t, double[] y, double[] flow, double[] capacity, double[] change) {
    linear.fill(y, change);
    for (Element element : added) {
      element.addRates(t, y, change);
    }
    if (removed.length > 0) {
      Arrays.fill(lost, 0);
      for (Element element : removed) {
        element.addRates(t, y, lost);
      }
      for (int i = 0; i < lost.length; i++) {
        change[i] -= lost[i];
      }
    }
    for (int i = 0; i < otherCapacity.length; i++) {
      if (otherCapacity[i]) {
        change[i] = (flow[i] + change[i]) / moved.capacity(i, y[i]) - flow[i] / capacity[i];
      } else if (change[i] != 0) {
        change[i] /= capacity[i];
      }
    }
  }

  /** Whether two lists of storages answer alike. */
  static boolean same(Storage[] a, Storage[] b) {
    return a == b || Arrays.equals(a, b);
  }
}
