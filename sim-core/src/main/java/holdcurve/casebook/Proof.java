package holdcurve.casebook;

/** Whether the next hold proved a repair. */
public enum Proof {
  NOTHING_REPAIRED(""),
  NOT_HELD("not held yet"),
  NOT_CHECKED("held, not checked"),
  NOT_SETTLED("not settled"),
  STILL_FAULTY("no"),
  PROVED("yes");

  private final String words;

  Proof(String words) {
    this.words = words;
  }

  /** As lists show it; empty where nothing was repaired. */
  public String words() {
    return words;
  }
}
