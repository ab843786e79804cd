package holdcurve.calibration.blind;

/**
 * One body of trapped fuel with everything around it that gives.
 *
 * @param liquid fuel [m³]
 * @param hose instant stretch of its hoses at low pressure [m³/Pa]
 * @param stiffening how fast hoses stiffen: stretch goes with p/(1 + p/this) [Pa]
 * @param rigid compliance of liquid and metal or plastic walls [m³/Pa]
 * @param air trapped air at no pressure [m³]
 * @param polytropic exponent of that air, between 1 and 1.4 [-]
 * @param damper what a damper takes up
 */
record Zone(
    double liquid,
    double hose,
    double stiffening,
    double rigid,
    double air,
    double polytropic,
    Cushion damper) {
  private static final double AMBIENT = 1.013e5;

  /** What a damper takes up at a pressure. */
  interface Cushion {
    Cushion NONE = p -> 0;

    /**
     * @param p [Pa gauge]
     * @return [m³]
     */
    double taken(double p);

    /** A piston on a coil spring between hard stops. */
    static Cushion coil(double stroke, double first, double last) {
      return p -> stroke * Math.max(0, Math.min(1, (p - first) / (last - first)));
    }

    /** Gas behind a bladder that lies on its stop up to the charge. */
    static Cushion gas(double volume, double charge, double exponent) {
      double filled = AMBIENT + charge;
      return p -> volume * (1 - Math.pow(filled / (AMBIENT + Math.max(p, charge)), 1 / exponent));
    }
  }

  /** Fuel that it has taken up over what it holds at no pressure, creep left out [m³]. */
  double taken(double p) {
    double gauge = Math.max(p, -0.9e5);
    double gas = air * (1 - Math.pow(AMBIENT / (AMBIENT + gauge), 1 / polytropic));
    return rigid * p + stretch(p) + gas + damper.taken(p);
  }

  /** Instant stretch of the hoses [m³]. */
  double stretch(double p) {
    return hose * p / (1 + Math.max(p, 0) / stiffening);
  }
}
