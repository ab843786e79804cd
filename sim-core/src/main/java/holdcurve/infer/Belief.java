package holdcurve.infer;

import java.util.List;

/**
 * How far one hypothesis is believed, and the ways things may be if it is true.
 *
 * @param probability that it is true [-]
 * @param possibilities equally likely ones; empty where the hypothesis is too unlikely to matter
 */
public record Belief(Hypothesis hypothesis, double probability, List<Possibility> possibilities) {
  public Belief {
    possibilities = List.copyOf(possibilities);
  }
}
