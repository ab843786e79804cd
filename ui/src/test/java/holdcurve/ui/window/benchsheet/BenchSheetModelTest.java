package holdcurve.ui.window.benchsheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.bench.flowsheet.BenchReport;
import holdcurve.bench.flowsheet.Standing;
import holdcurve.common.message.PressureUnit;
import holdcurve.file.JobReader;
import holdcurve.ui.window.HandMadeRanking;
import holdcurve.ui.window.job.OpenJobModel;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class BenchSheetModelTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");
  private static final LocalDate TODAY = LocalDate.of(2026, 11, 20);

  private final OpenJobModel jobs =
      new OpenJobModel(JobReader::read, HandMadeRanking::new, Runnable::run, Runnable::run);
  private final BenchSheetModel model = new BenchSheetModel(jobs, () -> TODAY);

  private void type(int row, SheetColumn column, String text) {
    model.rows().get(row).cell(column).set(text);
  }

  private void typeFlows(String... flows) {
    for (int i = 0; i < flows.length; i++) {
      type(i, SheetColumn.BEFORE, flows[i]);
    }
  }

  private BenchReport report() {
    return model.reportProperty().get();
  }

  @Test
  void anEmptySheetSaysNothing() {
    assertEquals(6, model.rows().size());
    assertNull(report());
    assertEquals("", model.troubleProperty().get());
  }

  @Test
  void whatIsTypedIsJudgedAtOnce() {
    typeFlows("180", "181", "150,5", "179", "182", "180");
    assertEquals(Standing.FAR_OUT, report().injectors().get(2).standing());
    assertTrue(
        report().verdict().get(0).toString().startsWith("One of six is out of line: 3 (16 % low)"));
    type(2, SheetColumn.AFTER, "178");
    assertEquals(1, report().injectors().stream().filter(i -> i.after().isPresent()).count());
  }

  @Test
  void aSlipOfTheKeyIsNamedByInjectorAndTheOldAnswerStays() {
    typeFlows("180", "181");
    BenchReport before = report();
    type(1, SheetColumn.BEFORE, "18l");
    assertTrue(
        model.troubleProperty().get().startsWith("Injector 2, flow before cleaning: found \"18l\""),
        model.troubleProperty().get());
    assertEquals(before, report());
    type(1, SheetColumn.BEFORE, "182");
    assertEquals("", model.troubleProperty().get());
  }

  @Test
  void aSheetIsReadWithAllItHolds() {
    model.open(SCENARIOS.resolve("bench/six-as-they-came.bench.json"));
    assertEquals("243", model.rows().get(0).text(SheetColumn.BEFORE));
    assertEquals("2", model.pulseProperty().get());
    assertTrue(report().injectors().get(0).now().line().isPresent(), "four pulse widths");
    type(0, SheetColumn.COIL, "2.5");
    assertTrue(report().injectors().get(0).now().line().isEmpty(), "the table shows one");
  }

  @Test
  void aPastedTableIsRead() {
    model.paste("pressure_bar;2,5\nInjector;Static flow (mL/min)\nA1;238,5\nA2;247\n");
    assertEquals(2, model.rows().size());
    assertEquals("238.5", model.rows().get(0).text(SheetColumn.BEFORE));
    model.paste("nothing of the kind");
    assertTrue(jobs.problemProperty().get().startsWith("pasted text"));
    assertEquals(2, model.rows().size());
  }

  @Test
  void aPastedTableTakesPressureAndFluidFromTheForm() {
    jobs.pressures().unitProperty().set(PressureUnit.PSI);
    model.pressureProperty().set("43.5");
    model.fluidProperty().set("calibration-fluid");
    model.paste("Injector\tbefore static mL/min\tafter static mL/min\n1\t171,5\t183\n2\t170\t\n");
    assertEquals("", jobs.problemProperty().get());
    assertEquals(43.5 * 6894.757, report().sheet().benchAfter().point().pressure(), 50);
    assertEquals("calibration-fluid", report().sheet().benchAfter().point().fluid().id());
    assertEquals("171.5", model.rows().get(0).text(SheetColumn.BEFORE));
    assertEquals("183", model.rows().get(0).text(SheetColumn.AFTER));
  }

  @Test
  void beforeAndAfterAreKeptWhenTheTableIsChangedAndSaved(@TempDir Path folder) {
    model.open(SCENARIOS.resolve("bench/six-before-and-after.csv"));
    assertEquals("streaky", model.rows().get(1).text(SheetColumn.SPRAY_BEFORE));
    assertEquals("6", model.rows().get(3).text(SheetColumn.DROPS_BEFORE));
    assertEquals("3", model.rows().get(3).text(SheetColumn.DROPS_AFTER));
    type(3, SheetColumn.MARK, "B03");
    assertEquals("", model.troubleProperty().get());
    assertEquals("Six injectors, before and after cleaning (invented)", report().sheet().title());
    assertTrue(report().flowLeft().isPresent(), "what the maker states has no field, but stays");
    assertEquals(
        3.0, report().injectors().get(3).before().get().readings().drops().get().perMinute(), 0);
    Path file = folder.resolve("set.csv");
    model.save(file);
    model.clear();
    assertNull(report(), "saved, so it is not asked about");
    model.open(file);
    assertEquals("B03", model.rows().get(3).text(SheetColumn.MARK));
    assertEquals("streaky", model.rows().get(1).text(SheetColumn.SPRAY_BEFORE));
  }

  @Test
  void earlierSheetsGiveAHistory() {
    model.open(SCENARIOS.resolve("bench/six-before-and-after.csv"));
    assertTrue(model.history().isEmpty());
    model.addEarlier(SCENARIOS.resolve("bench/six-a-year-before.csv"));
    assertEquals(6, model.history().orElseThrow().lines().size());
  }

  @Test
  void theSheetGoesIntoTheReportOnlyIfTickedAndForThisJob() {
    jobs.open(SCENARIOS.resolve("rail-loss.job.json"));
    model.open(SCENARIOS.resolve("bench/six-before-and-after.csv"));
    assertNull(jobs.reportedSheetProperty().get());
    model.inReportProperty().set(true);
    assertEquals(report(), jobs.reportedSheetProperty().get());
    jobs.open(SCENARIOS.resolve("check-valve.job.json"));
    assertNull(jobs.reportedSheetProperty().get());
  }

  @Test
  void dropsGoIntoTheJobAndCanBeTakenBack() {
    jobs.open(SCENARIOS.resolve("rail-loss.job.json"));
    model.open(SCENARIOS.resolve("bench/six-before-and-after.csv"));
    int before = jobs.jobProperty().get().findings().size();
    model.takeDrops();
    assertEquals(before + 6, jobs.jobProperty().get().findings().size());
    assertEquals(2e5, report().point().pressure(), 1, "at the circuit's set pressure");
    model.takeDrops();
    assertEquals(before + 6, jobs.jobProperty().get().findings().size(), "not twice");
    jobs.undo();
    assertEquals(before, jobs.jobProperty().get().findings().size());
  }

  @Test
  void dropsWithoutAJobAreRefusedInASentence() {
    model.open(SCENARIOS.resolve("bench/six-before-and-after.csv"));
    model.takeDrops();
    assertFalse(jobs.problemProperty().get().isEmpty());
    assertNotNull(report());
  }
}
