package holdcurve.ui.window.holdtests;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.message.PressureUnit;
import holdcurve.file.JobReader;
import holdcurve.record.finding.DropCount;
import holdcurve.record.finding.JointLook;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.log.Reading;
import holdcurve.ui.window.HandMadeRanking;
import holdcurve.ui.window.Jobs;
import holdcurve.ui.window.job.CircuitTemplates;
import holdcurve.ui.window.job.JobEdits;
import holdcurve.ui.window.job.OpenJobModel;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** The page without a screen. */
class HoldTestsModelTest {
  private final OpenJobModel jobs =
      new OpenJobModel(JobReader::read, HandMadeRanking::new, Runnable::run, Runnable::run);
  private double now = 1000;
  private final HoldTestsModel model =
      new HoldTestsModel(jobs, () -> now, () -> LocalDate.of(2026, 4, 11));

  @BeforeEach
  void begin() {
    jobs.begin(
        JobEdits.blank("New", CircuitTemplates.circuit(CircuitTemplates.all().get(0))), null);
  }

  private void at(double seconds, String typed) {
    now = 1000 + seconds;
    model.entry().typing();
    now += 4;
    assertTrue(model.entry().enter(typed), model.hold().hintProperty().get());
  }

  @Test
  void aReadingBelongsToTheMomentItsFirstDigitIsTyped() {
    model.entry().mark();
    at(0.3, "2.12");
    at(30, "1.98");
    now = 1060;
    model.entry().mark();
    at(63, "1.94?");
    assertEquals(
        List.of(
            Reading.of(0.3, 2.12e5),
            Reading.of(30, 1.98e5),
            new Reading(60, 1.94e5, Double.NaN, java.util.Optional.empty(), true)),
        model.readings());
    assertEquals("2026-04-11", model.hold().testProperty().get().date());
  }

  @Test
  void withoutTheWatchATimeIsNeeded() {
    assertFalse(model.entry().enter("1.85"));
    assertTrue(model.hold().hintProperty().get().contains("When was that?"));
    assertTrue(model.entry().enter("1:30 1.85"));
    assertFalse(model.entry().enter("nonsense"));
    assertEquals(List.of(Reading.of(90, 1.85e5)), model.readings());
  }

  @Test
  void aReadingTakenBackIsNoLongerSaidToBeTaken() {
    model.entry().enter("1:00 1.9");
    model.entry().enter("1:30 1.85");
    assertTrue(model.hold().hintProperty().get().startsWith("Taken: 1.85 bar at 1:30"));
    jobs.undo();
    assertEquals("", model.hold().hintProperty().get());
  }

  @Test
  void aSecondStartIsASecondHold() {
    model.details().clamp("feed-hose", true);
    model.entry().mark();
    at(1, "2.1");
    model.entry().finish();
    model.entry().mark();
    assertEquals(List.of("as it stands", "as it stands 2"), model.hold().testIds());
    assertEquals(Set.of("feed-hose"), model.hold().testProperty().get().clamped());
    now += 7;
    model.entry().clampsAreOn();
    assertEquals(7, model.hold().testProperty().get().clampTime());
    assertTrue(model.readings().isEmpty());
  }

  @Test
  void readingsAreCorrectedMarkedAndDeleted() {
    model.entry().enter("0 2.1");
    model.entry().enter("30 1.89");
    model.entry().enter("60 1.8");
    model.entry().startCorrecting(model.readings().get(1));
    assertEquals("0:30 1.89", model.entry().typed(model.readings().get(1)));
    assertTrue(model.entry().enter("0:31 1.98"));
    assertEquals(Reading.of(31, 1.98e5), model.readings().get(1));
    model.edits().toggleDoubt(model.readings().get(2));
    assertTrue(model.readings().get(2).doubtful());
    model.edits().delete(model.readings().get(0));
    assertEquals(2, model.readings().size());
    jobs.undo();
    jobs.undo();
    jobs.undo();
    assertEquals(Reading.of(30, 1.89e5), model.readings().get(1));
  }

