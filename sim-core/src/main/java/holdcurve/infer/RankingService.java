package holdcurve.infer;

import holdcurve.evidence.Evidence;
import holdcurve.evidence.EvidenceEstimator;
import holdcurve.evidence.ModelProbabilities;
import holdcurve.evidence.Settings;
import holdcurve.fault.FaultCatalogue;
import holdcurve.job.Job;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Ranks by Bayesian model evidence: each hypothesis is fitted to all tests at once, and judged by
 * how well it foretold them.
 */
public final class RankingService implements Ranker {
  private final FaultCatalogue catalogue;
  private final FaultPriors priors;
  private final UnknownPriors unknowns = UnknownPriors.usual();
  private final int threads;

  /** Uses the shipped priors and every core. */
  public RankingService(FaultCatalogue catalogue) {
    this(catalogue, FaultPriors.shipped(), Runtime.getRuntime().availableProcessors());
  }

  /**
   * @param threads how many hypotheses are worked on at once; the answer doesn't depend on it
   */
  public RankingService(FaultCatalogue catalogue, FaultPriors priors, int threads) {
    this.catalogue = catalogue;
    this.priors = priors;
    this.threads = threads;
  }

  @Override
  public Ranking rank(Job job, long seed, Progress progress) {
    List<String> notes = new ArrayList<>(catalogue.problems());
    List<Hypothesis> hypotheses =
        Hypotheses.of(job.circuit(), catalogue, priors, job.priors(), notes);
    JobModel data = JobModel.of(job);
    List<Judged> judged = judge(hypotheses, data, seed, progress);
    return new RankingReport(job, data, judged, seed, notes).ranking();
  }

  private List<Judged> judge(
      List<Hypothesis> hypotheses, JobModel data, long seed, Progress progress) {
    ExecutorService workers = Executors.newFixedThreadPool(threads);
    try {
      AtomicInteger done = new AtomicInteger();
      List<Future<Judged>> running = new ArrayList<>();
      for (Hypothesis hypothesis : hypotheses) {
        running.add(
            workers.submit(
                () -> {
                  stopIfCancelled(progress);
                  Judged one = judgeOne(hypothesis, data, seed, progress);
                  progress.at(
                      done.incrementAndGet() / (double) hypotheses.size(), hypothesis.name());
                  return one;
                }));
      }
      List<Judged> judged = new ArrayList<>();
      for (Future<Judged> future : running) {
        judged.add(future.get());
      }
      return judged;
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new CancellationException("interrupted");
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException cause) {
        throw cause;
      }
      throw new IllegalStateException(e.getCause());
    } finally {
      workers.shutdownNow();
    }
  }

  private Judged judgeOne(Hypothesis hypothesis, JobModel data, long seed, Progress progress) {
    HypothesisModel model = new HypothesisModel(data, hypothesis, unknowns);
    Evidence evidence =
        EvidenceEstimator.estimate(
            new Watched(model, progress), seed ^ hypothesis.id().hashCode(), Settings.standard());
    return new Judged(hypothesis, model, evidence);
  }

  static void stopIfCancelled(Progress progress) {
    if (progress.isCancelled()) {
      throw new CancellationException("the ranking was cancelled");
    }
  }

  /** A hypothesis with what the readings say of it. */
  record Judged(Hypothesis hypothesis, HypothesisModel model, Evidence evidence) {}

  /** Probabilities of hypotheses, in their order. */
  static ModelProbabilities probabilities(List<Judged> judged) {
    int n = judged.size();
    double[] evidence = new double[n];
    double[] error = new double[n];
    double[] prior = new double[n];
    for (int i = 0; i < n; i++) {
      evidence[i] = judged.get(i).evidence().logEvidence();
      error[i] = Math.min(judged.get(i).evidence().standardError(), 10);
      prior[i] = Math.log(judged.get(i).hypothesis().priorWeight());
    }
    return ModelProbabilities.of(evidence, error, prior);
  }
}
