package holdcurve.physics.hold;

/**
 * What the gauge shows and how that changes with some parameters.
 *
 * @param shown gauge reading [Pa gauge], one a time
 * @param sensitivities its derivatives, one row a time, one column a parameter [Pa / unit of the
 *     parameter]
 */
public record HoldSensitivities(double[] shown, double[][] sensitivities) {}