  @Test
  void theMarkOfThePumpStopMovesAllReadings() {
    List.of("0 0.5", "10 2.1", "40 1.9", "70 1.8").forEach(model.entry()::enter);
    model.edits().movePumpStop(10);
    assertEquals(-10, model.readings().get(0).time());
    assertEquals(3, model.hold().testProperty().get().log().hold().size());
    assertEquals(1, model.plotProperty().get().buildUp());
    assertEquals(3, model.plotProperty().get().marks().size());
    model.showBuildUpProperty().set(true);
    assertEquals(4, model.plotProperty().get().marks().size());
    model.entry().enter("1:30 1.7");
    assertEquals(90, model.readings().get(4).time());
  }

  @Test
  void aPastedTableIsLookedAtBeforeItIsTaken() {
    model.intake().paste("t [mm:ss];p [kPa]\n0:00;212\n0:30;198,5\n1:00;194\n2:00;190\n");
    Preview preview = model.intake().previewProperty().get();
    assertTrue(
        preview.understood(model.pressures()).contains("Pressures in kPa."), preview::toString);
    assertEquals("0:30   1.99 bar", preview.sample(model.pressures()).get(1));
    assertTrue(model.readings().isEmpty());
    model.intake().take();
    assertEquals(4, model.readings().size());
    assertNull(model.intake().previewProperty().get());
    model.intake().paste("this is no table");
    assertNull(model.intake().previewProperty().get());
    assertFalse(jobs.problemProperty().get().isEmpty());
  }

  @Test
  void whatCanBeSaidGrowsWithTheReadings() {
    assertEquals("Too early to say", model.judgementProperty().get().word());
    List.of("0 2.12", "30 1.98", "60 1.94").forEach(model.entry()::enter);
    assertEquals("Too early to say", model.judgementProperty().get().word());
    assertTrue(model.plotProperty().get().curve().isPresent());
    List.of("2:00 1.9", "5:00 1.8", "9:00 1.66").forEach(model.entry()::enter);
    assertEquals("Sound so far", model.judgementProperty().get().word());
    List.of("9:30 0.8", "10:00 0.7").forEach(model.entry()::enter);
    assertEquals("Falls too far", model.judgementProperty().get().word());
  }

  @Test
  void pressuresAreTypedAndShownInTheUnitChosen() {
    jobs.pressures().unitProperty().set(PressureUnit.PSI);
    model.entry().enter("0 29");
    assertEquals(29 * 6894.757, model.readings().get(0).pressure(), 1e-6);
    assertEquals(PressureUnit.PSI, model.plotProperty().get().unit());
    assertEquals(29, model.plotProperty().get().marks().get(0).pressure(), 1e-9);
  }

  @Test
  void findingsAreNotedFromWhatWasTyped() {
    model
        .findings()
        .add(FindingForm.WET.finding("feed-hose", List.of(), model.pressures()).orElseThrow());
    model
        .findings()
        .add(
            FindingForm.DROPS
                .finding("injectors", List.of("3", "5"), model.pressures())
                .orElseThrow());
    assertEquals(
        List.of(JointLook.of("feed-hose", true), DropCount.ofAll("injectors", 3, 300)),
        jobs.jobProperty().get().findings());
    assertTrue(
        FindingForm.DRAWN_OFF
            .finding(null, List.of("2", "1.4", "2.0"), model.pressures())
            .isEmpty(),
        "the pressure can't rise");
    model.findings().remove(jobs.jobProperty().get().findings().get(0));
    assertEquals(1, jobs.jobProperty().get().findings().size());
  }

  @Test
  void aWipedJointIsNotedAsSuch() {
    assertEquals(
        Optional.of(JointLook.of("feed-hose", true).afterWiping()),
        FindingForm.WET_AGAIN.finding("feed-hose", List.of(), model.pressures()));
    assertEquals(
        Optional.of(JointLook.of("feed-hose", false).afterWiping()),
        FindingForm.STILL_DRY.finding("feed-hose", List.of(), model.pressures()));
  }

