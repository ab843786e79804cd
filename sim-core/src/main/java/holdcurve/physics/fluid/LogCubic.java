package holdcurve.physics.fluid;

/**
 * Natural logarithm of a property as a cubic in t = (T − 293.15 K)/100 K. One such curve follows
 * density or bulk modulus of a liquid over 90 K to better than 0.05 %, and cannot turn negative.
 */
record LogCubic(double c0, double c1, double c2, double c3) {
  private static final double CENTRE = 293.15;
  private static final double SCALE = 100;

  double value(double temperature) {
    double t = (temperature - CENTRE) / SCALE;
    return Math.exp(c0 + t * (c1 + t * (c2 + t * c3)));
  }

  /** Derivative of the logarithm of the property [1/K]. */
  double logSlope(double temperature) {
    double t = (temperature - CENTRE) / SCALE;
    return (c1 + t * (2 * c2 + t * 3 * c3)) / SCALE;
  }
}
