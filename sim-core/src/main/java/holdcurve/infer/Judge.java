package holdcurve.infer;

import holdcurve.evidence.Evidence;
import holdcurve.evidence.EvidenceEstimator;
import holdcurve.evidence.Mode;
import holdcurve.evidence.ModeFinder;
import holdcurve.evidence.Settings;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Works out the evidence of many hypotheses, several at a time. The answer depends on the seed, not
 * on the threads.
 */
final class Judge implements AutoCloseable {
  private final JobModel data;
  private final UnknownPriors unknowns;
  private final long seed;
  private final Progress progress;
  private final ExecutorService workers;
  private final List<String> problems;

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
   * @param from share of the whole work that is done before [-]
   * @param to share that is done after [-]
   * @return those that could be judged, in order
   */
  List<Judged> judge(List<Hypothesis> hypotheses, double from, double to) {
    AtomicInteger done = new AtomicInteger();
    List<Future<Optional<Judged>>> running = new ArrayList<>();
    for (Hypothesis hypothesis : hypotheses) {
      running.add(
          workers.submit(
              () -> {
                Optional<Judged> judged = judgeOne(hypothesis);
                double share = done.incrementAndGet() / (double) hypotheses.size();
                progress.at(from + (to - from) * share, hypothesis.name());
                return judged;
              }));
    }
    List<Judged> judged = new ArrayList<>();
    for (int i = 0; i < running.size(); i++) {
      outcome(running.get(i), hypotheses.get(i)).ifPresent(judged::add);
    }
    return judged;
  }

  private Optional<Judged> judgeOne(Hypothesis hypothesis) {
    stopIfCancelled(progress);
    HypothesisModel model = new HypothesisModel(data, hypothesis, unknowns);
    long own = seed * 31 + hypothesis.id().hashCode();
    Watched watched = new Watched(model, progress);
    List<Mode> joint = ModeFinder.find(watched, own, Settings.standard());
    if (joint.isEmpty()) {
      return Optional.empty();
    }
    MarginalLikelihood marginal = new MarginalLikelihood(model, joint);
    if (marginal.modes().isEmpty()) {
      return Optional.empty();
    }
    Evidence evidence =
        EvidenceEstimator.estimate(
            new WatchedMarginal(marginal, progress),
            marginal.modes(),
            own,
            Settings.standard().withDraws(150, 1200, 80, 0.08));
    return Optional.of(new Judged(hypothesis, model, marginal, evidence));
  }

  private Optional<Judged> outcome(Future<Optional<Judged>> future, Hypothesis hypothesis) {
    try {
      Optional<Judged> judged = future.get();
      if (judged.isEmpty()) {
        problems.add(
            "'" + hypothesis.name() + "' could not be simulated for this circuit and is left out.");
      }
      return judged;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CancellationException("interrupted");
    } catch (ExecutionException e) {
      if (e.getCause() instanceof CancellationException cancelled) {
        throw cancelled;
      }
      problems.add("'" + hypothesis.id() + "' failed and is left out: " + e.getCause() + ".");
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
