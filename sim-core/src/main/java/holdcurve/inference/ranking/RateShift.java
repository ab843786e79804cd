package holdcurve.inference.ranking;

import holdcurve.common.message.Message;
import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.LeakFault;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.prior.FaultPriors;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/**
 * What fault rates other than the shipped ones did to an answer. The likelihoods stay as they are,
 * so the shipped answer follows from the ratios of the priors; nothing is ranked twice.
 */
public final class RateShift {
  /** How the note begins. */
  private static final String OWN = "Own fault rates";

  private final Map<String, Double> ratios = new HashMap<>();

  /**
   * @param used rates of the ranking
   * @param changed fault id → how many times likelier than usual the job calls it
   */
  RateShift(FaultCatalogue catalogue, FaultPriors used, Map<String, Double> changed) {
    FaultPriors shipped = FaultPriors.shipped();
    if (used.rates().equals(shipped.rates())) {
      return;
    }
    for (LeakFault fault : catalogue.faults()) {
      double times = changed.getOrDefault(fault.id(), 1.0);
      double before = shipped.odds(fault.id(), fault.prevalence(), times);
      double now = used.odds(fault.id(), fault.prevalence(), times);
      ratios.put(fault.id(), now == 0 ? 1 : before / now);
    }
  }

  /**
   * What the shipped rates would have said, in one or two sentences; empty where they were used.
   *
   * @param suspects by the rates used, likeliest first
   */
  Optional<Message> note(List<Suspect> suspects) {
    if (ratios.isEmpty()) {
      return Optional.empty();
    }
    double all = suspects.stream().mapToDouble(this::weight).sum();
    Suspect first = suspects.get(0);
    Suspect other = suspects.stream().reduce((a, b) -> weight(b) > weight(a) ? b : a).orElse(first);
    long own = Math.round(100 * first.probability());
    long shipped = Math.round(100 * weight(first) / all);
    String words;
    if (!other.id().equals(first.id())) {
      words =
          String.format(
              Locale.ROOT,
              OWN + " changed the order. With the shipped rates, '%s' comes first with" + " %d %%.",
              other.name(),
              Math.round(100 * weight(other) / all));
    } else if (own == shipped) {
      words = OWN + " were used. The shipped ones give the same answer.";
    } else {
      words =
          String.format(
              Locale.ROOT,
              OWN + " were used. With the shipped ones, '%s' has %d %% instead of %d %%.",
              first.name(),
              shipped,
              own);
    }
    return Optional.of(Message.plain(words));
  }

  /** That note of a ranking; empty where the shipped rates were used. */
  public static Optional<Message> of(Ranking ranking) {
    return ranking.notes().stream().filter(note -> note.toString().startsWith(OWN)).findFirst();
  }

  /** Chance by the shipped rates, up to a common factor [-]. */
  private double weight(Suspect suspect) {
    double weight = suspect.probability();
    if (!suspect.isNone()) {
      for (String member : suspect.id().split("\\+")) {
        weight *= ratios.getOrDefault(member.substring(0, member.indexOf('@')), 1.0);
      }
    }
    return weight;
  }
}
