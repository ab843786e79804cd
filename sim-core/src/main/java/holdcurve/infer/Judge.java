package holdcurve.infer;

import holdcurve.evidence.Evidence;
import holdcurve.evidence.EvidenceEstimator;
import holdcurve.evidence.Mode;
import holdcurve.evidence.ModeFinder;
import holdcurve.evidence.Settings;
import holdcurve.evidence.WeightedDraws;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;

/**
 * Works out the evidence of many hypotheses, several at a time. The answer depends on the seed, not
 * on the threads.
 */
final class Judge implements AutoCloseable {
  /**
   * Below the best fit by this much, a hypothesis has no chance: approximate evidences of near fits
   * are off by one or two, of far ones by ten [nat].
   */
  private static final double HOPELESS = 15;

  /** A pair holds a leading single fault, so its fit is as near and its approximation as good. */
  private static final double PAIR_HOPELESS = 3;

  /** Simulated curves are no smoother than this [nat]. */
  private static final double MODE_TOLERANCE = 0.01;

  /** A fit this far behind the best may have missed its neighbourhood [nat]. */
  private static final double BEHIND = 1;

  /** Error granted to an approximate evidence [nat]. */
  private static final double APPROXIMATION_ERROR = 1;

  /**
   * A tenth of a nat is two percentage points at most; where sampling fails, a few small tempered
   * runs must do.
   */
  private static final Settings SETTINGS =
      Settings.standard().withDraws(100, 1000, 60, 0.1).withTempering(60, 2, 1);

  private static final Settings STARTS =
      Settings.standard().withModeTolerance(MODE_TOLERANCE).withSeededStarts(1);

  private final JobModel data;
  private final UnknownPriors unknowns;
  private final long seed;
  private final Progress progress;
  private final ExecutorService workers;
  private final List<String> problems;
  private Fitted leader;

  /**
   * @param problems receives a sentence for each hypothesis that couldn't be judged
   */
  Judge(
      JobModel data,
      UnknownPriors unknowns,
      long seed,
      int threads,
      Progress progress,
      List<String> problems) {
    this.data = data;
    this.unknowns = unknowns;
    this.seed = seed;
    this.progress = progress;
    this.problems = problems;
    workers = Executors.newFixedThreadPool(threads, Judge::daemon);
  }

  private static Thread daemon(Runnable work) {
    Thread thread = new Thread(work, "ranking");
    thread.setDaemon(true);
    return thread;
  }

  /**
   * Judges hypotheses in three passes: all are fitted; those that fit worse than the best are
   * looked for once more, from where that one lies; those that could matter are sampled. A fit
   * whose approximate evidence lies far below the best is taken at that value: its probability is
   * nil either way.
   *
   * @param from share of the whole work that is done before [-]
   * @param to share that is done after [-]
   * @param best log posterior of the best explanation known so far, prior included [nat]
   * @return those that could be judged, in order
   */
  List<Judged> judge(List<Hypothesis> hypotheses, double from, double to, double best) {
    double third = from + (to - from) / 3;
    double middle = (from + to) / 2;
    List<Fitted> first = each(hypotheses, Hypothesis::name, this::fit, from, third);
    lead(first);
    List<Fitted> fitted =
        each(first, one -> one.hypothesis().name(), one -> Optional.of(again(one)), third, middle);
    lead(fitted);
    double leading =
        Math.max(best, fitted.stream().mapToDouble(Fitted::logPosterior).max().orElse(best));
    List<Judged> judged =
        each(
            fitted,
            one -> one.hypothesis().name(),
            one -> Optional.of(sample(one, leading - margin(one.hypothesis()))),
            middle,
            to);
    return judged;
  }

  /** A hypothesis with its modes, before sampling. */
  private record Fitted(
      Hypothesis hypothesis,
      HypothesisModel model,
      List<Mode> joint,
      MarginalLikelihood likelihood,
      double laplace) {
    double logPosterior() {
      return laplace + Math.log(hypothesis.priorWeight());
    }
  }

  private <A, B> List<B> each(
      List<A> all,
      Function<A, String> name,
      Function<A, Optional<B>> work,
      double from,
      double to) {
    AtomicInteger done = new AtomicInteger();
    List<Future<Optional<B>>> running = new ArrayList<>();
    for (A one : all) {
      running.add(
          workers.submit(
              () -> {
                stopIfCancelled(progress);
                Optional<B> result = work.apply(one);
                double share = done.incrementAndGet() / (double) all.size();
                progress.at(from + (to - from) * share, name.apply(one));
                return result;
              }));
    }
    List<B> results = new ArrayList<>();
    for (int i = 0; i < running.size(); i++) {
      outcome(running.get(i), name.apply(all.get(i))).ifPresent(results::add);
    }
    return results;
  }

