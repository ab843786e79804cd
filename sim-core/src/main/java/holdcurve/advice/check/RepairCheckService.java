package holdcurve.advice.check;

import holdcurve.common.input.NoAnswerException;
import holdcurve.common.message.Message;
import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.inference.answer.HoldCurve;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.answer.Verdict;
import holdcurve.inference.posterior.HypothesisPosterior;
import holdcurve.inference.posterior.Posterior;
import holdcurve.inference.posterior.PosteriorDraw;
import holdcurve.inference.prior.FaultPriors;
import holdcurve.inference.ranking.RankingService;
import holdcurve.record.job.FindingsInTime;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.job.Repair;
import holdcurve.record.job.Session;
import holdcurve.record.job.Timeline;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Ranks the checked tests by themselves, and sets them beside what a sound circuit of this
 * description should show, and beside what this very circuit, learnt from its last session before,
 * should show without its faults.
 */
public final class RepairCheckService implements RepairChecker {
  /** Ways a circuit may be that a band is made of. */
  private static final int WAYS = 100;

  private final FaultCatalogue catalogue;
  private final RankingService rankings;

  /**
   * @param catalogue of the faults the rankings know
   */
  public RepairCheckService(RankingService rankings, FaultCatalogue catalogue) {
    this.catalogue = catalogue;
    this.rankings = rankings;
  }

  /** With the shipped priors. */
  public static RepairCheckService of(FaultCatalogue catalogue) {
    return of(catalogue, FaultPriors.shipped());
  }

  /** With fault rates of any kind. */
  public static RepairCheckService of(FaultCatalogue catalogue, FaultPriors priors) {
    return new RepairCheckService(new RankingService(catalogue, priors), catalogue);
  }

  @Override
  public RepairCheck check(Job job, Optional<String> testId, long seed, Progress progress) {
    if (testId.isEmpty()) {
      requireProof(job);
    }
    Timeline timeline = testId.map(id -> Timeline.of(job, id)).orElseGet(() -> Timeline.of(job));
    List<HoldTest> tests = timeline.checked().tests();
    boolean history = !timeline.earlier().isEmpty();
    double share = history ? 0.5 : 1;
    List<Message> notes = new ArrayList<>();
    Optional<Posterior> before =
        history
            ? Optional.of(before(job, timeline, seed, new PartOfProgress(progress, 0, 1 - share)))
            : Optional.empty();
    List<PosteriorDraw> learnt =
        before.map(posterior -> learnt(posterior, notes)).orElse(List.of());
    Ranking ranking =
        rankings.rank(checked(job, timeline), seed, new PartOfProgress(progress, 1 - share, share));
    notes.addAll(ranking.notes());
    if (history) {
      notes.addAll(Message.plain(new FindingsInTime(job, timeline).notes()));
    }
    LeakMixture leaks = LeakMixture.of(ranking);
    CheckVerdict verdict = CheckVerdict.of(ranking.diagnosis());
    return new RepairCheck(
        job.title(),
        timeline,
        verdict,
        ranking.suspect(Suspect.NONE).probability(),
        leaks.leak(),
        job.upkeep().pass(),
        ranking.diagnosis().marks(),
        bands(PosteriorDraw.before(job.circuit(), job.gauge(), seed, WAYS), tests, seed),
        learnt.isEmpty() ? List.of() : bands(learnt, tests, seed),
        ranking,
        before.map(Posterior::ranking),
        verdict.kind() == CheckVerdict.Kind.FAULTY ? places(job, ranking) : List.of(),
        notes);
  }

  /** Holds from before a repair say nothing about it. */
  private static void requireProof(Job job) {
    Optional<Repair> unproved = Timeline.unproved(job);
    if (unproved.isPresent()) {
      throw new NoAnswerException(Timeline.holdAgain(unproved.get()));
    }
  }

  private List<String> places(Job job, Ranking ranking) {
    return ranking.suspects().stream()
        .filter(suspect -> !suspect.isNone())
        .findFirst()
        .map(suspect -> List.copyOf(catalogue.parts(job.circuit(), suspect.id())))
        .orElse(List.of());
  }

  private static Job checked(Job job, Timeline timeline) {
    return job.withTests(timeline.checked().tests())
        .withFindings(new FindingsInTime(job, timeline).checked());
  }

  private Posterior before(Job job, Timeline timeline, long seed, Progress progress) {
    Session last = timeline.earlier().get(timeline.earlier().size() - 1);
    Job then = job.withTests(last.tests()).withFindings(new FindingsInTime(job, timeline).before());
    return rankings.believe(then, seed, WAYS, progress);
  }

  /** Ways this circuit may be after its last session before, as often as they are believed. */
  private static List<PosteriorDraw> learnt(Posterior posterior, List<Message> notes) {
    if (posterior.ranking().verdict().kind() == Verdict.Kind.UNEXPLAINED) {
      notes.add(
          Message.plain(
              "None of the listed faults explains the tests before, so nothing was learnt from"
                  + " them."));
      return List.of();
    }
    List<PosteriorDraw> ways = new ArrayList<>();
    for (HypothesisPosterior belief : posterior.posterior()) {
      int count = (int) Math.round(WAYS * belief.probability());
      ways.addAll(
          belief.posteriorDraws().subList(0, Math.min(count, belief.posteriorDraws().size())));
    }
    return ways;
  }

  private static List<HoldCurve> bands(List<PosteriorDraw> ways, List<HoldTest> tests, long seed) {
    return tests.stream().map(test -> ExpectedHold.of(ways, test, seed)).toList();
  }

  /** One part of a longer work. */
  private record PartOfProgress(Progress whole, double from, double share) implements Progress {
    @Override
    public void at(double done, String what) {
      whole.at(from + share * done, what);
    }

    @Override
    public boolean isCancelled() {
      return whole.isCancelled();
    }
  }
}
