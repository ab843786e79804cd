package holdcurve.calibration.blind;

/**
 * A way for fuel that should not be there: Q = size · ((d − opening)/(reference − opening)) ^
 * exponent, evened out within some millibars of nothing. The drive d is the pressure difference,
 * or, for a valve that its inlet holds open, the pressure at the inlet.
 *
 * @param from the zone it drains
 * @param to where it leads
 * @param size flow at the reference [m³/s]
 * @param reference pressure of the stated size [Pa]
 * @param exponent [-]
 * @param opening pressure below which it is shut [Pa]
 * @param heldOpen whether the inlet holds it open
 */
record Leak(
    Place from,
    Place to,
    double size,
    double reference,
    double exponent,
    double opening,
    boolean heldOpen) {
  private static final double EVEN = 500;

  /** Zones of trapped fuel, and what lies outside them. */
  enum Place {
    FEED,
    RAIL,
    RETURN,
    OUTSIDE
  }

  /** A leak stated at 2 bar. */
  static Leak of(Place from, Place to, double size, double exponent, double opening) {
    return new Leak(from, to, size, 2e5, exponent, opening, false);
  }

  /** Flow between two pressures [m³/s]. */
  double flow(double up, double down) {
    double difference = up - down;
    double over = (heldOpen ? up : difference) - opening;
    double even = opening > 0 ? above(over, EVEN) : over;
    double scale = reference - opening;
    double flow = size * even / scale * Math.pow(Math.hypot(even, EVEN) / scale, exponent - 1);
    return heldOpen ? flow * Math.tanh(difference / 1e4) : flow;
  }

  /** The positive part of a difference, rounded over a width and gone a few widths below 0. */
  static double above(double difference, double width) {
    return width
        * (Math.max(0, difference / width) + Math.log1p(Math.exp(-Math.abs(difference) / width)));
  }

  Leak times(double factor) {
    return new Leak(from, to, size * factor, reference, exponent, opening, heldOpen);
  }

  Leak openingAt(double pressure) {
    return new Leak(from, to, size, pressure + reference - opening, exponent, pressure, heldOpen);
  }
}
