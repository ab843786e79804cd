package holdcurve.line;

import holdcurve.check.Require;

/**
 * Spring-loaded damper diaphragm between two soft end stops: V = (Vd/2) z/√(1 + z²) with z = (p −
 * pd)/w, counted from p = 0. The volume runs from −Vd/2 to Vd/2 around the working pressure, half
 * of it within 0.58 w. The shape is a choice of ours: smooth, bounded, with a closed integral.
 *
 * @param stroke Vd, volume between the stops [m³]
 * @param middle pd, gauge pressure at mid-stroke [Pa]
 * @param width w [Pa]
 */
public record SpringDiaphragm(double stroke, double middle, double width) implements Storage {
  public SpringDiaphragm {
    Require.notNegative(stroke, "stroke volume", "m³");
    Require.finite(middle, "mid-stroke pressure", "Pa");
    Require.positive(width, "width", "Pa");
  }

  @Override
  public double volume(double pressure) {
    return position(pressure) - position(0);
  }

  @Override
  public double capacity(double pressure) {
    double z = (pressure - middle) / width;
    double sum = 1 + z * z;
    return stroke / (2 * width * sum * Math.sqrt(sum));
  }

  @Override
  public double capacitySlope(double pressure) {
    double z = (pressure - middle) / width;
    double sum = 1 + z * z;
    return -3 * stroke * z / (2 * width * width * sum * sum * Math.sqrt(sum));
  }

  private double position(double pressure) {
    double z = (pressure - middle) / width;
    return stroke / 2 * z / Math.sqrt(1 + z * z);
  }
}
