package holdcurve.casebook;

import holdcurve.advice.check.CheckVerdict;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** How far a job is on the way from a sinking needle to a circuit that holds. */
public final class JobPath {
  /** The steps of the way. */
  public enum Step {
    DESCRIBED("Described"),
    HELD("Held"),
    JUDGED("Judged"),
    SETTLED("Settled"),
    REPAIRED("Repaired"),
    PROVED("Proved");

    private final String words;

    Step(String words) {
      this.words = words;
    }

    /** One word, for when it is done. */
    public String words() {
      return words;
    }
  }

  private JobPath() {}

  /**
   * The steps that are done.
   *
   * @param answer what is known of it and not out of date
   */
  public static Set<Step> done(JobFacts job, Optional<KnownAnswer> answer) {
    Set<Step> done = EnumSet.of(Step.DESCRIBED);
    if (job.held()) {
      done.add(Step.HELD);
    }
    if (job.repaired()) {
      done.add(Step.REPAIRED);
    }
    if (answer.isPresent()) {
      done.add(Step.JUDGED);
    }
    if (answer.filter(KnownAnswer::isSettled).isPresent()) {
      done.add(Step.SETTLED);
    }
    if (isProved(job, answer)) {
      done.add(Step.PROVED);
    }
    return done;
  }

  private static boolean isProved(JobFacts job, Optional<KnownAnswer> answer) {
    return !job.unproved()
        && answer.flatMap(KnownAnswer::check).equals(Optional.of(CheckVerdict.Kind.HOLDS));
  }

  /** How far it is. */
  public static JobState state(JobFacts job, Optional<KnownAnswer> answer) {
    if (isProved(job, answer)) {
      return JobState.PROVED;
    }
    if (job.unproved()) {
      return JobState.REPAIRED;
    }
    if (answer.isEmpty()) {
      return job.held() ? JobState.HELD : JobState.EMPTY;
    }
    return switch (answer.get().kind()) {
      case LEAK -> JobState.LEAKING;
      case FAULT -> JobState.FAULTY;
      case SOUND -> JobState.SOUND;
      case OPEN -> JobState.OPEN;
      case UNEXPLAINED -> JobState.UNEXPLAINED;
    };
  }
}
