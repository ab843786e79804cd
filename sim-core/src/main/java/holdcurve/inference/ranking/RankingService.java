package holdcurve.inference.ranking;

import holdcurve.common.input.Cancellation;
import holdcurve.common.input.NoAnswerException;
import holdcurve.common.message.Message;
import holdcurve.common.work.Progress;
import holdcurve.common.work.Workers;
import holdcurve.fault.FaultCatalogue;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Verdict;
import holdcurve.inference.data.ReadingChecks;
import holdcurve.inference.fit.Fitted;
import holdcurve.inference.hypothesis.Hypotheses;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.hypothesis.Identifiability;
import holdcurve.inference.likelihood.JobModel;
import holdcurve.inference.posterior.EvaluatedHypothesis;
import holdcurve.inference.posterior.HypothesisEvaluator;
import holdcurve.inference.posterior.Posterior;
import holdcurve.inference.posterior.UnknownLaws;
import holdcurve.inference.prior.FaultPriors;
import holdcurve.inference.prior.LearnedUnknowns;
import holdcurve.inference.prior.PriorNames;
import holdcurve.inference.prior.UnknownPriors;
import holdcurve.record.job.Job;
import holdcurve.record.job.Timeline;
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
  private final UnknownPriors unknowns;

  /** What a reader should know of those. */
  private final List<Message> remarks;

  private final int threads;
  private final boolean verdictOnly;

  /** Uses the shipped priors and every core. */
  public RankingService(FaultCatalogue catalogue) {
    this(catalogue, FaultPriors.shipped());
  }

  /** Uses every core. */
  public RankingService(FaultCatalogue catalogue, FaultPriors priors) {
    this(catalogue, priors, Runtime.getRuntime().availableProcessors());
  }

  /**
   * @param threads how many hypotheses are worked on at once; the answer doesn't depend on it
   */
  public RankingService(FaultCatalogue catalogue, FaultPriors priors, int threads) {
    this(catalogue, priors, UnknownPriors.usual(), List.of(), threads, false);
  }

  private RankingService(
      FaultCatalogue catalogue,
      FaultPriors priors,
      UnknownPriors unknowns,
      List<Message> remarks,
      int threads,
      boolean verdictOnly) {
    this.catalogue = catalogue;
    this.priors = priors;
    this.unknowns = unknowns;
    this.remarks = List.copyOf(remarks);
    this.threads = threads;
    this.verdictOnly = verdictOnly;
  }

  /**
   * The same without suspects' expected curves and without the books of the fall, which cost a
   * third: for whoever shows none.
   */
  public RankingService verdictOnly() {
    return new RankingService(catalogue, priors, unknowns, remarks, threads, true);
  }

  /**
   * The same, starting from what earlier jobs of the same car taught.
   *
   * @param said what a reader should know of that
   */
  public RankingService after(LearnedUnknowns learned, List<Message> said) {
    return new RankingService(
        catalogue, priors, UnknownPriors.learned(learned), said, threads, verdictOnly);
  }

  /**
   * What a job teaches of the unknowns that stay with its car; nothing where none of the listed
   * faults explains it.
   */
  public LearnedUnknowns learn(Job job, long seed, Progress progress) {
    List<String> problems = new ArrayList<>();
    try (Workers workers = new Workers(threads, progress, problems)) {
      RankingReport report = report(job, seed, workers, problems);
      boolean explained =
          report.ranking(true, workers).verdict().kind() != Verdict.Kind.UNEXPLAINED;
      return explained ? report.learned() : LearnedUnknowns.NONE;
    }
  }

  @Override
  public Ranking rank(Job job, long seed, Progress progress) {
    List<String> problems = new ArrayList<>();
    try (Workers workers = new Workers(threads, progress, problems)) {
      return report(job, seed, workers, problems).ranking(verdictOnly, workers);
    }
  }

  @Override
  public Posterior believe(Job job, long seed, int draws, Progress progress) {
    List<String> problems = new ArrayList<>();
    try (Workers workers = new Workers(threads, progress, problems)) {
      RankingReport report = report(job, seed, workers, problems);
      return new Posterior(
          job, report.ranking(verdictOnly, workers), report.posterior(unknowns, draws, workers));
    }
  }

  private RankingReport report(Job job, long seed, Workers workers, List<String> problems) {
    List<Message> notes = new ArrayList<>(job.understood());
    notes.addAll(remarks);
    ReadingChecks.check(job, notes);
    PriorNames.check(job, catalogue);
    problems.addAll(catalogue.problems());
    Cancellation.check();
    JobModel data = JobModel.of(job);
    FaultCatalogue spokenFor = IdentifiableFaults.among(catalogue, data, unknowns);
    List<Hypothesis> all =
        Hypotheses.of(
            job.circuit(), spokenFor, priors, job.priors(), Timeline.isAfterRepair(job), problems);
    Identifiability alike = new Identifiability(job);
    HypothesisEvaluator evaluator = new HypothesisEvaluator(data, unknowns, alike, workers);
    List<Hypothesis> first = all.stream().filter(h -> h.members().size() < 2).toList();
    List<Fitted> fitted =
        new ArrayList<>(evaluator.likeEquivalents(evaluator.fitSingles(first, 0.5), 0.5));
    List<Hypothesis> pairs = plausiblePairs(all, fitted, alike);
    List<Fitted> together = evaluator.fitPairs(pairs, List.copyOf(fitted), best(fitted), 0.5, 0.9);
    fitted.addAll(evaluator.likeEquivalents(together, 0.9));
    List<EvaluatedHypothesis> evaluated = HypothesisEvaluator.evaluated(fitted);
    if (evaluated.isEmpty()) {
      throw new NoAnswerException(
          "%s: no explanation could be simulated. %s %s"
              .formatted(
                  job.title(), String.join(" ", Message.inBar(notes)), String.join(" ", problems))
              .strip());
    }
    catalogue.failures().stream().filter(f -> !problems.contains(f)).forEach(problems::add);
    notes.addAll(Message.plain(problems));
    List<EvaluatedHypothesis> averaged = new UnknownLaws(data, alike).averaged(evaluated);
    RateShift rates = new RateShift(catalogue, priors, job.priors());
    return new RankingReport(job, data, alike, averaged, seed, rates, notes);
  }

  /** Pairs with a leading suspect, of faults that don't drain the same fuel the same way. */
  private static List<Hypothesis> plausiblePairs(
      List<Hypothesis> all, List<Fitted> singles, Identifiability alike) {
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