  private Optional<Fitted> fit(Hypothesis hypothesis) {
    HypothesisModel model = new HypothesisModel(data, hypothesis, unknowns);
    if (hypothesis.members().size() > 1 && leader != null) {
      return near(model).flatMap(mode -> fitted(hypothesis, model, List.of(mode)));
    }
    List<Mode> joint =
        ModeFinder.find(
            new Watched(model, progress),
            ownSeed(hypothesis),
            STARTS.withStarts(List.of(SizeStart.of(model, data))));
    return joint.isEmpty() ? Optional.empty() : fitted(hypothesis, model, joint);
  }

  /** The mode near the best fit so far, if it isn't known yet. */
  private Optional<Mode> near(HypothesisModel model, Mode... known) {
    double[] start = NextStart.of(model, leader.model(), leader.joint().get(0).u());
    return ModeFinder.from(new Watched(model, progress), start, List.of(known), MODE_TOLERANCE);
  }

  private static Optional<Fitted> fitted(
      Hypothesis hypothesis, HypothesisModel model, List<Mode> joint) {
    MarginalLikelihood marginal = new MarginalLikelihood(model, joint);
    double laplace =
        marginal.modes().stream()
            .mapToDouble(Mode::laplaceLogEvidence)
            .max()
            .orElse(Double.NEGATIVE_INFINITY);
    return Double.isFinite(laplace)
        ? Optional.of(new Fitted(hypothesis, model, joint, marginal, laplace))
        : Optional.empty();
  }

  private void lead(List<Fitted> candidates) {
    for (Fitted one : candidates) {
      if (leader == null || one.laplace() > leader.laplace()) {
        leader = one;
      }
    }
  }

  private Fitted again(Fitted one) {
    if (one.laplace() > leader.laplace() - BEHIND || one.hypothesis().members().size() > 1) {
      return one;
    }
    List<Mode> joint = new ArrayList<>(one.joint());
    near(one.model(), one.joint().toArray(Mode[]::new)).ifPresent(joint::add);
    joint.sort(Comparator.comparingDouble(Mode::laplaceLogEvidence).reversed());
    return joint.size() == one.joint().size()
        ? one
        : fitted(one.hypothesis(), one.model(), joint).orElse(one);
  }

  /** How far behind the best a fit may lie and still be sampled [nat]. */
  private static double margin(Hypothesis hypothesis) {
    return hypothesis.members().size() < 2 ? HOPELESS : PAIR_HOPELESS;
  }

  private Judged sample(Fitted fit, double least) {
    Evidence evidence =
        fit.logPosterior() < least
            ? approximate(fit)
            : EvidenceEstimator.estimate(
                new WatchedMarginal(fit.likelihood(), progress),
                fit.likelihood().modes(),
                ownSeed(fit.hypothesis()),
                SETTINGS);
    return new Judged(fit.hypothesis(), fit.model(), fit.likelihood(), evidence);
  }

  private static Evidence approximate(Fitted fit) {
    Mode mode = fit.likelihood().modes().get(0);
    return new Evidence(
        fit.laplace(),
        APPROXIMATION_ERROR,
        new WeightedDraws(List.of(mode.u()), new double[] {1}),
        1,
        Double.NaN,
        Evidence.Method.IMPORTANCE,
        true,
        1,
        fit.laplace(),
        mode.logLikelihood(),
        mode.u(),
        fit.likelihood().modes().size());
  }

  private long ownSeed(Hypothesis hypothesis) {
    return seed * 31 + hypothesis.id().hashCode();
  }

  private <B> Optional<B> outcome(Future<Optional<B>> future, String name) {
    try {
      Optional<B> result = future.get();
      if (result.isEmpty()) {
        problems.add("'" + name + "' could not be simulated for this circuit and is left out.");
      }
      return result;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CancellationException("interrupted");
    } catch (ExecutionException e) {
      if (e.getCause() instanceof CancellationException cancelled) {
        throw cancelled;
      }
      problems.add("'" + name + "' failed and is left out: " + e.getCause() + ".");
      return Optional.empty();
    }
  }

  static void stopIfCancelled(Progress progress) {
    if (progress.isCancelled()) {
      throw new CancellationException("the ranking was cancelled");
    }
  }

  @Override
  public void close() {
    workers.shutdownNow();
  }
}
