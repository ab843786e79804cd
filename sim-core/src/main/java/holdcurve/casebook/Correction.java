package holdcurve.casebook;

/**
 * What the user says about a case, against or beside what the files say.
 *
 * @param fault id of the fault that it really was; {@value #NONE} where it counts for none; empty
 *     where the files decide
 * @param car name or number plate that jobs of the same car share; may be empty
 */
public record Correction(String fault, String car) {
  /** Counts as no confirmed fault. */
  public static final String NONE = "none";

  /** Nothing said. */
  public static final Correction EMPTY = new Correction("", "");

  /** The same about another fault. */
  public Correction withFault(String other) {
    return new Correction(other, car);
  }

  /** The same about another car. */
  public Correction withCar(String other) {
    return new Correction(fault, other);
  }
}
