package holdcurve.physics.storage;

import holdcurve.common.input.Require;

/**
 * Spring-loaded damper diaphragm between two end stops: V = (Vd/2) z/(1 + |z|^m)^(1/m) with z = (p
 * − pd)/w, counted from p = 0. The volume runs from −Vd/2 to Vd/2 around the working pressure; the
 * stops are soft for m = 2 and hard for large m, where the volume is nearly in proportion up to the
 * stops at pd ± w. The shape is a choice of ours: smooth, bounded, with a closed integral.
 *
 * @param stroke Vd, volume between the stops [m³]
 * @param middle pd, gauge pressure at mid-stroke [Pa]
 * @param width w [Pa]
 * @param hardness m of the stops, at least 1 [-]
 */
public record SpringDiaphragm(double stroke, double middle, double width, double hardness)
    implements Storage {
  private static final double SOFT = 2;

  public SpringDiaphragm {
    Require.notNegative(stroke, "stroke volume", "m³");
    Require.finite(middle, "mid-stroke pressure", "Pa");
    Require.positive(width, "width", "Pa");
    Require.positive(hardness, "hardness of the stops", "-");
  }

  /** With soft stops. */
  public SpringDiaphragm(double stroke, double middle, double width) {
    this(stroke, middle, width, SOFT);
  }

  @Override
  public double volume(double pressure) {
    return position(pressure) - position(0);
  }

  @Override
  public double capacity(double pressure) {
    double z = Math.abs(pressure - middle) / width;
    double sum = 1 + power(z);
    return stroke / (2 * width * sum * root(sum));
  }

  @Override
  public double capacitySlope(double pressure) {
    double z = (pressure - middle) / width;
    double power = power(Math.abs(z));
    double sum = 1 + power;
    double slope = z == 0 ? 0 : (hardness + 1) * power / (z * sum * sum * root(sum));
    return -stroke * slope / (2 * width * width);
  }

  private double position(double pressure) {
    double z = (pressure - middle) / width;
    return stroke / 2 * z / root(1 + power(Math.abs(z)));
  }

  private double power(double z) {
    return hardness == SOFT ? z * z : Math.pow(z, hardness);
  }

  private double root(double sum) {
    return hardness == SOFT ? Math.sqrt(sum) : Math.pow(sum, 1 / hardness);
  }
}
