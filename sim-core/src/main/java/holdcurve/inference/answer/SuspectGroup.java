package holdcurve.inference.answer;

import java.util.List;

/**
 * Suspects that the tests so far cannot tell apart.
 *
 * @param suspects ids of its members, likeliest first; at least two
 * @param probability of the group as a whole [-]
 * @param reason one sentence: why the gauge sees no difference, and what would show one
 */
public record SuspectGroup(List<String> suspects, double probability, String reason) {
  public SuspectGroup {
    suspects = List.copyOf(suspects);
  }
}
