package holdcurve.inference.runup;

import holdcurve.common.work.ComputationException;
import holdcurve.physics.network.Network;
import holdcurve.physics.network.Node;
import java.util.Arrays;
import java.util.List;

/**
 * A network in which one node stores nearly all: the others, between pump, valves and filter, are
 * taken to be where nothing is stored in them. What is left is how fast the pressure of the large
 * one changes at any pressure it may have. Not thread-safe.
 */
final class QuasiSteady {
  private static final int MOST_STEPS = 60;

  /** Change at which the small nodes count as settled [Pa]. */
  private static final double SETTLED = 5;

  /**
   * Change that is let pass in the end: about where hardly anything flows, roots are steep [Pa].
   */
  private static final double NEARLY = 500;

  /** Steps after which a search from the last place begins anew from nowhere. */
  private static final int PATIENCE = 20;

  /** Part of a step that is taken back, since a root of the pressure is overshot at rest [-]. */
  private static final double BACK = 0.5;

  /** Longest change of one step [Pa]. */
  private static final double LONGEST = 5e4;

  /** First step in time of a search from nowhere, and by how much the next ones grow [s, -]. */
  private static final double FIRST = 1e-4;

  private static final double GROWTH = 6;

  private final Network network;
  private final int[] small;
  private final int large;
  private final int gauge;
  private final double[] y;
  private final double[] rates;
  private final double[][] jacobian;
  private final double[] last;
  private boolean known;

  /**
   * @param start pressures to begin at: rows of nodes [Pa gauge]
   */
  QuasiSteady(Network network, double[] start) {
    this.network = network;
    List<Node> nodes = network.layout().nodes();
    int largest = 0;
    for (Node node : nodes) {
      if (network.capacity(node.row(), MIDDLE) > network.capacity(largest, MIDDLE)) {
        largest = node.row();
      }
    }
    large = largest;
    small = nodes.stream().mapToInt(Node::row).filter(row -> row != large).toArray();
    gauge = network.layout().node(network.layout().gaugePoint()).row();
    y = start.clone();
    rates = new double[y.length];
    jacobian = new double[y.length][y.length];
    last = new double[small.length];
  }

  /** Where capacities are compared [Pa gauge]. */
  private static final double MIDDLE = 1e5;

  /**
   * What is so at one pressure of the large node.
   *
   * @param pressure [Pa gauge]
   * @param rate by which it changes [Pa/s]
   * @param gauge pressure where the gauge is tee'd in [Pa gauge]
   */
  record Point(double pressure, double rate, double gauge) {}

  /** Row of the node that stores nearly all. */
  int large() {
    return large;
  }

  Point at(double pressure) {
    y[large] = pressure;
    Arrays.fill(last, 0);
    double step = known ? Double.POSITIVE_INFINITY : FIRST;
    for (int i = 0; i < MOST_STEPS; i++) {
      network.linearize(0, y, rates, jacobian);
      double change = move(step);
      if (change < (i < MOST_STEPS - 1 ? SETTLED : NEARLY) && step > 1) {
        known = true;
        return point(pressure);
      }
      step = known && i == PATIENCE ? FIRST : step * GROWTH;
    }
    throw new ComputationException("the running circuit comes to no rest at " + pressure + " Pa");
  }

  private Point point(double pressure) {
    double capacity = 0;
    for (Node node : network.layout().nodes()) {
      boolean follows = node.row() == large || y[node.row()] > pressure / 2;
      capacity += follows ? network.capacity(node.row(), y[node.row()]) : 0;
    }
    double inflow = rates[large] * network.capacity(large, pressure);
    return new Point(pressure, inflow / capacity, y[gauge]);
  }

  /** One implicit step of the small nodes; an infinite one is Newton's. Returns the change [Pa]. */
  private double move(double step) {
    int n = small.length;
    double[][] a = new double[n][n + 1];
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        a[i][j] = (i == j ? 1 / step : 0) - jacobian[small[i]][small[j]];
      }
      a[i][n] = rates[small[i]];
    }
    double[] change = SmallSystem.solve(a);
    double largest = 0;
    for (double one : change) {
      largest = Math.max(largest, Math.abs(one));
    }
    double shorten = Math.min(1, LONGEST / Math.max(largest, 1e-9));
    for (int i = 0; i < n; i++) {
      double back = change[i] * last[i] < 0 ? BACK : 1;
      last[i] = back * shorten * change[i];
      y[small[i]] += last[i];
    }
    return largest;
  }
}
