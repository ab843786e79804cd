package holdcurve.physics.balance;

import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.network.Network;
import holdcurve.physics.network.Node;

/** What one leak brings into the gauge's node. */
final class LeakEntry implements LedgerEntry {
  private final LeakPath leak;
  private final Node from;
  private final Node to;
  private final double sign;

  /**
   * @param gauge node of the gauge
   */
  LeakEntry(LeakPath leak, Network network, Node gauge) {
    this.leak = leak;
    this.from = network.layout().node(leak.from());
    this.to = network.layout().node(leak.to());
    this.sign = (to.equals(gauge) ? 1 : 0) - (from.equals(gauge) ? 1 : 0);
  }

  private double difference(double[] y) {
    return from.pressure(y) - to.pressure(y);
  }

  @Override
  public double flow(double t, double[] y) {
    return sign == 0 ? 0 : sign * leak.law().flow(difference(y));
  }

  @Override
  public void addSlopes(double t, double[] y, double[] slopes) {
    if (sign != 0) {
      double slope = sign * leak.law().slope(difference(y));
      add(from, slope, slopes);
      add(to, -slope, slopes);
    }
  }

  private static void add(Node node, double slope, double[] slopes) {
    if (!node.boundary()) {
      slopes[node.row()] += slope;
    }
  }

  @Override
  public double timeSlope(double t, double[] y) {
    return 0;
  }
}
