package holdcurve.inference.answer;

import holdcurve.common.message.Message;
import holdcurve.physics.balance.FallReport;
import java.util.List;

/**
 * What a job's readings say about where the fuel goes.
 *
 * @param job title of the job
 * @param seed of the random numbers used
 * @param diagnosis the answer, and what to do
 * @param suspects every explanation considered, likeliest first; probabilities add up to 1
 * @param groups suspects that the tests so far cannot tell apart, likeliest group first
 * @param testPressure pressure at which leaks are stated [Pa gauge]
 * @param falls where the fall of each test went; empty where that wasn't asked
 * @param reasons what speaks for and against the likeliest suspects
 * @param notes what a reader should know: assumptions made, plugins that failed, doubts of the
 *     method; plain sentences
 */
public record Ranking(
    String job,
    long seed,
    Diagnosis diagnosis,
    List<Suspect> suspects,
    List<SuspectGroup> groups,
    double testPressure,
    List<FallReport> falls,
    List<Reasons> reasons,
    List<Message> notes) {
  /** Format and version that files with a ranking carry. */
  public static final String FORMAT = "holdcurve-ranking/1";

  public Ranking {
    suspects = List.copyOf(suspects);
    groups = List.copyOf(groups);
    falls = List.copyOf(falls);
    reasons = List.copyOf(reasons);
    notes = List.copyOf(notes);
  }

  /** A ranking that says neither where the fall went nor why. */
  public Ranking(
      String job,
      long seed,
      Verdict verdict,
      List<Suspect> suspects,
      List<SuspectGroup> groups,
      double testPressure,
      List<Message> notes) {
    this(
        job,
        seed,
        Diagnosis.of(
            verdict,
            suspects.stream()
                .filter(Suspect::isNone)
                .mapToDouble(Suspect::probability)
                .findFirst()
                .orElse(0)),
        suspects,
        groups,
        testPressure,
        List.of(),
        List.of(),
        notes);
  }

  /** The answer in one or two sentences. */
  public Verdict verdict() {
    return diagnosis.verdict();
  }

  /**
   * @throws IllegalArgumentException if there is none
   */
  public Suspect suspect(String id) {
    return suspects.stream()
        .filter(suspect -> suspect.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new IllegalArgumentException("no suspect '" + id + "'"));
  }
}
