package holdcurve.bench.flowsheet;

/** What is to be done with an injector. */
public enum Fitness {
  FIT("fit"),
  MEASURE_AGAIN("measure again"),
  SERVICE("service"),
  MATCH_OR_REPLACE("match or replace"),
  NOT_FIT("not fit"),
  NOT_MEASURED("flow not measured");

  private final String words;

  Fitness(String words) {
    this.words = words;
  }

  /** In the words of the trade. */
  public String words() {
    return words;
  }

  static Fitness of(Standing standing, boolean sure, boolean troubled, boolean serviced) {
    if (troubled) {
      return serviced ? NOT_FIT : SERVICE;
    }
    if (standing == Standing.NOT_MEASURED) {
      return NOT_MEASURED;
    }
    if (!sure) {
      return MEASURE_AGAIN;
    }
    if (standing == Standing.IN_LINE) {
      return FIT;
    }
    return serviced ? MATCH_OR_REPLACE : SERVICE;
  }
}
