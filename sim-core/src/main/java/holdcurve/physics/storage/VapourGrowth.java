package holdcurve.physics.storage;

import holdcurve.common.input.Require;
import holdcurve.physics.flow.Softplus;

/**
 * Vapour that forms when a node falls to the vapour pressure and makes room for lost liquid, so
 * that the pressure settles there instead of going through it.
 *
 * <p>Capacity C S'((pv − p)/w): nil well above the vapour pressure pv, C well below, turning over a
 * few widths w. C is taken so that the whole node would be vapour after one more width, C = V/w:
 * two to four orders of magnitude above a circuit's compliance. Petrol boils over a range, not at a
 * point; w of a few kPa stands for that. First principles and smoothing, no source.
 *
 * @param nodeVolume V, liquid in the node [m³]
 * @param vapourPressure pv, gauge [Pa]: absolute vapour pressure less ambient, mostly negative
 * @param width w [Pa]
 */
public record VapourGrowth(double nodeVolume, double vapourPressure, double width)
    implements Storage {
  /** A width for finished petrol [Pa]; assumed. */
  public static final double USUAL_WIDTH = 2_000;

  public VapourGrowth {
    Require.notNegative(nodeVolume, "node volume", "m³");
    Require.finite(vapourPressure, "vapour pressure", "Pa gauge");
    Require.positive(width, "width", "Pa");
  }

  @Override
  public double volume(double pressure) {
    double atZero = Softplus.value(vapourPressure / width);
    return nodeVolume * (atZero - Softplus.value(depth(pressure)));
  }

  @Override
  public double capacity(double pressure) {
    return nodeVolume / width * Softplus.slope(depth(pressure));
  }

  @Override
  public double capacitySlope(double pressure) {
    return -nodeVolume / (width * width) * Softplus.curvature(depth(pressure));
  }

  private double depth(double pressure) {
    return (vapourPressure - pressure) / width;
  }
}
