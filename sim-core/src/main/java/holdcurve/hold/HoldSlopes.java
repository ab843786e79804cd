package holdcurve.hold;

/**
 * What the gauge shows and how that changes with some parameters.
 *
 * @param shown gauge reading [Pa gauge], one a time
 * @param slopes its derivatives, one row a time, one column a parameter [Pa / unit of the
 *     parameter]
 */
public record HoldSlopes(double[] shown, double[][] slopes) {}
