package holdcurve.casebook;

/** How far a job is, in a few words. */
public enum JobState {
  EMPTY("nothing held yet"),
  HELD("held, not ranked"),
  LEAKING("leaking"),
  FAULTY("a fault, no leak"),
  OPEN("not settled"),
  UNEXPLAINED("not explained"),
  SOUND("sound"),
  REPAIRED("repaired, hold again"),
  PROVED("holds, proved");

  private final String words;

  JobState(String words) {
    this.words = words;
  }

  /** As lists show it. */
  public String words() {
    return words;
  }

  /** As it is typed. */
  @Override
  public String toString() {
    return name().toLowerCase(java.util.Locale.ROOT);
  }
}
