package holdcurve.physics.balance;

/** What can make the gauge of a circuit at rest move. */
public enum Cause {
  /** Through the faults that are supposed. */
  LEAK("leak"),
  /** Past seats and tips that are sound. */
  WEEP("weep of sound seats"),
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
  GAUGE("gauge and what is left over");

  private final String title;

  Cause(String title) {
    this.title = title;
  }

  /** In plain words, for a table. */
  public String title() {
    return title;
  }
}
