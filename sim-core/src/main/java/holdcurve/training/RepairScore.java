package holdcurve.training;

import holdcurve.inference.answer.Suspect;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;

/**
 * What the repairs that a learner chose are worth.
 *
 * @param points out of {@value #MOST}
 * @param helped repairs that put something right
 * @param equivalent repairs of an equivalent fault: no step of the exercise tells it from the truth
 * @param needless repairs that change nothing
 * @param missing repairs that would have been needed
 */
public record RepairScore(
    double points,
    List<String> helped,
    List<String> equivalent,
    List<String> needless,
    List<String> missing) {
  /** Points for putting everything right and nothing else. */
  public static final int MOST = 10;

  /** Points that a needless repair costs: half of what a fault is worth, as parts cost money. */
  private static final double NEEDLESS = 5;

  public RepairScore {
    helped = List.copyOf(helped);
    equivalent = List.copyOf(equivalent);
    needless = List.copyOf(needless);
    missing = List.copyOf(missing);
  }

  /**
   * Repairs of the truth count in full; those of an answer that could not be told from it count
   * too, since nobody could have known better. Each needless one takes five points.
   */
  static RepairScore of(
      RepairChoice choice, Collection<RepairChoice.Option> chosen, Debrief debrief) {
    List<String> faults = RepairChoice.faults(debrief.truth().id());
    Set<String> right = debrief.right();
    List<String> helped = new ArrayList<>();
    List<String> equivalents = new ArrayList<>();
    List<String> needless = new ArrayList<>();
    for (RepairChoice.Option option : chosen) {
      boolean cures = option.curesAny(faults);
      boolean isEquivalent = !cures && option.curesAny(right);
      boolean harmless = option.cures().equals(Set.of(Suspect.NONE)) && chosen.size() == 1;
      if (cures) {
        helped.add(option.words());
      } else if (isEquivalent) {
        equivalents.add(option.words());
      } else if (!harmless) {
        needless.add(option.words());
      }
    }
    List<String> missing =
        choice.options().stream()
            .filter(option -> option.curesAny(faults) && !chosen.contains(option))
            .map(RepairChoice.Option::words)
            .toList();
    double share = share(helped.size(), missing.size(), !equivalents.isEmpty());
    double points = Math.max(0, MOST * share - NEEDLESS * needless.size());
    return new RepairScore(points, helped, equivalents, needless, missing);
  }

  private static double share(int helped, int missing, boolean anyEquivalent) {
    return anyEquivalent && helped == 0 ? 1 : (double) helped / (helped + missing);
  }

  /** Whether the car holds afterwards. */
  public boolean isCured() {
    return missing.isEmpty();
  }
}
