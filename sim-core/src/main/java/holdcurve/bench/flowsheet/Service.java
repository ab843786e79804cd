package holdcurve.bench.flowsheet;

/** Before or after the injectors were serviced. */
public enum Service {
  BEFORE("before"),
  AFTER("after");

  private final String word;

  Service(String word) {
    this.word = word;
  }

  /** The word in files and on screens. */
  public String word() {
    return word;
  }
}
