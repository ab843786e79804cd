package holdcurve.physics.part;

import holdcurve.physics.flow.LaminarLaw;

/** What the seats of a sound circuit let past. */
public final class Seats {
  /** The pressure at which weeps and leaks are stated [Pa]. */
  public static final double TEST_PRESSURE = 2e5;

  private Seats() {}

  /**
   * @param flow at {@link #TEST_PRESSURE} [m³/s]
   */
  static LaminarLaw weep(double flow) {
    return LaminarLaw.throughPoint(flow, TEST_PRESSURE);
  }
}
