package holdcurve.ui.window.whatif;

import holdcurve.infer.Belief;
import holdcurve.infer.Hypothesis;
import holdcurve.whatif.RepairOffer;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;

/** A repair that can be tried, with its chance. */
final class Remedy {
  /** Suspects less likely than this are not offered for repair [-]. */
  private static final double OFFERED = 0.01;

  private static final int MOST = 10;

  private final RepairOffer offer;
  private final double chance;
  private final BooleanProperty tried = new SimpleBooleanProperty();

  /**
   * @param chance that the hold passes after it alone [-]
   */
  Remedy(RepairOffer offer, double chance) {
    this.offer = offer;
    this.chance = chance;
  }

  /** What would put the likeliest suspects right, likeliest first; no prices. */
  static List<RepairOffer> offers(List<Belief> beliefs) {
    List<RepairOffer> offers = new ArrayList<>();
    for (Belief belief : beliefs) {
      if (belief.hypothesis().members().size() == 1
          && belief.probability() >= OFFERED
          && offers.size() < MOST) {
        Hypothesis.Member member = belief.hypothesis().members().get(0);
        offers.add(
            new RepairOffer(member.fault().name(), Optional.empty(), List.of(member.id()), 0, 0));
      }
    }
    return offers;
  }

  RepairOffer offer() {
    return offer;
  }

  double chance() {
    return chance;
  }

  /** Whether it is among what is tried. */
  BooleanProperty triedProperty() {
    return tried;
  }
}
