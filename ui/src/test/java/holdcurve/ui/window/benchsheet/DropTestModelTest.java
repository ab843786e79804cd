package holdcurve.ui.window.benchsheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.bench.droptest.DropReport;
import holdcurve.bench.droptest.InjectorDrop;
import holdcurve.common.message.PressureUnit;
import holdcurve.file.JobReader;
import holdcurve.ui.window.HandMadeRanking;
import holdcurve.ui.window.job.OpenJobModel;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** A drop test typed and read, without a screen. */
class DropTestModelTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");

  private final OpenJobModel jobs =
      new OpenJobModel(JobReader::read, HandMadeRanking::new, Runnable::run, Runnable::run);
  private final DropTestModel model = new DropTestModel(jobs);

  private DropReport report() {
    return model.reportProperty().get();
  }

  private void type(int row, String before, String after) {
    model.rows().get(row).before().set(before);
    model.rows().get(row).after().set(after);
  }

  @Test
  void anEmptyTestHasTwoRoundsAndAWatchWithoutFiring() {
    assertEquals(13, model.rows().size());
    assertEquals(DropRow.IDLE, model.rows().get(12).injector().get());
    assertNull(report());
    model.addRound();
    assertEquals(19, model.rows().size());
    assertEquals("6", model.rows().get(17).injector().get());
    assertEquals(DropRow.IDLE, model.rows().get(18).injector().get());
  }

  /** The third passes 23 per cent less, by the drops: 0.50 bar against 0.65. */
  @Test
  void whatIsTypedIsJudgedAtOnce() {
    String[] befores = {"2,00", "1,95", "2,05", "1,90", "2,00", "1,95"};
    String[] afters = {"1,35", "1,30", "1,55", "1,25", "1,35", "1,30"};
    for (int i = 0; i < 12; i++) {
      type(i, befores[i % 6], afters[i % 6]);
    }
    assertEquals("", model.troubleProperty().get());
    InjectorDrop low = report().injectors().get(0);
    assertEquals("3", low.id());
    assertEquals(-0.23, low.departure().middle(), 0.1);
  }

  @Test
  void aSlipIsNamedByInjector() {
    type(0, "2.00", "1.40");
    type(1, "2.00", "2.40");
    String trouble = model.troubleProperty().get();
    assertTrue(trouble.startsWith("Injector 2"), trouble);
    assertTrue(trouble.contains("not below"), trouble);
    type(1, "2.00", "1.40");
    assertEquals("", model.troubleProperty().get());
  }

  @Test
  void aFileIsShownAndJudgedAsTheCommandDoes() {
    model.open(SCENARIOS.resolve("bench/drops-six-times.csv"));
    assertEquals("1.30", model.rows().get(0).after().get());
    assertTrue(report().verdict().get(0).toString().startsWith("Injector 3 is low: -17 %"));
  }

  @Test
  void readingsFollowTheUnitAndTheAnswerStays() {
    model.open(SCENARIOS.resolve("bench/drops-six-times.csv"));
    DropReport before = report();
    jobs.pressures().unitProperty().set(PressureUnit.KPA);
    assertEquals("130", model.rows().get(0).after().get());
    assertEquals("5", model.form().step().get());
    model.rows().get(0).after().set("131");
    model.rows().get(0).after().set("130");
    assertEquals(
        before.injectors().get(0).departure().middle(),
        report().injectors().get(0).departure().middle(),
        1e-6);
  }

  @Test
  void flowsAreGivenWhereTheCircuitIsKnown() {
    model.open(SCENARIOS.resolve("bench/drops-six-times.csv"));
    assertTrue(report().injectors().get(0).flow().isEmpty());
    jobs.open(SCENARIOS.resolve("rail-loss.job.json"));
    assertTrue(report().injectors().get(0).flow().isPresent());
  }
}
