package holdcurve.physics.balance;

/** What can make the gauge of a circuit at rest move. */
public enum Cause {
  /** Through the faults that are supposed. */
  LEAK("leak"),
  /** Past seats and tips that are sound. */
  WEEP("normal seepage"),
  /** Hose walls that go on stretching, or come back. */
  CREEP("hose stretch"),
  /** Fuel that shrinks or swells. */
  TEMPERATURE("fuel temperature"),
  /** Back through the regulator before it has shut. */
  RESEAT("regulator shutting"),
  /** Past clamps, and what setting them pushed. */
  CLAMP("clamps"),
  /** To and from the rest of the circuit by any other way. */
  OTHER("other parts"),
  /** What the gauge shows beside the pressure. */
  GAUGE("gauge error and unexplained");

  private final String title;

  Cause(String title) {
    this.title = title;
  }

  /** In plain words, for a table. */
  public String title() {
    return title;
  }

  /**
   * Likewise, with the way in which it moved the needle.
   *
   * @param fall what it took; negative where it held the needle up [Pa]
   */
  public String title(double fall) {
    return switch (this) {
      case CREEP -> fall < 0 ? "hoses springing back" : title;
      case TEMPERATURE -> fall < 0 ? "fuel warming up" : "fuel cooling down";
      case CLAMP -> fall < 0 ? "clamps pushing fuel in" : title;
      default -> title;
    };
  }
}
