package holdcurve.whatif;

import holdcurve.infer.Belief;
import holdcurve.infer.Possibility;
import java.util.ArrayList;
import java.util.List;

/**
 * A way that things may be, with its weight among all that are asked.
 *
 * @param seed of what differs from hold to hold: the same before and after a change
 */
record Weighted(Possibility possibility, double weight, long seed) {
  /**
   * Shares draws among hypotheses in proportion to their probability; each that has any gets one at
   * least.
   *
   * @param count about how many draws [-]
   */
  static List<Weighted> of(List<Belief> beliefs, int count, long seed) {
    List<Weighted> draws = new ArrayList<>();
    for (Belief belief : beliefs) {
      int available = belief.possibilities().size();
      int share = (int) Math.round(belief.probability() * count);
      int used = Math.min(available, Math.max(1, share));
      for (int i = 0; i < used; i++) {
        draws.add(
            new Weighted(
                belief.possibilities().get(i),
                belief.probability() / used,
                seed * 7919 + draws.size()));
      }
    }
    return draws;
  }
}
