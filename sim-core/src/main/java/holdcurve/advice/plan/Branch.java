package holdcurve.advice.plan;

import holdcurve.common.message.Message;
import java.util.List;

/**
 * One likely outcome of a test and what would then be believed.
 *
 * @param said what it shows, a part of a sentence such as "the gauge stays above 1.6 bar"
 * @param probability that it comes to this [-]
 * @param believed hypotheses with what would then be their probability, likeliest first
 */
public record Branch(Message said, double probability, List<Share> believed) {
  /**
   * A hypothesis and its probability.
   *
   * @param id as in a ranking
   * @param name in plain words
   * @param probability [-]
   */
  public record Share(String id, String name, double probability) {}

  public Branch {
    believed = List.copyOf(believed);
  }

  /** What it shows, with pressures in bar. */
  public String outcome() {
    return said.toString();
  }
}
