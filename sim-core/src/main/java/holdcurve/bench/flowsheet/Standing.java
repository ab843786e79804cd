package holdcurve.bench.flowsheet;

/** Where an injector stands among its set. */
public enum Standing {
  IN_LINE("in line"),
  OUT_OF_LINE("out of line"),
  FAR_OUT("far out of line"),
  NOT_MEASURED("flow not measured");

  private final String words;

  Standing(String words) {
    this.words = words;
  }

  /** In the words of the trade. */
  public String words() {
    return words;
  }

  /**
   * @param departure from the median of the set [-]
   */
  public static Standing of(double departure, BenchLimits limits) {
    double size = Math.abs(departure);
    if (size < limits.outOfLine()) {
      return IN_LINE;
    }
    return size < limits.farOut() ? OUT_OF_LINE : FAR_OUT;
  }
}
