package holdcurve.inference.posterior;

import holdcurve.inference.hypothesis.Hypothesis;
import java.util.List;

/**
 * How far one hypothesis is believed, and the ways things may be if it is true.
 *
 * @param probability that it is true [-]
 * @param posteriorDraws equally likely ones; empty where the hypothesis is too unlikely to matter
 */
public record HypothesisPosterior(
    Hypothesis hypothesis, double probability, List<PosteriorDraw> posteriorDraws) {
  public HypothesisPosterior {
    posteriorDraws = List.copyOf(posteriorDraws);
  }
}
