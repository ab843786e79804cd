package holdcurve.physics.part;

import holdcurve.physics.circuit.Unit;
import holdcurve.physics.flow.FlowLaw;
import holdcurve.physics.flow.LaminarLaw;
import holdcurve.physics.flow.Softplus;

/**
 * Forward flow once the valve is pushed open, and a small weep past the closed seat. Not odd: a
 * check valve has a direction.
 *
 * @param crack pressure difference that opens it [Pa]
 * @param weep flow back past the seat at {@link Seats#TEST_PRESSURE} [m³/s]
 */
record CheckValveLaw(double crack, double weep) implements FlowLaw {
  /** Opening gradient: assumed, 2 L/min for 0.05 bar over the cracking pressure [m³/(s·Pa)]. */
  private static final double GRADIENT = Unit.LITRE_PER_MINUTE.toSi(2) / 5e3;

  private static final double WIDTH = 300;

  @Override
  public double flow(double difference) {
    return GRADIENT * WIDTH * Softplus.value((difference - opening()) / WIDTH)
        + seat().flow(difference);
  }

  @Override
  public double slope(double difference) {
    return GRADIENT * Softplus.slope((difference - opening()) / WIDTH) + seat().slope(difference);
  }

  /**
   * The smooth opening starts some widths early; this keeps a valve without a spring shut at rest.
   */
  private double opening() {
    return crack + 12 * WIDTH;
  }

  private LaminarLaw seat() {
    return Seats.weep(weep);
  }
}
