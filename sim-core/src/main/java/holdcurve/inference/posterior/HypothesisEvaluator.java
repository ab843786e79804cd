package holdcurve.inference.posterior;

import holdcurve.common.work.Workers;
import holdcurve.inference.fit.EquivalentFaults;
import holdcurve.inference.fit.Fit;
import holdcurve.inference.fit.FitSearch;
import holdcurve.inference.fit.Fitted;
import holdcurve.inference.fit.NextStart;
import holdcurve.inference.fit.SizeStart;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.hypothesis.Identifiability;
import holdcurve.inference.likelihood.HypothesisModel;
import holdcurve.inference.likelihood.JobModel;
import holdcurve.inference.prior.UnknownPriors;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Works out the evidence of hypotheses, each from where it fits best. Nothing is random. */
public final class HypothesisEvaluator {
  /** A fit this far behind needn't be brought to its end [nat]. */
  private static final double HOPELESS = 12;

  private final JobModel data;
  private final UnknownPriors unknowns;
  private final Workers workers;

  public HypothesisEvaluator(JobModel data, UnknownPriors unknowns, Workers workers) {
    this.data = data;
    this.unknowns = unknowns;
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
  public List<Fitted> fitSingles(List<Hypothesis> hypotheses, double from, double to) {
    double middle = (2 * from + to) / 3;
    List<Fitted> first = workers.each(hypotheses, Hypothesis::name, this::fit, from, middle);
    if (first.isEmpty()) {
      return first;
    }
    Fitted best =
        first.stream().max(Comparator.comparingDouble(f -> f.best().logEvidence())).orElseThrow();
    return workers.each(
        first, HypothesisEvaluator::name, one -> Optional.of(refit(one, best)), middle, to);
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
  public List<Fitted> fitPairs(
      List<Hypothesis> pairs, List<Fitted> singles, double best, double from, double to) {
    Map<String, Fitted> byId =
        singles.stream().collect(Collectors.toMap(f -> f.hypothesis().id(), Function.identity()));
    return workers.each(pairs, Hypothesis::name, pair -> fitPair(pair, byId, best), from, to);
  }

  /**
   * Fits again those that lie far behind an equivalent, from where that fits.
   *
   * @return all, in order
   */
  public List<Fitted> likeEquivalents(List<Fitted> fitted, Identifiability alike, double share) {
    Map<Fitted, EquivalentFaults.Leader> leaders = new EquivalentFaults(alike).leaders(fitted);
    return workers.each(
        fitted,
        HypothesisEvaluator::name,
        one -> Optional.of(leaders.containsKey(one) ? likeEquivalent(one, leaders.get(one)) : one),
        share,
        share);
  }

  private Fitted likeEquivalent(Fitted one, EquivalentFaults.Leader leader) {
    HypothesisModel equivalent = leader.fitted().model();
    Fit best = leader.fitted().best();
    double[] there = NextStart.ofEquivalent(one.model(), equivalent, best.u(), leader.partners());
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
   * Laplace's evidence and posterior of each.
   *
   * @return all, the best fit first
   */
  public static List<EvaluatedHypothesis> evaluated(List<Fitted> fitted) {
    return fitted.stream()
        .sorted(Comparator.comparingDouble(Fitted::logPosterior).reversed())
        .map(HypothesisEvaluator::evaluated)
        .toList();
  }

  private static EvaluatedHypothesis evaluated(Fitted fit) {
    LaplacePosterior posterior =
        new LaplacePosterior(fit.best(), fit.model().latentMap().latents());
    return new EvaluatedHypothesis(
        fit.hypothesis(), fit.model(), posterior, posterior.logEvidence());
  }

  private static String name(Fitted fitted) {
    return fitted.hypothesis().name();
  }
}
