package holdcurve.casebook;

import holdcurve.advice.check.CheckVerdict;
import holdcurve.advice.check.RepairCheck;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.answer.Verdict;
import java.util.Locale;
import java.util.Optional;

/**
 * What was last worked out about a job, as far as a list shows it.
 *
 * @param kind of the verdict
 * @param alone whether one cause is named, or none: no group that the tests can't separate
 * @param suspect name of the likeliest fault
 * @param chance that it is the one; of a sound circuit, that nothing is wrong [-]
 * @param check what the check of the last holds says; empty where it was only ranked
 */
public record KnownAnswer(
    Verdict.Kind kind,
    boolean alone,
    String suspect,
    double chance,
    Optional<CheckVerdict.Kind> check) {
  /** Of a ranking alone. */
  public static KnownAnswer of(Ranking ranking) {
    return of(ranking, Optional.empty());
  }

  /** Of a check, which ranks too. */
  public static KnownAnswer of(RepairCheck check) {
    return of(check.ranking(), Optional.of(check.verdict().kind()));
  }

  private static KnownAnswer of(Ranking ranking, Optional<CheckVerdict.Kind> check) {
    Verdict.Kind kind = ranking.verdict().kind();
    Optional<Suspect> first = ranking.suspects().stream().filter(s -> !s.isNone()).findFirst();
    return new KnownAnswer(
        kind,
        kind == Verdict.Kind.SOUND || isAlone(ranking),
        first.map(Suspect::name).orElse(""),
        kind == Verdict.Kind.SOUND
            ? ranking.diagnosis().sound()
            : first.map(Suspect::probability).orElse(0.0),
        check);
  }

  private static boolean isAlone(Ranking ranking) {
    String first = ranking.suspects().get(0).id();
    return ranking.groups().stream().noneMatch(group -> group.suspects().contains(first));
  }

  /** One cause is named, or none; where several can't be separated, something is left to test. */
  public boolean isSettled() {
    return switch (kind) {
      case SOUND -> true;
      case LEAK, FAULT -> alone;
      case OPEN, UNEXPLAINED -> false;
    };
  }

  /** The verdict in a few words, such as "Injector tip leaks, 72 %". */
  public String words() {
    return switch (kind) {
      case SOUND -> String.format(Locale.ROOT, "No fault found, %.0f %%", 100 * chance);
      case LEAK, FAULT ->
          String.format(
              Locale.ROOT, "%s%s, %.0f %%", alone ? "" : "Likeliest: ", suspect, 100 * chance);
      case OPEN -> String.format(Locale.ROOT, "Not settled: %s, %.0f %%", suspect, 100 * chance);
      case UNEXPLAINED -> "Not explained";
    };
  }
}
