package holdcurve.training;

import holdcurve.inference.answer.Suspect;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What a learner may do about the car once the fault is named: what puts it right, among what would
 * be money spent for nothing.
 *
 * @param options in an order that gives nothing away
 */
public record RepairChoice(List<Option> options) {
  private static final int OFFERED = 6;

  /**
   * Something to do.
   *
   * @param words as the fault says it
   * @param cures ids of the answers that it puts right
   */
  public record Option(String words, Set<String> cures) {
    public Option {
      cures = Set.copyOf(cures);
    }

    boolean curesAny(Collection<String> ids) {
      return ids.stream().anyMatch(cures::contains);
    }
  }

  public RepairChoice {
    options = List.copyOf(options);
  }

  /**
   * Repairs of what is wrong, of what was named, nothing at all, and others to make six. The same
   * car and the same answer give the same list.
   *
   * @param named id of the answer that the learner was surest of
   */
  public static RepairChoice of(TrainingSession session, String named) {
    List<String> wanted = new ArrayList<>(faults(session.car().truth()));
    wanted.addAll(faults(named));
    wanted.add(Suspect.NONE);
    List<Option> all = all(session);
    Random order = new Random(session.exercise().secret().seed());
    Collections.shuffle(all, order);
    List<Option> offered =
        all.stream().filter(option -> option.curesAny(wanted)).collect(Collectors.toList());
    all.stream()
        .filter(option -> !option.curesAny(wanted))
        .limit(Math.max(0, OFFERED - offered.size()))
        .forEach(offered::add);
    Collections.shuffle(offered, order);
    return new RepairChoice(offered);
  }

  /** One option a repair, however many faults it puts right. */
  private static List<Option> all(TrainingSession session) {
    Map<String, List<PossibleAnswers.Suspicion>> cures = new LinkedHashMap<>();
    session
        .answers()
        .forEach(one -> cures.computeIfAbsent(one.repair(), key -> new ArrayList<>()).add(one));
    return cures.entrySet().stream()
        .map(entry -> option(entry.getKey(), entry.getValue()))
        .collect(Collectors.toCollection(ArrayList::new));
  }

  private static Option option(String repair, List<PossibleAnswers.Suspicion> cured) {
    return new Option(
        places(cured) + repair,
        cured.stream().map(PossibleAnswers.Suspicion::id).collect(Collectors.toSet()));
  }

  /** Where it is done: the faults' own words say "it". */
  private static String places(List<PossibleAnswers.Suspicion> cured) {
    String places =
        cured.stream()
            .map(PossibleAnswers.Suspicion::where)
            .filter(where -> !where.isEmpty())
            .distinct()
            .collect(Collectors.joining(", "));
    return places.isEmpty()
        ? ""
        : places.substring(0, 1).toUpperCase(Locale.ROOT) + places.substring(1) + ": ";
  }

  static List<String> faults(String id) {
    return Arrays.asList(id.split("\\+"));
  }

  /** What the options chosen come to. */
  public RepairScore judge(Collection<Option> chosen, Debrief debrief) {
    return RepairScore.of(this, chosen, debrief);
  }
}
