package holdcurve.inference.answer;

import holdcurve.common.number.Interval;
import java.util.List;
import java.util.Optional;

/**
 * One explanation of a job's readings.
 *
 * @param id hypothesis: {@code none}, {@code fault@site}, or two of those joined by {@code +}
 * @param name plain words, such as "Check valve leaks back to the tank"
 * @param where where in this circuit; empty for no fault
 * @param probability that it is the true one among those considered [-]
 * @param size how bad it is; absent for no fault
 * @param symptoms what is seen on the car
 * @param repair what puts it right
 * @param curves expected readings, one for each hold test
 */
public record Suspect(
    String id,
    String name,
    String where,
    double probability,
    Optional<FaultSize> size,
    String symptoms,
    String repair,
    List<HoldCurve> curves) {
  /** The id of the hypothesis that nothing is wrong. */
  public static final String NONE = "none";

  public Suspect {
    curves = List.copyOf(curves);
  }

  /**
   * Loss through the fault at the pressure that the name of its size states [m³/s]; absent where
   * the fault is no leak.
   */
  public Optional<Interval> leak() {
    return size.filter(FaultSize::isLeak).map(FaultSize::value);
  }

  /** Whether this is the explanation that nothing is wrong. */
  public boolean isNone() {
    return id.equals(NONE);
  }
}
