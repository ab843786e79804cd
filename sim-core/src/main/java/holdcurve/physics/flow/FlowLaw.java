package holdcurve.physics.flow;

/**
 * Volume flow through a passage as a function of the pressure difference across it alone.
 *
 * <p>Implementations are immutable, odd-signed (flow has the sign of the difference), continuously
 * differentiable everywhere and never decreasing, so that the integrator sees no kink.
 */
public interface FlowLaw {
  /**
   * @param difference upstream minus downstream pressure [Pa], either sign
   * @return volume flow, positive downstream [m³/s]
   */
  double flow(double difference);

  /**
   * @param difference upstream minus downstream pressure [Pa]
   * @return derivative of {@link #flow} [m³/(s·Pa)], never negative
   */
  double slope(double difference);
}
