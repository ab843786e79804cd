package holdcurve.inference.explain;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.work.Progress;
import holdcurve.common.work.Workers;
import holdcurve.inference.answer.Reason;
import holdcurve.inference.answer.Reasons;
import holdcurve.inference.fit.Fitted;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.hypothesis.Identifiability;
import holdcurve.inference.likelihood.JobModel;
import holdcurve.inference.posterior.EvaluatedHypothesis;
import holdcurve.inference.posterior.HypothesisEvaluator;
import holdcurve.inference.prior.UnknownPriors;
import holdcurve.inference.ranking.InventedJob;
import holdcurve.physics.balance.Cause;
import holdcurve.physics.balance.FallReport;
import holdcurve.record.finding.JointLook;
import holdcurve.record.job.Job;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** A dripping rail beside a sound circuit, from one hold and a look. */
class ReasoningTest {
  private static final Job JOB = job();
  private static final JobModel DATA = JobModel.of(JOB);
  private static EvaluatedHypothesis drip;
  private static EvaluatedHypothesis none;

  private static Job job() {
    Job four = InventedJob.of();
    return four.withTests(four.tests().subList(3, 4))
        .withFindings(List.of(JointLook.of("ring-line", true)));
  }

  @BeforeAll
  static void evaluator() {
    InventedJob.Drip fault = new InventedJob.Drip();
    Hypothesis.Member member = new Hypothesis.Member(fault, fault.sites(JOB.circuit()).get(0));
    List<Hypothesis> both =
        List.of(new Hypothesis(List.of(member), 0.4), new Hypothesis(List.of(), 0.6));
    List<String> problems = new ArrayList<>();
    try (Workers workers = new Workers(1, Progress.NONE, problems)) {
      HypothesisEvaluator evaluator =
          new HypothesisEvaluator(DATA, UnknownPriors.usual(), new Identifiability(JOB), workers);
      List<Fitted> fitted = evaluator.fitSingles(both, 0.5);
      List<EvaluatedHypothesis> evaluated = HypothesisEvaluator.evaluated(fitted);
      drip = evaluated.get(0);
      none = evaluated.get(1);
    }
    assertEquals(List.of(), problems);
  }

  private static Reasoning reasoning() {
    Map<String, Double> probability =
        Map.of(drip.hypothesis().id(), 0.99, none.hypothesis().id(), 0.01);
    return new Reasoning(DATA, List.of(drip, none), probability, List.of());
  }

  @Test
  void allReasonsTogetherAreTheOdds() {
    double sum = reasoning().between(drip, none).stream().mapToDouble(Reason::weight).sum();
    assertEquals(drip.logPosterior() - none.logPosterior(), sum, 1e-6);
  }

  @Test
  void theWetJointSpeaksForTheDrip() {
    Reasons reasons;
    try (Workers workers = new Workers(2, Progress.NONE, new ArrayList<>())) {
      reasons = reasoning().reasons(workers).get(0);
    }
    assertEquals(drip.hypothesis().id(), reasons.suspect());
    Reason look =
        reasons.reasons().stream().filter(r -> r.what().contains("wet")).findFirst().orElseThrow();
    assertEquals(Math.log(0.95 / 3e-4), look.weight(), 0.3);
  }

  /**
   * The leak that was put in takes more than any natural cause; the parts add up to what was read.
   */
  @Test
  void theFallIsAttributed() {
    Map<String, Double> probability =
        Map.of(drip.hypothesis().id(), 0.99, none.hypothesis().id(), 0.01);
    FallReport report;
    try (Workers workers = new Workers(1, Progress.NONE, new ArrayList<>())) {
      report = new FallShares(JOB, List.of(drip, none), probability, 1).reports(workers).get(0);
    }
    double sum = report.shares().stream().mapToDouble(s -> s.pressure().mean()).sum();
    assertEquals(report.fall(), sum, 1e-6 * report.fall());
    double leak = report.share(Cause.LEAK).pressure().mean();
    for (Cause cause : List.of(Cause.WEEP, Cause.CREEP, Cause.TEMPERATURE, Cause.RESEAT)) {
      assertTrue(report.share(cause).pressure().mean() < leak, cause.title());
    }
    assertEquals(1, report.leaks().size());
  }
}
