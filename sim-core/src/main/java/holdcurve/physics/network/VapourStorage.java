package holdcurve.physics.network;

import holdcurve.physics.fluid.Fluid;
import holdcurve.physics.storage.Storage;
import holdcurve.physics.storage.VapourGrowth;

/**
 * {@link VapourGrowth} that costs one comparison wherever no vapour can be: where its exponential
 * tail would add less than rounding to the capacity of a circuit.
 */
final class VapourStorage implements Storage {
  /** Petrol boils over a range: assumed [Pa]. */
  private static final double WIDTH = 1_000;

  /** e^−50 times the largest capacity of vapour is far below the last place of any wall's. */
  private static final double TAIL = 50;

  /** Vapour that may appear or vanish unseen within a step [m³]. */
  private static final double UNSEEN = 1e-9;

  private final Storage growth;
  private final double end;

  /**
   * @param volume of liquid at the node [m³]
   * @param vapourPressure absolute [Pa]
   */
  VapourStorage(double volume, double vapourPressure) {
    double gauge = vapourPressure - Fluid.ATMOSPHERE;
    growth = new VapourGrowth(volume, gauge, WIDTH);
    end = gauge + TAIL * WIDTH;
  }

  @Override
  public double volume(double pressure) {
    return growth.volume(pressure);
  }

  @Override
  public double capacity(double pressure) {
    return pressure > end ? 0 : growth.capacity(pressure);
  }

  @Override
  public double capacitySlope(double pressure) {
    return pressure > end ? 0 : growth.capacitySlope(pressure);
  }

  /**
   * Whether vapour forms or collapses between two pressures that lie too far apart for a step to
   * see how: within a few widths the capacity changes by orders of magnitude, and the rates at
   * either end know nothing of what lies between.
   */
  @Override
  public boolean isJumped(double from, double to) {
    return Math.min(from, to) < end
        && Math.abs(to - from) > 2 * WIDTH
        && Math.abs(growth.volume(to) - growth.volume(from)) > UNSEEN;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof VapourStorage that && growth.equals(that.growth);
  }

  @Override
  public int hashCode() {
    return growth.hashCode();
  }
}
