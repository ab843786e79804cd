package holdcurve.physics.part;

import holdcurve.physics.flow.OrificeLaw;
import holdcurve.physics.flow.Softplus;
import holdcurve.physics.network.Element;
import holdcurve.physics.network.Jacobians;
import holdcurve.physics.network.Node;

/**
 * A diaphragm valve that is off its seat:
 *
 * <pre>Q = (G w S((p − p_set)/w) + G_h w S((p − p_close)/w)) φ(p − p_down)/φ(p_set),
 * φ(d) = d/(d² + L²)^(1/4)</pre>
 *
 * with the softplus S. It passes G for each pascal over its set pressure; on its way to the seat it
 * hangs open by a little, G_h, down to its closing pressure.
 *
 * @param from inlet
 * @param to return side
 * @param opening p_set [Pa gauge]
 * @param gain G at a difference of p_set [m³/(s·Pa)]
 * @param closing p_close, not above p_set [Pa gauge]
 * @param hang G_h at a difference of p_set [m³/(s·Pa)]
 * @param scale 1/φ(p_set) [Pa^-½]
 */
record RegulatorElement(
    String name,
    Node from,
    Node to,
    double opening,
    double gain,
    double closing,
    double hang,
    double scale)
    implements Element {
  /** Softness of the opening: assumed, 1 mbar [Pa]. */
  private static final double WIDTH = 100;

  /** φ: an orifice of coefficient one. */
  private static final OrificeLaw ROOT = new OrificeLaw(1, 2e3);

  RegulatorElement(
      String name, Node from, Node to, double opening, double gain, double closing, double hang) {
    this(name, from, to, opening, gain, closing, hang, 1 / ROOT.flow(opening));
  }

  @Override
  public void addRates(double t, double[] y, double[] rates) {
    double up = from.pressure(y);
    double flow = lift(up) * drive(up - to.pressure(y));
    from.receive(rates, -flow);
    to.receive(rates, flow);
  }

  @Override
  public void addJacobian(double t, double[] y, double[][] jacobian) {
    double up = from.pressure(y);
    double difference = up - to.pressure(y);
    double byDifference = lift(up) * driveSlope(difference);
    double byLift = liftSlope(up) * drive(difference);
    Jacobians.addFlow(jacobian, from, to, from, byLift + byDifference);
    Jacobians.addFlow(jacobian, from, to, to, -byDifference);
  }

  /** Where the opening bends, in widths from the set pressure. */
  private static final double BEND_START = -4;

  private static final double BEND_END = 2;

  /** How much of the bend one step may pass, in widths. */
  private static final double LONGEST = 3;

  /**
   * A valve that shuts within a millibar can lie between two stages of a step of half a minute: of
   * 304 holds over all faults one then came out 8 mbar wrong, and others had slopes off by a tenth.
   */
  @Override
  public boolean jumpsOver(double[] before, double[] after) {
    double a = (from.pressure(before) - opening) / WIDTH;
    double b = (from.pressure(after) - opening) / WIDTH;
    double low = Math.max(Math.min(a, b), BEND_START);
    double high = Math.min(Math.max(a, b), BEND_END);
    return high - low > LONGEST;
  }

  private double lift(double up) {
    double main = gain * WIDTH * Softplus.value((up - opening) / WIDTH);
    return hang == 0 ? main : main + hang * WIDTH * Softplus.value((up - closing) / WIDTH);
  }

  private double liftSlope(double up) {
    double main = gain * Softplus.slope((up - opening) / WIDTH);
    return hang == 0 ? main : main + hang * Softplus.slope((up - closing) / WIDTH);
  }

  private double drive(double difference) {
    return ROOT.flow(difference) * scale;
  }

  private double driveSlope(double difference) {
    return ROOT.slope(difference) * scale;
  }
}
