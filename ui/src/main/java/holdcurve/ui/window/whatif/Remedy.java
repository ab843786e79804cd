package holdcurve.ui.window.whatif;

import holdcurve.advice.whatif.RepairOffer;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.posterior.HypothesisPosterior;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleDoubleProperty;

/** A repair that can be tried and ordered, with its chance and the user's price. */
final class Remedy {
  /** Suspects less likely than this are not offered for repair [-]. */
  private static final double OFFERED = 0.01;

  private static final int MOST = 10;

  private final RepairOffer offer;
  private final double chance;
  private final BooleanProperty tried = new SimpleBooleanProperty();
  private final DoubleProperty price;
  private final DoubleProperty minutes;

  /**
   * @param chance that the hold passes after it alone [-]
   */
  Remedy(RepairOffer offer, double chance) {
    this.offer = offer;
    this.chance = chance;
    this.price = new SimpleDoubleProperty(offer.price());
    this.minutes = new SimpleDoubleProperty(offer.minutes());
  }

  /** What would put the likeliest suspects right, likeliest first; no prices. */
  static List<RepairOffer> offers(List<HypothesisPosterior> posterior) {
    List<RepairOffer> offers = new ArrayList<>();
    for (HypothesisPosterior belief : posterior) {
      if (belief.hypothesis().members().size() == 1
          && belief.probability() >= OFFERED
          && offers.size() < MOST) {
        Hypothesis.Member member = belief.hypothesis().members().get(0);
        offers.add(
            new RepairOffer(
                "put right: "
                    + member.fault().name().toLowerCase(Locale.ROOT)
                    + where(member, posterior),
                Optional.empty(),
                List.of(member.id()),
                0,
                0));
      }
    }
    return offers;
  }

  /** Where the same fault may be at several places, its place. */
  private static String where(Hypothesis.Member member, List<HypothesisPosterior> posterior) {
    long places =
        posterior.stream()
            .filter(belief -> belief.hypothesis().members().size() == 1)
            .map(belief -> belief.hypothesis().members().get(0))
            .filter(other -> other.fault().id().equals(member.fault().id()))
            .count();
    return places > 1 ? ", " + member.site().where() : "";
  }

  RepairOffer offer() {
    return offer;
  }

  /** The offer with the price and the time that stand there now. */
  RepairOffer priced() {
    return new RepairOffer(offer.name(), offer.part(), offer.cures(), price.get(), minutes.get());
  }

  double chance() {
    return chance;
  }

  /** Whether it is among what is tried. */
  BooleanProperty triedProperty() {
    return tried;
  }

  /** Of the material, in the currency of the list. */
  DoubleProperty priceProperty() {
    return price;
  }

  /** Of work [min]. */
  DoubleProperty minutesProperty() {
    return minutes;
  }
}
