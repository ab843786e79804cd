package holdcurve.inference.posterior;

import holdcurve.common.work.Workers;
import holdcurve.inference.fit.EquivalentFaults;
import holdcurve.inference.fit.Fit;
import holdcurve.inference.fit.FitSearch;
import holdcurve.inference.fit.Fitted;
import holdcurve.inference.fit.NextStart;
import holdcurve.inference.fit.SizeStart;
import holdcurve.inference.fit.Start;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.hypothesis.Identifiability;
import holdcurve.inference.likelihood.HypothesisModel;
import holdcurve.inference.likelihood.JobModel;
import holdcurve.inference.prior.UnknownPriors;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Works out the evidence of hypotheses, each from where it fits best. Nothing is random. */
public final class HypothesisEvaluator {
  /** A fit this far behind needn't be brought to its end [nat]. */
  private static final double HOPELESS = 10;

  private final JobModel data;
  private final UnknownPriors unknowns;
  private final EquivalentFaults equivalents;
  private final Workers workers;

  /**
   * @param alike which faults of the job drain the same fuel
   */
  public HypothesisEvaluator(
      JobModel data, UnknownPriors unknowns, Identifiability alike, Workers workers) {
    this.data = data;
    this.unknowns = unknowns;
    this.equivalents = new EquivalentFaults(alike);
    this.workers = workers;
  }

  /**
   * Fits hypotheses of at most one fault. Of those that drain the same fuel one is fitted first:
   * from the middle of its prior but for the size of the fault, then from where the best of all
   * lies. The others begin where that one ends.
   *
   * @param to share of the whole work that is done after [-]
   * @return those that could be simulated, in order
   */
  public List<Fitted> fitSingles(List<Hypothesis> hypotheses, double to) {
    List<Hypothesis> leading = equivalents.leading(hypotheses);
    List<Fitted> first = workers.each(leading, Hypothesis::name, this::fit, 0, 0.5 * to);
    if (first.isEmpty()) {
      return first;
    }
    Fitted best = best(first);
    List<Fitted> again =
        workers.each(
            first,
            HypothesisEvaluator::name,
            one -> Optional.of(refit(one, best)),
            0.5 * to,
            0.75 * to);
    double least = best(again).best().logEvidence() - HOPELESS;
    List<Hypothesis> following = hypotheses.stream().filter(h -> !leading.contains(h)).toList();
    Map<Hypothesis, EquivalentFaults.Leader> leaders = new IdentityHashMap<>();
    following.forEach(h -> equivalents.leader(h, again).ifPresent(l -> leaders.put(h, l)));
    List<Fitted> all = new ArrayList<>(again);
    all.addAll(
        workers.each(
            following,
            Hypothesis::name,
            h -> fitLike(h, Optional.ofNullable(leaders.get(h)), least),
            0.75 * to,
            to));
    all.sort(Comparator.comparingInt(f -> hypotheses.indexOf(f.hypothesis())));
    return all;
  }

  private static Fitted best(List<Fitted> some) {
    return some.stream().max(Comparator.comparingDouble(f -> f.best().logEvidence())).orElseThrow();
  }

  private Optional<Fitted> fitLike(
      Hypothesis hypothesis, Optional<EquivalentFaults.Leader> leader, double least) {
    HypothesisModel model = new HypothesisModel(data, hypothesis, unknowns);
    Start start =
        leader
            .map(l -> NextStart.ofEquivalent(model, l.fitted(), l.partners()))
            .orElseGet(() -> SizeStart.of(model, data));
    return fit(hypothesis, model, start, least);
  }

  private Optional<Fitted> fit(Hypothesis hypothesis) {
    HypothesisModel model = new HypothesisModel(data, hypothesis, unknowns);
    return fit(hypothesis, model, SizeStart.of(model, data), Double.NEGATIVE_INFINITY);
  }

  private Optional<Fitted> fit(
      Hypothesis hypothesis, HypothesisModel model, Start start, double least) {
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
            .from(one.fits(), List.of(NextStart.of(one.model(), best))));
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
  public List<Fitted> likeEquivalents(List<Fitted> fitted, double share) {
    Map<Fitted, EquivalentFaults.Leader> leaders = equivalents.leaders(fitted);
    return workers.each(
        fitted,
        HypothesisEvaluator::name,
        one -> Optional.of(leaders.containsKey(one) ? likeEquivalent(one, leaders.get(one)) : one),
        share,
        share);
  }

  private Fitted likeEquivalent(Fitted one, EquivalentFaults.Leader leader) {
    Fit best = leader.fitted().best();
    Start there = NextStart.ofEquivalent(one.model(), leader.fitted(), leader.partners());
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
    Start start = NextStart.of(model, leading);
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
