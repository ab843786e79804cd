package holdcurve.advice.plan;

import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.hypothesis.Identifiability;
import holdcurve.inference.posterior.HypothesisPosterior;
import holdcurve.inference.posterior.Posterior;
import holdcurve.record.job.HoldTest;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** What a clamping divides that no test so far has divided, read off the network. */
final class Separation {
  /** Suspects that together have this share of the suspicion count as leading [-]. */
  private static final double LEADING = 0.9;

  private static final int MOST = 6;

  /** Above this a circuit counts as sound, and no suspect leads [-]. */
  private static final double SETTLED = 0.85;

  /** Below this a test tells next to nothing [bit]. */
  static final double NOTHING = 0.05;

  private final Identifiability alike;
  private final Set<Set<String>> done;
  private final List<Hypothesis> leaders = new ArrayList<>();
  private final double sound;

  Separation(Posterior posterior) {
    alike = new Identifiability(posterior.job());
    done =
        posterior.job().tests().stream()
            .map(HoldTest::clamped)
            .collect(Collectors.toCollection(LinkedHashSet::new));
    sound =
        posterior.posterior().stream()
            .filter(b -> b.hypothesis().members().isEmpty())
            .mapToDouble(HypothesisPosterior::probability)
            .sum();
    List<HypothesisPosterior> singles =
        posterior.posterior().stream().filter(b -> b.hypothesis().members().size() == 1).toList();
    double all = singles.stream().mapToDouble(HypothesisPosterior::probability).sum();
    double sum = 0;
    for (HypothesisPosterior one : singles) {
      if (leaders.size() < MOST && sum < LEADING * all) {
        leaders.add(one.hypothesis());
        sum += one.probability();
      }
    }
  }

  /** Suspects that lead, likeliest first. */
  List<Hypothesis> leaders() {
    return leaders;
  }

  /**
   * Why a hold with these clamps tells what it tells, or why nothing.
   *
   * @param plain whether the clamps are all that may set it apart from the holds before
   * @param branches its outcomes, with what would then be believed
   */
  String reason(
      Set<String> clamped, boolean plain, Information information, List<Branch> branches) {
    if (leaders.isEmpty()) {
      return "No cause is left to separate.";
    }
    String repeated = plain && done.contains(clamped) ? "It was done already. " : "";
    if (information.bits() < NOTHING && sound >= SETTLED) {
      return repeated + settled();
    }
    if (information.bits() < NOTHING) {
      Set<Set<String>> with = new LinkedHashSet<>(done);
      with.add(clamped);
      boolean divides = groups(with).size() > groups(done).size();
      return repeated
          + (divides
              ? "It separates only causes that are hardly in question now."
              : alikeWords(clamped));
    }
    String apart = apart(branches);
    return repeated + (apart.isEmpty() ? shape(clamped) : apart);
  }

  /** Sets of leaders that go with different outcomes; empty where all go with one. */
  private String apart(List<Branch> branches) {
    List<String> sets = new ArrayList<>();
    for (Branch branch : branches) {
      List<Hypothesis> own =
          leaders.stream().filter(h -> branches.indexOf(branch) == likeliest(branches, h)).toList();
      if (!own.isEmpty()) {
        sets.add(firstOf(own));
      }
    }
    return sets.size() < 2 ? "" : "It separates " + sets.get(0) + " from " + sets.get(1) + ".";
  }

  /** The branch that a hypothesis mostly leads to. */
  private static int likeliest(List<Branch> branches, Hypothesis hypothesis) {
    int best = 0;
    double most = -1;
    for (int o = 0; o < branches.size(); o++) {
      double joint =
          branches.get(o).probability()
              * branches.get(o).believed().stream()
                  .filter(share -> share.id().equals(hypothesis.id()))
                  .mapToDouble(Branch.Share::probability)
                  .sum();
      if (joint > most) {
        most = joint;
        best = o;
      }
    }
    return best;
  }

  /**
   * Why a look has nothing to show.
   *
   * @param concerned whether one of the leading suspects would show there
   */
  String nothingToSee(boolean concerned) {
    if (sound >= SETTLED) {
      return settled();
    }
    return concerned
        ? "What it would show is nearly known without it."
        : "It would show none of the likely causes.";
  }

  private String settled() {
    return String.format(
        Locale.ROOT,
        "No fault is %.0f %% likely already, so little is left to learn.",
        Math.min(99, 100 * sound));
  }

  private String alikeWords(Set<String> clamped) {
    if (leaders.size() == 1) {
      return "Only one cause is likely; it can only confirm that.";
    }
    return clamped.isEmpty()
        ? "Without a clamp every likely cause makes the needle fall the same way."
        : "With this clamp, too, the likely causes look alike.";
  }

  private String shape(Set<String> clamped) {
    return sound > 0.05
        ? "It cannot show where it leaks, only whether it leaks."
        : alikeWords(clamped) + " How fast it falls tells a little.";
  }

  /** Leading suspects, those together that drain alike under all these clampings. */
  private List<List<Hypothesis>> groups(Set<Set<String>> clampings) {
    List<List<Hypothesis>> groups = new ArrayList<>();
    for (Hypothesis one : leaders) {
      groups.stream()
          .filter(group -> alike(one, group.get(0), clampings))
          .findFirst()
          .ifPresentOrElse(
              group -> group.add(one), () -> groups.add(new ArrayList<>(List.of(one))));
    }
    return groups;
  }

  private boolean alike(Hypothesis a, Hypothesis b, Set<Set<String>> clampings) {
    return clampings.stream()
        .allMatch(c -> alike.drainAlike(a.members().get(0), b.members().get(0), c));
  }

  /** The first in lower case, and how many more. */
  static String firstOf(List<Hypothesis> some) {
    String first = "\u201c" + some.get(0).name().toLowerCase(Locale.ROOT) + "\u201d";
    return some.size() == 1 ? first : first + " and " + (some.size() - 1) + " more";
  }
}
