package holdcurve.ui.window.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.file.JobReader;
import holdcurve.ui.window.BelievedRanking;
import holdcurve.ui.window.HandMadeRanking;
import holdcurve.ui.window.Jobs;
import holdcurve.ui.window.job.OpenJobModel;
import org.junit.jupiter.api.Test;

/** The next test follows a ranking, without a screen. */
class NextTestModelTest {
  @Test
  void theBestTestComesWithItsSteps() {
    OpenJobModel jobs =
        new OpenJobModel(JobReader::read, BelievedRanking::new, Runnable::run, Runnable::run);
    NextTestModel model = new NextTestModel(jobs);
    jobs.open(Jobs.TWO_HOLDS);
    assertTrue(model.headline().startsWith("Next test: "), model.headline());
    assertEquals(model.planProperty().get().tests().get(0), model.chosenProperty().get());
    assertFalse(model.chosenProperty().get().procedure().steps().isEmpty());
    assertFalse(model.chosenProperty().get().branches().isEmpty());
  }

  @Test
  void aRankingWithoutDrawsHasNoPlan() {
    OpenJobModel jobs =
        new OpenJobModel(JobReader::read, HandMadeRanking::new, Runnable::run, Runnable::run);
    NextTestModel model = new NextTestModel(jobs);
    jobs.open(Jobs.TWO_HOLDS);
    assertNull(model.planProperty().get());
  }
}
