package holdcurve.ui.window.plot;

/** Unit in which a plot shows time since the pump stopped. */
public enum TimeAxis {
  SECONDS("s", 1),
  MINUTES("min", 60);

  /** Holds shorter than this are shown in seconds [s]. */
  static final double LONGEST_IN_SECONDS = 180;

  private final String unit;
  private final double seconds;

  TimeAxis(String unit, double seconds) {
    this.unit = unit;
    this.seconds = seconds;
  }

  /**
   * @param span length of the hold [s]
   */
  public static TimeAxis of(double span) {
    return span < LONGEST_IN_SECONDS ? SECONDS : MINUTES;
  }

  /** Name and unit, for the axis. */
  public String title() {
    return "Time since pump stop [" + unit + "]";
  }

  /** Likewise, where there is little room. */
  public String shortTitle() {
    return "Time [" + unit + "]";
  }

  /** How long one of it is [s]. */
  public double seconds() {
    return seconds;
  }

  /**
   * @param time [s]
   * @return in this unit
   */
  public double in(double time) {
    return time / seconds;
  }
}
