package holdcurve.inference.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.oracle.Circuits;
import holdcurve.record.finding.DropCount;
import holdcurve.record.finding.Finding;
import holdcurve.record.finding.JointLook;
import holdcurve.record.finding.Moment;
import holdcurve.record.finding.ReferenceHoseLook;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.job.Repair;
import holdcurve.record.job.Upkeep;
import holdcurve.record.log.GaugeLog;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What findings come to together: which stand, which are to be asked about. */
class FindingFactsTest {
  private static final LocalDate MONDAY = LocalDate.of(2026, 4, 13);
  private static final LocalDate FRIDAY = LocalDate.of(2026, 4, 17);
  private static final JointLook WET = JointLook.of("feed-hose", true);
  private static final JointLook DRY = JointLook.of("feed-hose", false);

  private static Job job(Finding... findings) {
    List<HoldTest> tests =
        List.of(
            HoldTest.of("a", Set.of(), new GaugeLog("none", List.of(), 0)),
            HoldTest.of("b", Set.of(), new GaugeLog("none", List.of(), 0)));
    return new Job("invented", Circuits.SIX_CYLINDER, GaugeSpec.usual(), tests, Map.of(), List.of())
        .withFindings(List.of(findings));
  }

  private static FindingFacts facts(Finding... findings) {
    return FindingFacts.of(job(findings));
  }

  private static int contradictions(Finding... findings) {
    return facts(findings).contradictions().size();
  }

  private static JointLook during(String test, boolean wet) {
    Moment when = new Moment(Optional.of(test), OptionalDouble.empty());
    return new JointLook(Optional.of("feed-hose"), Optional.empty(), wet, when);
  }

  @Test
  void wetAndDryAtOneTimeIsAskedAbout() {
    FindingFacts facts = facts(WET, JointLook.allDry());
    FindingFacts.Contradiction pair = facts.contradictions().get(0);
    assertEquals(WET, pair.one());
    assertEquals(JointLook.allDry(), pair.other());
    assertEquals("\"feed hose wet\" against \"every joint dry\"", pair.message().toString());
    assertEquals(List.of(), facts.used());
    assertTrue(facts.wetJoints().get(0).disputed());
    assertEquals(1, contradictions(WET, DRY));
    assertEquals(1, contradictions(WET.on(MONDAY), DRY.on(MONDAY)));
    assertEquals(1, contradictions(during("a", true), during("a", false)));
    assertEquals(1, contradictions(WET.afterWiping(), DRY.afterWiping()));
    assertEquals(1, contradictions(hose(true), hose(false)));
  }

  @Test
  void anotherPlaceOrAnotherTimeContradictsNothing() {
    assertEquals(0, contradictions(WET, JointLook.of("ring-hoses", false)));
    assertEquals(0, contradictions(WET.on(MONDAY), DRY.on(FRIDAY)));
    assertEquals(0, contradictions(DRY.on(MONDAY), WET.on(FRIDAY)));
    assertEquals(0, contradictions(during("a", true), during("b", false)));
    JointLook atRail =
        new JointLook(Optional.of("feed-hose"), Optional.of("rail"), true, Moment.PRIMED);
    JointLook atFilter =
        new JointLook(Optional.of("feed-hose"), Optional.of("filter-outlet"), false, Moment.PRIMED);
    assertEquals(0, contradictions(atRail, atFilter));
  }

  /** A day has a morning and an evening. */
  @Test
  void aRepairOnTheDayParts() {
    Repair repair = new Repair(MONDAY, "feed-hose", "", "", "");
    Job plain = job(WET.on(MONDAY), DRY.on(MONDAY));
    Upkeep usual = plain.upkeep();
    Job repaired = plain.withUpkeep(usual.withRepair(repair));
    assertEquals(1, FindingFacts.of(plain).contradictions().size());
    assertEquals(List.of(), FindingFacts.of(repaired).contradictions());
  }

  /** What the advice asks for: wiped and still dry, the fuel was spilt. */
  @Test
  void aJointThatStaysDryAfterWipingIsCleared() {
    FindingFacts facts = facts(WET, DRY.afterWiping());
    assertEquals(List.of(), facts.contradictions());
    assertEquals(List.of(), facts.wetJoints());
    assertEquals(List.of(DRY.afterWiping()), facts.used());
  }

  @Test
  void anEarlierDryLookSaysNothingOfNow() {
    FindingFacts facts = facts(JointLook.allDry().on(MONDAY), WET.on(FRIDAY));
    assertEquals(List.of(WET.on(FRIDAY)), facts.used());
    assertEquals(1, facts.wetJoints().size());
  }

  @Test
  void aWetJointStaysWetUntilItWasRepairedOrWiped() {
    assertEquals(1, facts(WET.on(MONDAY), DRY.on(FRIDAY)).wetJoints().size());
    assertEquals(0, facts(WET.on(MONDAY), DRY.afterWiping().on(FRIDAY)).wetJoints().size());
    Job job = job(WET.on(MONDAY), DRY.on(FRIDAY));
    Repair repair = new Repair(FRIDAY, "feed-hose", "", "", "");
    Job repaired = job.withUpkeep(job.upkeep().withRepair(repair));
    assertEquals(List.of(), FindingFacts.of(repaired).wetJoints());
  }

  @Test
  void aPartIsListedOnceByItsStrongerLook() {
    FindingFacts facts = facts(WET, WET.afterWiping());
    assertEquals(1, facts.wetJoints().size());
    assertTrue(facts.wetJoints().get(0).wiped());
    assertFalse(facts.wetJoints().get(0).disputed());
    assertEquals("feed hose", facts.wetJoints().get(0).name());
  }

  @Test
  void fuelInTheThinHoseIsAFact() {
    assertTrue(facts(hose(true)).fuelInThinHose().isPresent());
    assertTrue(facts(hose(false)).fuelInThinHose().isEmpty());
  }

  /** 27 drops in three minutes are 0.3 mL/min, a hundred times a sound weep; 2 are chance. */
  @Test
  void onlyACountWellAboveTheWeepIsADrip() {
    FindingFacts facts =
        facts(
            DropCount.ofOne("injectors", 1, 2, 180),
            DropCount.ofOne("injectors", 4, 27, 180),
            DropCount.ofAll("cold-start-injector", 90, 180));
    assertEquals(
        List.of("cold start injector", "injectors"),
        facts.drips().stream().map(FindingFacts.Drip::name).toList());
    FindingFacts.Drip fourth = facts.drips().get(1);
    assertEquals(OptionalInt.of(4), fourth.number());
    assertEquals(27, fourth.drops());
    assertEquals(3, fourth.minutes());
  }

  private static ReferenceHoseLook hose(boolean fuel) {
    return new ReferenceHoseLook(fuel, Moment.PRIMED);
  }
}
