package holdcurve.physics.network;

/**
 * Where fuel stands, as far as its temperature goes. Each region has one temperature of its own.
 */
public enum Region {
  /** Under the bonnet: assumed, 25 min. */
  ENGINE("engine bay", 1500),
  /** Lines under the floor, in moving air: assumed, 8 min. */
  FLOOR("floor", 480);

  private final String title;
  private final double timeConstant;

  Region(String title, double timeConstant) {
    this.title = title;
    this.timeConstant = timeConstant;
  }

  /** The name shown to people. */
  public String title() {
    return title;
  }

  /** Time constant with which its fuel follows its surroundings [s]. */
  public double timeConstant() {
    return timeConstant;
  }
}
