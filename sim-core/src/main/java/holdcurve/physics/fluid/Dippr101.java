package holdcurve.physics.fluid;

/**
 * Form 101 of the DIPPR project: y = exp(C1 + C2/T + C3 ln T + C4 T^C5), T in kelvin. Used for
 * vapour pressure [Pa] and liquid viscosity [Pa·s] in Perry's Chemical Engineers' Handbook, 8th
 * ed., tables 2-8 and 2-313.
 */
record Dippr101(double c1, double c2, double c3, double c4, double c5) {
  double value(double temperature) {
    double last = c4 == 0 ? 0 : c4 * Math.pow(temperature, c5);
    return Math.exp(c1 + c2 / temperature + c3 * Math.log(temperature) + last);
  }
}
