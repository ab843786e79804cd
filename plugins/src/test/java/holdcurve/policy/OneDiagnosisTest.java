package holdcurve.policy;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.advice.check.RepairCheck;
import holdcurve.advice.check.RepairCheckService;
import holdcurve.advice.plan.Plan;
import holdcurve.advice.plan.Planner;
import holdcurve.calibration.blind.BlindCases;
import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.JobReader;
import holdcurve.inference.answer.Diagnosis;
import holdcurve.inference.answer.NextStep;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.posterior.Posterior;
import holdcurve.inference.ranking.RankingService;
import holdcurve.record.job.CurrentTests;
import holdcurve.record.job.Job;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whoever is asked about a job gives the same answer: ranking, plan and check. */
class OneDiagnosisTest {
  private static final Path SCENARIOS =
      Path.of(System.getProperty("holdcurve.root", ".."), "scenarios");

  /** Generated jobs beside the scenarios. */
  private static final int CASES = 50;

  private static final long FIRST_SEED = 0;

  private final FaultCatalogue catalogue = FaultCatalogue.load();
  private final RankingService rankings = new RankingService(catalogue);

  @TempDir Path folder;

  private static List<Job> scenarios() throws IOException {
    try (Stream<Path> files = Files.list(SCENARIOS)) {
      return files
          .filter(file -> file.toString().endsWith(".job.json"))
          .sorted()
          .map(JobReader::read)
          .toList();
    }
  }

  @Test
  void scenariosHaveOneAnswer() throws IOException {
    for (Job job : scenarios()) {
      Ranking ranked = rankings.verdictOnly().rank(CurrentTests.of(job), 1, Progress.NONE);
      same(job.title(), ranked, planAndCheck(job));
    }
  }

  @Test
  void generatedJobsHaveOneAnswer() {
    for (int i = 0; i < CASES; i++) {
      planAndCheck(JobReader.read(new BlindCases(folder).make(FIRST_SEED + i, 1 + i % 2).file()));
    }
  }

  /** Holds that plan and check agree. */
  private Ranking planAndCheck(Job job) {
    Posterior posterior =
        rankings.verdictOnly().believe(CurrentTests.of(job), 2, Planner.DRAWS, Progress.NONE);
    RepairCheck check =
        new RepairCheckService(rankings, catalogue).check(job, Optional.empty(), 3, Progress.NONE);
    Ranking ranked = posterior.ranking();
    same(job.title(), ranked, check.ranking());
    assertEquals(ranked.diagnosis().sound(), check.sound(), 1e-12, job.title());
    assertEquals(ranked.diagnosis().verdict().sentence(), check.verdict().sentence(), job.title());
    NextStep next = ranked.diagnosis().next();
    assertEquals(next.words(), check.verdict().next(), job.title());
    if (next.kind() == NextStep.Kind.TEST) {
      Plan plan = Planner.plan(posterior, 4, Progress.NONE);
      assertEquals(
          next.procedure(), plan.tests().get(0).procedure().id(), () -> job.title() + next);
    }
    return ranked;
  }

  private static void same(String title, Ranking one, Ranking other) {
    Diagnosis a = one.diagnosis();
    Diagnosis b = other.diagnosis();
    assertEquals(a.verdict().kind(), b.verdict().kind(), title);
    assertEquals(a.verdict().sentence(), b.verdict().sentence(), title);
    assertEquals(a.sound(), b.sound(), 1e-12, title);
    assertEquals(a.next(), b.next(), title);
    assertEquals(a.marks(), b.marks(), title);
    assertEquals(one.suspects().get(0).id(), other.suspects().get(0).id(), title);
  }
}
