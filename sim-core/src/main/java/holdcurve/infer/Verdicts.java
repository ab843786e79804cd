package holdcurve.infer;

import holdcurve.infer.Verdict.Kind;
import holdcurve.saying.Saying;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Puts the answer in one sentence, and claims no more than the readings earn. */
final class Verdicts {
  /** Probability from which a circuit is called sound [-]. */
  private static final double SOUND = 0.8;

  /** Probability from which something is said to leak: an accusation costs a part [-]. */
  private static final double ACCUSED = 0.9;

  private static final String LEAK_AT = "leak at ";

  private final List<Suspect> suspects;
  private final List<SuspectGroup> groups;
  private final Misfit misfit;
  private final Saying soundFall;

  /**
   * @param soundFall one or more sentences on the fall of a circuit found sound
   */
  Verdicts(List<Suspect> suspects, List<SuspectGroup> groups, Misfit misfit, Saying soundFall) {
    this.soundFall = soundFall;
    this.suspects = suspects;
    this.groups = groups;
    this.misfit = misfit;
  }

  Verdict verdict() {
    if (misfit.where().isPresent()) {
      return new Verdict(
          Kind.UNEXPLAINED,
          "None of the listed faults explains this: "
              + misfit.where().get()
              + " departs from every curve. Check the circuit description, the clamps and the"
              + " log.");
    }
    double sound = probability(Suspect.NONE);
    if (sound >= SOUND) {
      return new Verdict(
          Kind.SOUND,
          Saying.of("It holds as a sound circuit does (%s). %s", Chance.words(sound), soundFall));
    }
    return faultVerdict(sound);
  }

  private Verdict faultVerdict(double sound) {
    Suspect first = suspects.get(0);
    Optional<SuspectGroup> group = leadingGroup();
    if (!first.isNone() && first.probability() >= ACCUSED) {
      return new Verdict(
          kind(first),
          Saying.of("%s (%s)%s.", first.name(), Chance.words(first.probability()), sized(first)));
    }
    if (group.isPresent() && group.get().probability() >= ACCUSED) {
      return new Verdict(
          kind(first),
          (leaks(first) ? "It leaks, and the source is" : "It doesn't leak, but what is wrong is")
              + " one of "
              + group.get().suspects().size()
              + " that these tests can't tell apart ("
              + Chance.words(group.get().probability())
              + " together); likeliest: "
              + first.name().toLowerCase(Locale.ROOT)
              + " ("
              + Chance.words(first.probability())
              + ").");
    }
    if (1 - sound >= ACCUSED) {
      return new Verdict(
          Kind.OPEN,
          (leaks(first) ? "Something leaks (" : "Something is wrong (")
              + Chance.words(1 - sound)
              + "), but these tests don't settle "
              + (leaks(first) ? "where" : "what")
              + leading(first)
              + ".");
    }
    return new Verdict(
        Kind.OPEN,
        "Not settled: it may be sound ("
            + Chance.words(sound)
            + ") or "
            + (first.isNone() || leaks(first) ? "leak a little (" : "not (")
            + Chance.words(1 - sound)
            + ")"
            + (first.isNone() || leaks(first) ? "" : leading(first))
            + ". Hold longer, or clamp and hold again.");
  }

  private static String leading(Suspect first) {
    return ": "
        + first.name().toLowerCase(Locale.ROOT)
        + " leads with "
        + Chance.words(first.probability());
  }

  private static boolean leaks(Suspect suspect) {
    return suspect.leak().isPresent();
  }

  private static Kind kind(Suspect suspect) {
    return leaks(suspect) ? Kind.LEAK : Kind.FAULT;
  }

  private Optional<SuspectGroup> leadingGroup() {
    return groups.stream().max((a, b) -> Double.compare(a.probability(), b.probability()));
  }

  private double probability(String id) {
    return suspects.stream()
        .filter(s -> s.id().equals(id))
        .mapToDouble(Suspect::probability)
        .findFirst()
        .orElse(0);
  }

  /** The name of a leak's size says at which pressure it is meant: "leak at 2 bar". */
  private static Saying sized(Suspect suspect) {
    return suspect
        .size()
        .filter(size -> size.isLeak() && size.name().startsWith(LEAK_AT))
        .map(
            size ->
                Saying.of(
                    ", about %.2g mL/min %s",
                    size.value().middle() * 60e6,
                    Saying.stated(size.name().substring(LEAK_AT.length() - 3))))
        .orElse(Saying.plain(""));
  }
}
