package holdcurve.ui.window.benchsheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.bench.droptest.DropReport;
import holdcurve.bench.droptest.InjectorDrop;
import holdcurve.common.message.PressureUnit;
import holdcurve.file.JobReader;
import holdcurve.record.finding.Finding;
import holdcurve.ui.window.HandMadeRanking;
import holdcurve.ui.window.job.OpenJobModel;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A drop test typed and read, without a screen. */
class DropTestModelTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");

  private final OpenJobModel jobs =
      new OpenJobModel(JobReader::read, HandMadeRanking::new, Runnable::run, Runnable::run);
  private final DropTestModel model =
      new DropTestModel(jobs, () -> java.time.LocalDate.of(2026, 11, 20));

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

  /** Bare readings, as a spreadsheet gives them: the form knows unit, step and times. */
  @Test
  void pastedReadingsTakeUnitAndSettingsFromTheForm() {
    jobs.pressures().unitProperty().set(PressureUnit.PSI);
    model.form().step().set("0.5");
    model.form().pulses().set("2");
    model.paste("1\t29,0\t19,5\n2\t28,5\t19,0\nidle\t29\t28,5\n");
    assertEquals("", jobs.problemProperty().get());
    assertEquals(3, model.rows().size());
    assertEquals(29 * 6894.757, report().test().firings().get(0).before(), 100);
    assertEquals(0.5 * 6894.757, report().test().resolution(), 1);
    assertEquals(2, report().test().shot().pulses());
    model.paste("1 2.00 1.30\n2 2.00");
    assertFalse(jobs.problemProperty().get().isEmpty());
    assertEquals(3, model.rows().size(), "nothing is lost by a bad paste");
  }

  @Test
  void identicalReadingsGiveIdenticalAnswers() {
    model.paste("1 2.00 1.35\n1 1.95 1.30\n2 1.95 1.30\n2 2.00 1.35\n3 2.00 1.45\n3 1.95 1.40");
    assertEquals(report().of("1").departure(), report().of("2").departure());
    assertEquals(report().of("1").lowest(), report().of("2").lowest(), 0);
  }

  @Test
  void anInjectorThatGoesOnFallingGoesIntoTheJobAsALeak() {
    jobs.open(SCENARIOS.resolve("rail-loss.job.json"));
    model.open(SCENARIOS.resolve("bench/drops-with-a-third-reading.csv"));
    assertTrue(
        report().verdict().get(0).toString().startsWith("Injector 5 doesn't shut"),
        report().verdict().toString());
    assertEquals(
        List.of("5"),
        report().injectors().stream()
            .filter(InjectorDrop::staysOpen)
            .map(InjectorDrop::id)
            .toList());
    int before = jobs.jobProperty().get().findings().size();
    model.takeResult();
    model.takeResult();
    List<Finding> findings = jobs.jobProperty().get().findings();
    assertEquals(before + 1, findings.size(), "not twice");
    assertEquals(
        "drop test: injector 5 not shutting after the firing; injector 2 passing less than the"
            + " others",
        findings.get(before).inWords());
    jobs.undo();
    jobs.undo();
    assertEquals(before, jobs.jobProperty().get().findings().size());
  }

  @Test
  void oneThatDoesNotMoveTheNeedleIsSaid() {
    model.paste("1 2.00 1.35\n2 1.95 1.95\n3 2.00 1.35\n1 1.95 1.30\n2 2.00 2.00\n3 1.95 1.30");
    assertTrue(
        report().verdict().get(0).toString().startsWith("Injector 2 doesn't move the needle"),
        report().verdict().toString());
    assertFalse(report().of("2").moves());
  }

  @Test
  void flowsAreGivenWhereTheCircuitIsKnown() {
    model.open(SCENARIOS.resolve("bench/drops-six-times.csv"));
    assertTrue(report().injectors().get(0).flow().isEmpty());
    jobs.open(SCENARIOS.resolve("rail-loss.job.json"));
    assertTrue(report().injectors().get(0).flow().isPresent());
  }
}
