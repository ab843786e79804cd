package holdcurve.ui.window.job;

import holdcurve.advice.check.CheckVerdict;
import holdcurve.advice.check.RepairCheck;
import holdcurve.inference.answer.Ranking;
import holdcurve.record.job.Job;
import java.util.EnumSet;
import java.util.Set;

/** How far the open job is on the way from a sinking needle to a circuit that holds. */
public final class JobPath {
  /** The steps of the way. */
  public enum Step {
    DESCRIBED("Described", "Circuit"),
    HELD("Held", "Hold tests"),
    JUDGED("Judged", "Suspects"),
    SETTLED("Settled", "Suspects"),
    REPAIRED("Repaired", "Repair check"),
    PROVED("Proved", "Repair check");

    private final String words;
    private final String page;

    Step(String words, String page) {
      this.words = words;
      this.page = page;
    }

    /** One word, for when it is done. */
    public String words() {
      return words;
    }

    /** Title of the page where it is done. */
    public String page() {
      return page;
    }
  }

  private JobPath() {}

  /** The steps that are done. An answer that is out of date is none. */
  public static Set<Step> done(OpenJobModel jobs) {
    Set<Step> done = EnumSet.noneOf(Step.class);
    Job job = jobs.jobProperty().get();
    if (job == null) {
      return done;
    }
    done.add(Step.DESCRIBED);
    if (JobEdits.lastRankable(job).isPresent()) {
      done.add(Step.HELD);
    }
    if (!job.upkeep().repairs().isEmpty()) {
      done.add(Step.REPAIRED);
    }
    Ranking ranking = jobs.ranking().resultProperty().get();
    if (ranking != null && !jobs.ranking().outdatedProperty().get()) {
      done.add(Step.JUDGED);
      if (isSettled(ranking)) {
        done.add(Step.SETTLED);
      }
    }
    if (isProved(jobs)) {
      done.add(Step.PROVED);
    }
    return done;
  }

  /** One cause is named, or none; where several can't be told apart, something is left to test. */
  private static boolean isSettled(Ranking ranking) {
    return switch (ranking.verdict().kind()) {
      case SOUND -> true;
      case LEAK, FAULT -> isAlone(ranking);
      case OPEN, UNEXPLAINED -> false;
    };
  }

  private static boolean isAlone(Ranking ranking) {
    String first = ranking.suspects().get(0).id();
    return ranking.groups().stream().noneMatch(group -> group.suspects().contains(first));
  }

  private static boolean isProved(OpenJobModel jobs) {
    RepairCheck check = jobs.check().valueProperty().get();
    return check != null
        && !jobs.check().outdatedProperty().get()
        && jobs.unproved().isEmpty()
        && check.verdict().kind() == CheckVerdict.Kind.HOLDS;
  }

  /** How far it is, in a few words. */
  public static String state(OpenJobModel jobs) {
    Set<Step> done = done(jobs);
    if (done.contains(Step.PROVED)) {
      return "holds, proved";
    }
    if (jobs.unproved().isPresent()) {
      return "repaired, hold again";
    }
    if (done.contains(Step.JUDGED)) {
      return switch (jobs.ranking().resultProperty().get().verdict().kind()) {
        case LEAK -> "leaking";
        case FAULT -> "a fault, no leak";
        case SOUND -> "sound";
        case OPEN -> "not settled";
        case UNEXPLAINED -> "not explained";
      };
    }
    return done.contains(Step.HELD) ? "held, not ranked" : "nothing held yet";
  }
}
