package holdcurve.advice.plan;

import java.util.List;

/**
 * A test that could be done next, and what it is worth.
 *
 * @param procedure how it is done
 * @param information what it is expected to tell about which suspect it is
 * @param branches its likely outcomes; empty where none changes anything
 * @param reason one or two sentences: why it tells what it tells, or why nothing
 */
public record PlannedTest(
    Procedure procedure, Information information, List<Branch> branches, String reason) {
  public PlannedTest {
    branches = List.copyOf(branches);
  }

  /** Worth for the time it takes [bit/min]. */
  public double bitsPerMinute() {
    return information.bits() / procedure.minutes();
  }
}
