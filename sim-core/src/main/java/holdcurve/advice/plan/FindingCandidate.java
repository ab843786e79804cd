package holdcurve.advice.plan;

import holdcurve.common.message.Message;
import holdcurve.common.work.ComputationException;
import holdcurve.inference.finding.CircuitState;
import holdcurve.inference.finding.FindingLikelihood;
import holdcurve.inference.finding.FindingLikelihoods;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.posterior.PosteriorDraw;
import holdcurve.record.finding.DropCount;
import holdcurve.record.finding.Finding;
import holdcurve.record.job.Job;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * A look, a count or a measurement beside the gauge, judged by the same likelihood that a ranking
 * uses once it has been done.
 */
final class FindingCandidate implements CandidateTest {
  /**
   * What may come out.
   *
   * @param words a part of a sentence; outcomes of the same words are shown as one
   * @param findings as they would be entered; empty for all that isn't listed
   */
  record Outcome(String words, List<Finding> findings) {}

  private static final double SHOWN = 0.03;

  /** Distributions of outcomes that differ by less are alike [-]. */
  private static final double APART = 0.15;

  private final Procedure procedure;
  private final List<Outcome> outcomes;
  private final List<List<FindingLikelihood>> evidence;
  private final boolean complete;
  private final String use;
  private final boolean done;

  /**
   * @param outcomes all that may come out, but for a rest
   * @param complete whether the outcomes are a grid of a measured quantity, which has no rest
   * @param use one sentence: what it shows
   */
  FindingCandidate(
      Job job, Procedure procedure, List<Outcome> outcomes, boolean complete, String use) {
    this.procedure = procedure;
    this.outcomes = outcomes;
    this.complete = complete;
    this.use = use;
    this.done = isDone(job, outcomes);
    this.evidence =
        outcomes.stream()
            .map(o -> FindingLikelihoods.of(job.withFindings(o.findings())))
            .map(said -> said.stream().map(FindingLikelihoods.Said::evidence).toList())
            .toList();
  }

  @Override
  public Procedure procedure() {
    return procedure;
  }

  @Override
  public PlannedTest predicted(OpenHypotheses futures, Separation separation, long seed) {
    double[][][] chance = new double[futures.count()][][];
    IntStream.range(0, chance.length)
        .parallel()
        .forEach(
            h -> chance[h] = futures.draws(h).stream().map(this::chances).toArray(double[][]::new));
    Information information = new SortedOutcomes(futures.prior(), chance).information();
    boolean tells = information.bits() >= Separation.NOTHING;
    return new PlannedTest(
        procedure,
        information,
        tells
            ? branches(futures, new SortedOutcomes(futures.prior(), chance).chances())
            : List.of(),
        tells ? use : use + " " + nothingNew(separation, concerned(futures, separation, chance)));
  }

  private String nothingNew(Separation separation, boolean concerned) {
    return done ? "It was done already." : separation.nothingToSee(concerned);
  }

  /** Whether such a finding was noted already, at the same part where it is about one. */
  private static boolean isDone(Job job, List<Outcome> outcomes) {
    List<Finding> possible = outcomes.stream().flatMap(o -> o.findings().stream()).toList();
    return job.findings().stream()
        .anyMatch(found -> possible.stream().anyMatch(other -> isAlike(found, other)));
  }

  private static boolean isAlike(Finding found, Finding other) {
    return found.getClass() == other.getClass()
        && (!(found instanceof DropCount count) || count.part().equals(((DropCount) other).part()));
  }

  /** Whether any leading suspect makes other outcomes likely than something else does. */
  private static boolean concerned(
      OpenHypotheses futures, Separation separation, double[][][] chance) {
    double[][] means = new SortedOutcomes(futures.prior(), chance).chances();
    List<Hypothesis> all = futures.hypotheses();
    for (Hypothesis leader : separation.leaders()) {
      int h = all.indexOf(leader);
      for (int other = 0; h >= 0 && other < means.length; other++) {
        double apart = 0;
        for (int o = 0; o < means[h].length; o++) {
          apart += Math.abs(means[h][o] - means[other][o]) / 2;
        }
        if (apart > APART) {
          return true;
        }
      }
    }
    return false;
  }

  /**
   * Probability of each outcome, with one more for all that isn't listed unless complete. One look
   * at all joints and one at each count chance wetness differently, so the sum may pass 1.
   */
  private double[] chances(PosteriorDraw draw) {
    CircuitState truth = draw.truth();
    double[] chance = new double[outcomes.size() + (complete ? 0 : 1)];
    double sum = 0;
    for (int o = 0; o < outcomes.size(); o++) {
      chance[o] = probability(evidence.get(o), truth);
      sum += chance[o];
    }
    double all = complete ? sum : Math.max(1, sum);
    if (!complete) {
      chance[outcomes.size()] = all - sum;
    }
    for (int o = 0; o < chance.length; o++) {
      chance[o] = all > 0 ? chance[o] / all : 1.0 / chance.length;
    }
    return chance;
  }

  private static double probability(List<FindingLikelihood> evidence, CircuitState truth) {
    double squares = 0;
    for (FindingLikelihood side : evidence) {
      double[] rows = new double[side.rows()];
      try {
        side.residuals(truth, rows, 0);
      } catch (ComputationException e) {
        return 0;
      }
      for (double r : rows) {
        squares += r * r;
      }
    }
    return Double.isFinite(squares) ? Math.exp(-0.5 * squares) : 0;
  }

  /** Outcomes of the same words together; rare ones are left out. */
  private List<Branch> branches(OpenHypotheses futures, double[][] chances) {
    List<String> words = outcomes.stream().map(Outcome::words).distinct().toList();
    double[][] merged = new double[chances.length][words.size()];
    for (int h = 0; h < chances.length; h++) {
      for (int o = 0; o < outcomes.size(); o++) {
        merged[h][words.indexOf(outcomes.get(o).words())] += chances[h][o];
      }
    }
    List<Branch> branches = new ArrayList<>();
    for (int o = 0; o < words.size(); o++) {
      branches.add(Branches.of(futures, Message.plain(words.get(o)), merged, o));
    }
    ToDoubleFunction<Branch> likely = Branch::probability;
    branches.removeIf(branch -> likely.applyAsDouble(branch) < SHOWN);
    return branches;
  }
}
