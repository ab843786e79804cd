package holdcurve.common.number;

/**
 * A quantity with the range that holds it with 90 % probability, in the unit that its owner states.
 *
 * @param low 5 % quantile
 * @param middle median
 * @param high 95 % quantile
 */
public record Interval(double low, double middle, double high) {
  /** Whether {@code value} lies inside, ends included. */
  public boolean contains(double value) {
    return value >= low && value <= high;
  }
}
