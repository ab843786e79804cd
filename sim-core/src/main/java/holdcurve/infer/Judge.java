package holdcurve.infer;

import holdcurve.evidence.Evidence;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Works out the evidence of hypotheses: all are fitted, then those that could matter are sampled.
 * The answer depends on the seed, not on the threads.
 */
final class Judge {
  /**
   * A fit this far behind the best, as far as it is believed, is taken at its approximate evidence,
   * which is seldom off by more than one: its probability is below five per cent either way [nat].
   */
  private static final double NEGLIGIBLE = 4;

  /** A pair holds a leading single fault, so its fit is as near and its approximation as good. */
  private static final double NEGLIGIBLE_PAIR = 2;

  /** A fit this far behind needn't be brought to its end [nat]. */
  private static final double HOPELESS = 12;

  private final JobModel data;
  private final UnknownPriors unknowns;
  private final long seed;
  private final Workers workers;

  Judge(JobModel data, UnknownPriors unknowns, long seed, Workers workers) {
    this.data = data;
    this.unknowns = unknowns;
    this.seed = seed;
    this.workers = workers;
  }

  /**
   * Fits hypotheses of at most one fault: each from the middle of its prior but for the size of the
   * fault, then each from where the best of them lies. Faults that drain the same fuel have their
   * fits at the same place, but may not all find it by themselves.
   *
   * @param from share of the whole work that is done before [-]
   * @param to share that is done after [-]
   * @return those that could be simulated, in order
   */
  List<Fitted> fitSingles(List<Hypothesis> hypotheses, double from, double to) {
    double middle = (2 * from + to) / 3;
    List<Fitted> first = workers.each(hypotheses, Hypothesis::name, this::fit, from, middle);
    if (first.isEmpty()) {
      return first;
    }
    Fitted best =
        first.stream().max(Comparator.comparingDouble(f -> f.best().logEvidence())).orElseThrow();
    return workers.each(first, Judge::name, one -> Optional.of(refit(one, best)), middle, to);
  }

  private Optional<Fitted> fit(Hypothesis hypothesis) {
    HypothesisModel model = new HypothesisModel(data, hypothesis, unknowns);
    return fit(hypothesis, model, SizeStart.of(model, data), Double.NEGATIVE_INFINITY);
  }

  private Optional<Fitted> fit(
      Hypothesis hypothesis, HypothesisModel model, double[] start, double least) {
    List<Fit> fits =
        new FitSearch(data, model, least, workers.progress()).from(List.of(), List.of(start));
    return fits.isEmpty() ? Optional.empty() : Optional.of(new Fitted(hypothesis, model, fits));
  }

  private Fitted refit(Fitted one, Fitted best) {
    if (one == best) {
      return one;
    }
    double least = best.best().logEvidence() - HOPELESS;
    return one.with(
        new FitSearch(data, one.model(), least, workers.progress())
            .from(one.fits(), List.of(NextStart.of(one.model(), best.model(), best.best().u()))));
  }

  /**
   * Fits pairs, each from where the likelier of its faults alone fits best, with the other one
   * small.
   *
   * @param singles fits of single faults
   * @param best log posterior of the best explanation known so far [nat]
   */
  List<Fitted> fitPairs(
      List<Hypothesis> pairs, List<Fitted> singles, double best, double from, double to) {
    Map<String, Fitted> byId =
        singles.stream().collect(Collectors.toMap(f -> f.hypothesis().id(), Function.identity()));
    return workers.each(pairs, Hypothesis::name, pair -> fitPair(pair, byId, best), from, to);
  }

  /**
   * Fits again those that lie far behind a twin, from where the twin fits.
   *
   * @return all, in order
   */
  List<Fitted> likeTwins(List<Fitted> fitted, Alikeness alike, double share) {
    Map<Fitted, Twins.Leader> leaders = new Twins(alike).leaders(fitted);
    return workers.each(
        fitted,
        Judge::name,
        one -> Optional.of(leaders.containsKey(one) ? likeTwin(one, leaders.get(one)) : one),
        share,
        share);
  }

  private Fitted likeTwin(Fitted one, Twins.Leader leader) {
    HypothesisModel twin = leader.fitted().model();
    Fit best = leader.fitted().best();
    double[] there = NextStart.ofTwin(one.model(), twin, best.u(), leader.partners());
    FitSearch search =
        new FitSearch(data, one.model(), best.logEvidence() - HOPELESS, workers.progress());
    return one.with(search.from(one.fits(), List.of(there)));
  }

  private Optional<Fitted> fitPair(Hypothesis pair, Map<String, Fitted> singles, double best) {
    HypothesisModel model = new HypothesisModel(data, pair, unknowns);
    Fitted leading =
        pair.members().stream()
            .map(member -> singles.get(member.id()))
            .filter(Objects::nonNull)
            .max(Comparator.comparingDouble(Fitted::logPosterior))
            .orElseThrow();
    double[] start = NextStart.of(model, leading.model(), leading.best().u());
    double least = best - Math.log(pair.priorWeight()) - HOPELESS;
    return fit(pair, model, start, least);
  }

  /**
   * Samples those whose fit is good enough to matter, the likeliest first: they take longest, and
   * one begun last would be waited for.
   *
   * @param best log posterior of the best explanation [nat]
   * @return all, the best fit first
   */
  List<Judged> sample(List<Fitted> fitted, double best, double from, double to) {
    double[] odds = fitted.stream().mapToDouble(f -> Math.exp(f.logPosterior() - best)).toArray();
    double sum = Math.max(1, Arrays.stream(odds).sum());
    return workers.each(
        fitted.stream()
            .sorted(Comparator.comparingDouble(Fitted::logPosterior).reversed())
            .toList(),
        Judge::name,
        one -> Optional.of(sample(one, best, Math.exp(one.logPosterior() - best) / sum)),
        from,
        to);
  }

  private Judged sample(Fitted fit, double best, double probability) {
    MarginalLikelihood likelihood = new MarginalLikelihood(data, fit.model(), fit.fits());
    long own = seed * 31 + fit.hypothesis().id().hashCode();
    Evidence evidence = CheckedEvidence.approximate(likelihood.modes(), own);
    return new Judged(fit.hypothesis(), fit.model(), likelihood, evidence);
  }

  /**
   * Monte Carlo error worth paying for: a tenth of a nat is two percentage points at most, less
   * where a probability is near 0 or 1.
   */
  private static double error(double probability) {
    double percent = 0.025 / Math.max(0.025, probability * (1 - probability));
    return Math.max(0.1, Math.min(0.3, percent));
  }

  private static String name(Fitted fitted) {
    return fitted.hypothesis().name();
  }
}
