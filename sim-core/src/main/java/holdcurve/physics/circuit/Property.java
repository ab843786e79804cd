package holdcurve.physics.circuit;

/**
 * One typed quantity of a part.
 *
 * @param stem name without its unit, such as {@code length}
 * @param unit unit in files and on screens
 * @param standard value taken when a circuit file doesn't state it [SI]
 * @param least smallest value accepted [SI]
 * @param most largest value accepted [SI]
 * @param spread standard deviation of the natural logarithm of the true value about {@code
 *     standard} when it is not stated [-]; zero where the default is a convention and not a guess
 * @param meaning one plain sentence without a full stop
 * @param source where the default comes from, or {@code assumed} or {@code common practice}
 */
public record Property(
    String stem,
    Unit unit,
    double standard,
    double least,
    double most,
    double spread,
    String meaning,
    String source) {

  /**
   * A property whose values are given in its file unit.
   *
   * @param standard default in {@code unit}; likewise {@code least} and {@code most}
   */
  public static Property of(
      String stem,
      Unit unit,
      double standard,
      double least,
      double most,
      double spread,
      String meaning,
      String source) {
    return new Property(
        stem,
        unit,
        unit.toSi(standard),
        unit.toSi(least),
        unit.toSi(most),
        spread,
        meaning,
        source);
  }

  /** A yes/no property. */
  public static Property flag(String stem, boolean standard, String meaning) {
    return new Property(stem, Unit.FLAG, standard ? 1 : 0, 0, 1, 0, meaning, "convention");
  }

  /** The name in files: stem and unit, such as {@code length_m}. */
  public String fileName() {
    return unit.suffix().isEmpty() ? stem : stem + "_" + unit.suffix();
  }

  /** Whether an SI value lies inside the accepted range. */
  public boolean accepts(double si) {
    return si >= least && si <= most;
  }
}
