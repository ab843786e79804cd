package holdcurve.record.job;

import java.util.Optional;

/** Which repair was done at the place of a suspect. */
public record WorkedOn(Job job) {
  /**
   * The last one.
   *
   * @param suspect its id: faults with their parts, as in {@code check-valve-seat@check-valve}
   */
  public Optional<Repair> last(String suspect) {
    return job.upkeep().repairs().stream()
        .filter(repair -> !repair.part().isEmpty() && isAt(repair.part(), suspect))
        .reduce((first, second) -> second);
  }

  private static boolean isAt(String part, String suspect) {
    for (String fault : suspect.split("\\+")) {
      if (fault.endsWith("@" + part)) {
        return true;
      }
    }
    return false;
  }
}
