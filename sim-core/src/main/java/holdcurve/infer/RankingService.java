package holdcurve.infer;

import holdcurve.check.Cancellation;
import holdcurve.check.NoAnswerException;
import holdcurve.fault.FaultCatalogue;
import holdcurve.job.Job;
import holdcurve.job.Timeline;
import holdcurve.saying.Saying;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Ranks by Bayesian model evidence: each hypothesis is fitted to all tests at once, and judged by
 * how well it foretold them.
 */
public final class RankingService implements Ranker {
  /** Single faults whose company is considered, likeliest first. */
  private static final int LEADERS = 2;

  /** A leader that is this far behind the likeliest explanation is none [nat]. */
  private static final double LEADER_MARGIN = 3;

  private final FaultCatalogue catalogue;
  private final FaultPriors priors;
  private final UnknownPriors unknowns = UnknownPriors.usual();
  private final int threads;
  private final boolean curves;

  /** Uses the shipped priors and every core. */
  public RankingService(FaultCatalogue catalogue) {
    this(catalogue, FaultPriors.shipped(), Runtime.getRuntime().availableProcessors());
  }

  /**
   * @param threads how many hypotheses are worked on at once; the answer doesn't depend on it
   */
  public RankingService(FaultCatalogue catalogue, FaultPriors priors, int threads) {
    this(catalogue, priors, threads, true);
  }

  private RankingService(
      FaultCatalogue catalogue, FaultPriors priors, int threads, boolean curves) {
    this.catalogue = catalogue;
    this.priors = priors;
    this.threads = threads;
    this.curves = curves;
  }

  /** The same but for suspects' expected curves, which cost a tenth: for whoever draws none. */
  public RankingService withoutCurves() {
    return new RankingService(catalogue, priors, threads, false);
  }

  @Override
  public Ranking rank(Job job, long seed, Progress progress) {
    List<String> problems = new ArrayList<>();
    try (Workers workers = new Workers(threads, progress, problems)) {
      return report(job, seed, workers, problems).ranking(curves, workers);
    }
  }

  @Override
  public Beliefs believe(Job job, long seed, int draws, Progress progress) {
    List<String> problems = new ArrayList<>();
    try (Workers workers = new Workers(threads, progress, problems)) {
      RankingReport report = report(job, seed, workers, problems);
      return new Beliefs(
          job, report.ranking(curves, workers), report.beliefs(unknowns, draws, workers));
    }
  }

  private RankingReport report(Job job, long seed, Workers workers, List<String> problems) {
    List<Saying> notes = new ArrayList<>(job.understood());
    Answerable.check(job, notes);
    PriorNames.check(job, catalogue);
    problems.addAll(catalogue.problems());
    Cancellation.check();
    JobModel data = JobModel.of(job);
    FaultCatalogue spokenFor = SpokenFor.among(catalogue, data, unknowns);
    List<Hypothesis> all =
        Hypotheses.of(
            job.circuit(), spokenFor, priors, job.priors(), Timeline.isAfterRepair(job), problems);
    Alikeness alike = new Alikeness(job);
    Judge judge = new Judge(data, unknowns, seed, workers);
    List<Hypothesis> first = all.stream().filter(h -> h.members().size() < 2).toList();
    List<Fitted> fitted =
        new ArrayList<>(judge.likeTwins(judge.fitSingles(first, 0, 0.5), alike, 0.5));
    List<Hypothesis> pairs = plausiblePairs(all, fitted, alike);
    List<Fitted> together = judge.fitPairs(pairs, List.copyOf(fitted), best(fitted), 0.5, 0.9);
    fitted.addAll(judge.likeTwins(together, alike, 0.9));
    List<Judged> judged = judge.judged(fitted, 0.9, 0.9);
    if (judged.isEmpty()) {
      throw new NoAnswerException(
          "%s: no explanation could be simulated. %s %s"
              .formatted(
                  job.title(), String.join(" ", Saying.inBar(notes)), String.join(" ", problems))
              .strip());
    }
    catalogue.failures().stream().filter(f -> !problems.contains(f)).forEach(problems::add);
    notes.addAll(Saying.plain(problems));
    List<Judged> averaged = new UnknownLaws(data, alike).averaged(judged);
    return new RankingReport(job, data, alike, averaged, seed, notes);
  }

  /** Pairs with a leading suspect, of faults that don't drain the same fuel the same way. */
  private static List<Hypothesis> plausiblePairs(
      List<Hypothesis> all, List<Fitted> singles, Alikeness alike) {
    double best = best(singles);
    Set<String> simulated =
        singles.stream().map(j -> j.hypothesis().id()).collect(Collectors.toSet());
    List<String> leaders =
        singles.stream()
            .filter(j -> j.hypothesis().members().size() == 1)
            .filter(j -> j.logPosterior() > best - LEADER_MARGIN)
            .sorted(Comparator.comparingDouble(Fitted::logPosterior).reversed())
            .limit(LEADERS)
            .map(j -> j.hypothesis().id())
            .toList();
    return all.stream()
        .filter(h -> h.members().size() == 2)
        .filter(h -> h.members().stream().allMatch(m -> simulated.contains(m.id())))
        .filter(h -> h.members().stream().anyMatch(m -> leaders.contains(m.id())))
        .filter(h -> !alike.drainAlike(h.members().get(0), h.members().get(1)))
        .toList();
  }

  private static double best(List<Fitted> fitted) {
    return fitted.stream().mapToDouble(Fitted::logPosterior).max().orElse(Double.NEGATIVE_INFINITY);
  }
}
