package holdcurve.casebook;

import holdcurve.common.input.NoAnswerException;
import holdcurve.common.message.Message;
import holdcurve.common.text.Titles;
import holdcurve.common.work.Progress;
import holdcurve.inference.prior.LearnedUnknowns;
import holdcurve.inference.prior.LearnedUnknowns.Unknown;
import holdcurve.inference.prior.UnknownPriors;
import holdcurve.inference.ranking.RankingService;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.PartKind;
import holdcurve.physics.circuit.Property;
import holdcurve.physics.part.Hose;
import holdcurve.physics.part.Regulator;
import holdcurve.record.job.CurrentTests;
import holdcurve.record.job.Job;
import holdcurve.record.job.RankableTests;
import holdcurve.record.job.Repair;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * What earlier jobs of a car taught, for its next one: how far its hoses stretch and creep, and its
 * set pressure. Parts that were renewed or are described otherwise start anew.
 */
public final class SameCar {
  private static final Set<Unknown> OF_HOSES =
      EnumSet.of(Unknown.COMPLIANCE, Unknown.CREEP, Unknown.CREEP_TIME, Unknown.QUICK_CREEP);
  private static final long SEED = 1;

  private SameCar() {}

  /**
   * Ranks the next job from there, and says so in its notes.
   *
   * @param usual ranks a car that was never here
   * @param earlier jobs of the same car, oldest first
   * @throws java.util.concurrent.CancellationException if {@code progress} says so
   */
  public static RankingService ranking(
      RankingService usual, List<Job> earlier, Job next, Progress progress) {
    LearnedUnknowns learned = LearnedUnknowns.NONE;
    List<Message> notes = new ArrayList<>();
    for (int i = 0; i < earlier.size(); i++) {
      Job job = RankableTests.of(earlier.get(i));
      Job later = i + 1 < earlier.size() ? earlier.get(i + 1) : next;
      if (job.tests().isEmpty()) {
        continue;
      }
      try {
        learned =
            usual
                .verdictOnly()
                .after(learned, List.of())
                .learn(CurrentTests.of(job), SEED, progress)
                .later(UnknownPriors.usual().drift());
        Set<Unknown> renewed = renewed(job, later);
        learned = learned.without(renewed);
        notes.add(Message.plain(words(job, renewed, learned)));
      } catch (NoAnswerException e) {
        notes.add(
            Message.plain(
                "'" + Titles.shown(job.title()) + "' can't be ranked and taught nothing."));
      }
    }
    return notes.isEmpty() ? usual : usual.after(learned, notes);
  }

  private static String words(Job job, Set<Unknown> renewed, LearnedUnknowns learned) {
    String title = "'" + Titles.shown(job.title()) + "'";
    if (learned.normals().isEmpty()) {
      return title
          + " taught nothing: not explained, or its parts were renewed or described otherwise.";
    }
    String what =
        renewed.isEmpty()
            ? "How far the hoses give and the set pressure start"
            : renewed.contains(Unknown.SET_PRESSURE)
                ? "How far the hoses give starts"
                : "The set pressure starts";
    return what + " from what the same car showed in " + title + ".";
  }

  /** What an earlier job says nothing of any more. */
  static Set<Unknown> renewed(Job earlier, Job later) {
    Set<Unknown> renewed = EnumSet.noneOf(Unknown.class);
    List<Repair> repairs = new ArrayList<>(later.upkeep().repairs());
    RankableTests.unproved(earlier).ifPresent(repairs::add);
    for (Repair repair : repairs) {
      if (repair.part().isEmpty()) {
        renewed.addAll(EnumSet.allOf(Unknown.class));
      }
      if (isOf(Hose.KIND, repair, earlier) || isOf(Hose.KIND, repair, later)) {
        renewed.addAll(OF_HOSES);
      }
      if (isOf(Regulator.KIND, repair, earlier) || isOf(Regulator.KIND, repair, later)) {
        renewed.add(Unknown.SET_PRESSURE);
      }
    }
    if (!sameParts(earlier, later, Hose.KIND)) {
      renewed.addAll(OF_HOSES);
    }
    if (!sameParts(earlier, later, Regulator.KIND)) {
      renewed.add(Unknown.SET_PRESSURE);
    }
    return renewed;
  }

  private static boolean isOf(PartKind kind, Repair repair, Job job) {
    return job.circuit().partsOf(kind).stream().anyMatch(p -> p.id().equals(repair.part()));
  }

  private static boolean sameParts(Job earlier, Job later, PartKind kind) {
    List<Part> some = earlier.circuit().partsOf(kind);
    List<Part> others = later.circuit().partsOf(kind);
    if (!some.equals(others)) {
      return false;
    }
    for (int i = 0; i < some.size(); i++) {
      for (Property property : kind.properties()) {
        if (some.get(i).states(property) != others.get(i).states(property)) {
          return false;
        }
      }
    }
    return true;
  }
}