  @Test
  void aHoldIsNamedAndTakenOut() {
    model.hold().rename("cold");
    assertEquals(List.of("cold"), model.hold().testIds());
    assertEquals("cold", model.hold().idProperty().get());
    model.hold().addTest("hold");
    model.hold().rename("cold");
    assertEquals(List.of("cold", "hold"), model.hold().testIds());
    model.hold().removeTest();
    assertEquals(List.of("cold"), model.hold().testIds());
    assertTrue(model.details().temperature("18,5"));
    assertEquals(291.65, model.hold().testProperty().get().fuelTemperature().getAsDouble(), 1e-9);
    assertFalse(model.details().temperature("hot"));
  }

  @Test
  void aDayIsOneThatThereIs() {
    assertTrue(model.details().date("2026-04-11"));
    for (String wrong : List.of("2026-02-30", "11.4.2026", "yesterday", "2026-4-11")) {
      assertFalse(model.details().date(wrong), wrong);
      assertTrue(model.hold().hintProperty().get().startsWith("Date:"));
      assertEquals("2026-04-11", model.hold().testProperty().get().date());
    }
    assertTrue(model.details().date(" "));
    assertEquals("", model.hold().testProperty().get().date());
    assertEquals("", model.hold().hintProperty().get());
  }

  @Test
  void noNeedleShowsMoreThanItsScale() {
    model.entry().mark();
    assertFalse(model.entry().enter("185"));
    assertEquals(
        "185 bar on a gauge to 4 bar? Type it again, or say on the right what scale the gauge has.",
        model.hold().hintProperty().get());
    assertFalse(model.entry().enter("4.5"));
    assertTrue(model.gauge().setRange("6"));
    assertTrue(model.entry().enter("4.5"));
    assertEquals(1, model.readings().size());
  }

  /** 1 psi is 6894.757 Pa: NIST Special Publication 811 (2008), appendix B.8. */
  @Test
  void theGaugeIsSetInTheUnitShown() {
    assertEquals("4", model.gauge().range());
    assertEquals("1.6", model.gauge().accuracyClass());
    assertEquals("0.02", model.gauge().step());
    jobs.pressures().unitProperty().set(PressureUnit.PSI);
    assertEquals("58.02", model.gauge().range());
    assertTrue(model.gauge().setRange("60"));
    assertTrue(model.gauge().setStep("0,5"));
    assertTrue(model.gauge().setAccuracyClass("2.5"));
    assertEquals(
        new GaugeSpec(60 * 6894.757, 0.025, 0.5 * 6894.757), jobs.jobProperty().get().gauge());
    assertFalse(model.gauge().setRange("0"));
    assertEquals(
        "Gauge: its scale ends at 14.5 psi to 580.2 psi.", model.hold().hintProperty().get());
    assertFalse(model.gauge().setStep("fine"));
    assertFalse(model.gauge().setAccuracyClass("16"));
    jobs.undo();
    assertEquals("1.6", model.gauge().accuracyClass());
  }

  @Test
  void theStepThatIsDueFollowsTheHold() {
    model.details().clamp("return-hose", true);
    assertEquals(
        HoldSteps.Stage.BEFORE, HoldSteps.stage(model.hold().testProperty().get(), false, false));
    assertEquals(
        HoldSteps.Stage.CLAMPING, HoldSteps.stage(model.hold().testProperty().get(), true, false));
    assertEquals(
        HoldSteps.Stage.READING, HoldSteps.stage(model.hold().testProperty().get(), true, true));
    assertTrue(
        HoldSteps.of(model.hold().testProperty().get()).stream()
            .anyMatch(step -> step.what().contains("clamp return-hose")));
  }

  @Test
  void anotherJobShowsItsOwnHolds() {
    model.entry().mark();
    jobs.open(Jobs.TWO_HOLDS);
    jobs.questions().answer(jobs.questions().askedProperty().get().answers().get(1));
    assertFalse(model.watch().runningProperty().get());
    assertEquals(List.of("return clamped", "no clamps"), model.hold().testIds());
    assertNotNull(model.plotProperty().get());
  }
}
