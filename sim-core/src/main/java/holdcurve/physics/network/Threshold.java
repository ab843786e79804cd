package holdcurve.physics.network;

/**
 * A pressure at which a valve changes its state, for a run to watch.
 *
 * @param part id of the valve
 * @param node where its pressure is felt
 * @param level pressure at which it changes [Pa gauge]
 * @param rising whether it changes on the way up, else on the way down
 * @param becomes its state afterwards
 */
public record Threshold(String part, Node node, double level, boolean rising, ValveState becomes) {

  /** How far the state {@code y} is beyond the threshold [Pa]; negative short of it. */
  public double beyond(double[] y) {
    double over = node.pressure(y) - level;
    return rising ? over : -over;
  }
}
