package holdcurve.ui.window.suspects;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.message.PressureUnit;
import holdcurve.file.JobReader;
import holdcurve.ui.window.HandMadeRanking;
import holdcurve.ui.window.Jobs;
import holdcurve.ui.window.job.OpenJobModel;
import holdcurve.ui.window.plot.HoldPlot;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class SuspectsModelTest {
  @TempDir Path folder;

  private final OpenJobModel jobs =
      new OpenJobModel(JobReader::read, HandMadeRanking::new, Runnable::run, Runnable::run);
  private final SuspectsModel model = new SuspectsModel(jobs);

  private static String chosenId(SuspectsModel model) {
    return model.chosenProperty().get().suspect().id();
  }

  @Test
  void emptyBeforeThereIsAJob() {
    assertTrue(model.rows().isEmpty() && model.plots().isEmpty() && model.notes().isEmpty());
    assertNull(model.chosenProperty().get());
  }

  @Test
  void theUnclampedTestComesFirst() {
    jobs.open(Jobs.TWO_HOLDS);
    assertEquals(
        List.of("no clamps", "return clamped"),
        model.plots().stream().map(HoldPlot::test).toList());
  }

  @Test
  void theLikeliestIsChosenAndItsCurveShows() {
    jobs.open(Jobs.TWO_HOLDS);
    assertEquals(HandMadeRanking.IDS.get(0), chosenId(model));
    double ofFirst = lastExpected();
    model.chosenProperty().set(model.rows().get(2));
    assertTrue(lastExpected() < ofFirst - 0.05, "a faster leak ends lower");
  }

  private double lastExpected() {
    double[] middle = model.plots().get(0).curve().orElseThrow().middle();
    return middle[middle.length - 1];
  }

  @Test
  void theChoiceOutlivesALongerList() {
    jobs.open(Jobs.TWO_HOLDS);
    model.chosenProperty().set(model.rows().get(1));
    model.showUnlikelyProperty().set(true);
    assertEquals(HandMadeRanking.IDS.get(1), chosenId(model));
    assertEquals(6, model.rows().size());
    assertEquals(1, model.unlikelyProperty().get());
  }

  @Test
  void notesHaveAssumptionsThenFiles() {
    jobs.open(Jobs.TWO_HOLDS);
    assertTrue(model.notes().get(0).startsWith("Hose elasticity"));
    assertTrue(
        model.notes().stream().anyMatch(note -> note.startsWith("no clamps:")),
        model.notes()::toString);
  }

  @Test
  void theRankingIsSavedAsCsvOrJsonByItsName() throws IOException {
    model.save(folder.resolve("a.csv"));
    assertTrue(jobs.problemProperty().get().contains("no ranking yet"));
    jobs.open(Jobs.TWO_HOLDS);
    model.save(folder.resolve("a.csv"));
    model.save(folder.resolve("a.json"));
    assertTrue(Files.readString(folder.resolve("a.csv")).startsWith("# holdcurve-ranking/"));
    assertTrue(Files.readString(folder.resolve("a.json")).startsWith("{"));
  }

  @Test
  void everyRowCanBeHeard() {
    jobs.open(Jobs.TWO_HOLDS);
    assertEquals(
        "Check valve leaks back to the tank, at the pump outlet, 55 %,"
            + " 0.41 mL/min (0.31 to 0.53), about 12 drops a minute",
        model.rows().get(0).spoken(PressureUnit.BAR));
    assertEquals("", model.rows().get(3).size(PressureUnit.BAR));
  }
}
