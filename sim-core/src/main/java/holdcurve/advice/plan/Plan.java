package holdcurve.advice.plan;

import java.util.List;

/**
 * What could be done next.
 *
 * @param job title of the job
 * @param seed of the random numbers used
 * @param open what is still unknown about which suspect it is [bit]; 0 when it is certain
 * @param tests what the diagnosis says to do next first, then by information for the time they take
 * @param notes what a reader should know
 */
public record Plan(
    String job, long seed, double open, List<PlannedTest> tests, List<String> notes) {
  /** Format and version that files with a plan carry. */
  public static final String FORMAT = "holdcurve-plan/1";

  public Plan {
    tests = List.copyOf(tests);
    notes = List.copyOf(notes);
  }
}
