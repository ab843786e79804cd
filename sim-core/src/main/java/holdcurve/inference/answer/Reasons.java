package holdcurve.inference.answer;

import java.util.List;

/**
 * What speaks for and against a suspect, beside a rival.
 *
 * @param suspect its id
 * @param rival id of the likeliest explanation that the tests can tell from it
 * @param reasons weightiest first; small ones are left out, so their weights don't add up to the
 *     odds
 */
public record Reasons(String suspect, String rival, List<Reason> reasons) {
  public Reasons {
    reasons = List.copyOf(reasons);
  }
}
