package holdcurve.inference.noise;

/**
 * How far readings stand from the curve.
 *
 * @param deviation standard deviation of one reading about the true needle [Pa]
 * @param amplitude of the model's own smooth error [Pa]
 */
public record Scales(double deviation, double amplitude) {}
