package holdcurve.ui.window;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.advice.check.RepairCheck;
import holdcurve.advice.check.RepairCheckService;
import holdcurve.common.message.PressureUnit;
import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.JobReader;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.ranking.RankingService;
import holdcurve.record.job.Job;
import holdcurve.ui.report.JobReport;
import holdcurve.ui.report.ReportPage;
import holdcurve.ui.window.job.OpenJobModel;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The window and the report give the same answer about a job. */
class OneAnswerTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");
  private static final FaultCatalogue CATALOGUE = FaultCatalogue.load();

  static List<Path> scenarios() throws IOException {
    try (Stream<Path> files = Files.list(SCENARIOS)) {
      return files.filter(file -> file.toString().endsWith(".job.json")).sorted().toList();
    }
  }

  @ParameterizedTest
  @MethodSource("scenarios")
  void windowAndReportAgree(Path file) {
    RankingService rankings = new RankingService(CATALOGUE);
    OpenJobModel window =
        new OpenJobModel(JobReader::read, () -> rankings, Runnable::run, Runnable::run);
    window.open(file);
    Ranking shown = window.ranking().resultProperty().get();
    Job job = JobReader.read(file);
    RepairCheck check =
        new RepairCheckService(rankings, CATALOGUE)
            .check(job, Optional.empty(), shown.seed(), Progress.NONE);
    assertEquals(shown.diagnosis(), check.ranking().diagnosis());
    assertEquals(shown.suspects().get(0).id(), check.ranking().suspects().get(0).id());
    String page =
        ReportPage.html(new JobReport(job, check, LocalDate.of(2026, 4, 12), PressureUnit.BAR));
    assertPrinted(shown.diagnosis().verdict().words().in(PressureUnit.BAR), page);
    assertPrinted(shown.diagnosis().next().words().in(PressureUnit.BAR), page);
  }

  private static void assertPrinted(String sentence, String page) {
    String text = sentence.replace("&", "&amp;").replace("<", "&lt;").replace("'", "&#39;");
    assertTrue(page.contains(text), () -> "'" + sentence + "' is not in the report");
  }
}
