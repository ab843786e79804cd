package holdcurve.advice.whatif;

import holdcurve.inference.posterior.HypothesisPosterior;
import holdcurve.inference.posterior.PosteriorDraw;
import java.util.ArrayList;
import java.util.List;

/**
 * A way that things may be, with its weight among all that are asked.
 *
 * @param seed of what differs from hold to hold: the same before and after a change
 */
record Weighted(PosteriorDraw posteriorDraw, double weight, long seed) {
  /**
   * Shares draws among hypotheses in proportion to their probability; each that has any gets one at
   * least.
   *
   * @param count about how many draws [-]
   */
  static List<Weighted> of(List<HypothesisPosterior> posterior, int count, long seed) {
    List<Weighted> draws = new ArrayList<>();
    for (HypothesisPosterior belief : posterior) {
      int available = belief.posteriorDraws().size();
      int share = (int) Math.round(belief.probability() * count);
      int used = Math.min(available, Math.max(1, share));
      for (int i = 0; i < used; i++) {
        draws.add(
            new Weighted(
                belief.posteriorDraws().get(i),
                belief.probability() / used,
                seed * 7919 + draws.size()));
      }
    }
    return draws;
  }
}
