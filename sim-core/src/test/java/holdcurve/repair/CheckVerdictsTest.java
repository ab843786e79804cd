package holdcurve.repair;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.circuit.Unit;
import holdcurve.infer.FaultSize;
import holdcurve.infer.Interval;
import holdcurve.infer.Ranking;
import holdcurve.infer.Suspect;
import holdcurve.infer.Verdict;
import holdcurve.job.HoldTest;
import holdcurve.job.Holds;
import holdcurve.job.Job;
import holdcurve.job.Repair;
import holdcurve.job.Timeline;
import holdcurve.repair.CheckVerdict.Kind;
import holdcurve.saying.PressureUnit;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What is said of which probabilities and readings. */
class CheckVerdictsTest {
  private static final double[] GOOD = {2.02, 1.94, 1.9, 1.86, 1.82, 1.8, 1.78};

  private static Suspect suspect(String id, double probability, Optional<FaultSize> size) {
    return new Suspect(
        id, "Seat leaks", "regulator", probability, 0, size, "", "Renew it.", List.of());
  }

  private static Ranking ranking(double sound, Verdict.Kind kind) {
    FaultSize leak =
        new FaultSize("leak at 2 bar", Unit.MILLILITRE_PER_MINUTE, new Interval(2e-9, 4e-9, 8e-9));
    return new Ranking(
        "invented",
        1,
        new Verdict(kind, ""),
        List.of(
            suspect(Suspect.NONE, sound, Optional.empty()),
            suspect("seat@regulator", 1 - sound, Optional.of(leak))),
        List.of(),
        2e5,
        List.of());
  }

  private static CheckVerdict verdict(double sound, double... bar) {
    return verdict(sound, Verdict.Kind.OPEN, List.of(), bar);
  }

  private static CheckVerdict verdict(
      double sound, Verdict.Kind kind, List<Repair> repairs, double... bar) {
    HoldTest test = Holds.hold("after", "2026-04-11", bar);
    HoldTest before = Holds.hold("before", "2026-04-10", bar);
    Job job = Holds.job(repairs, List.of(before, test));
    Ranking ranking = ranking(sound, kind);
    return new CheckVerdicts(
            job,
            Timeline.of(job),
            ranking,
            LeakMixture.of(ranking),
            List.of(PassMark.of(test, job.upkeep().pass(), job.gauge())))
        .verdict();
  }

  @Test
  void aGoodHoldHolds() {
    CheckVerdict verdict = verdict(0.93, GOOD);
    assertEquals(Kind.HOLDS, verdict.kind());
    assertEquals(
        "Holds as expected (93 %): hose stretch, temperature and the weep of sound seats explain"
            + " the fall. If anything leaks at all, it is less than 0.48 mL/min.",
        verdict.sentence());
  }

  @Test
  void aLeakIsSizedAndPlaced() {
    Repair repair = new Repair(LocalDate.of(2026, 4, 11), "damper", "", "before", "");
    CheckVerdict verdict =
        verdict(0.02, Verdict.Kind.LEAK, List.of(repair), 2, 1.8, 1.6, 1.4, 1.2, 1);
    assertEquals(Kind.FAULTY, verdict.kind());
    assertEquals(
        "Still loses 0.24 mL/min at 2 bar (90 % range 0.12 to 0.48), most likely at regulator: seat"
            + " leaks (98 %).",
        verdict.sentence());
    assertTrue(
        verdict.words().in(PressureUnit.KPA).startsWith("Still loses 0.24 mL/min at 200 kPa"));
    assertEquals("Renew it.", verdict.next());
  }

  @Test
  void whatIsNotSettledIsNotSaid() {
    assertEquals(Kind.CANNOT_SAY, verdict(0.5, GOOD).kind());
    assertEquals("Hold longer, and log the fuel temperature.", verdict(0.5, GOOD).next());
  }

  @Test
  void aShortHoldProvesNothing() {
    CheckVerdict verdict = verdict(0.95, 2.02, 1.98, 1.96);
    assertEquals(Kind.CANNOT_SAY, verdict.kind());
    assertTrue(verdict.sentence().contains("too short"), verdict.sentence());
    assertTrue(verdict.next().contains("at least 5 minutes"), verdict.next());
  }

  @Test
  void aLeakShowsInAShortHoldToo() {
    assertEquals(Kind.FAULTY, verdict(0.01, 2, 1.4, 0.9).kind());
  }

  @Test
  void aRisingNeedleProvesNothing() {
    CheckVerdict verdict = verdict(0.95, 2.0, 1.96, 1.98, 2.0, 2.02, 2.04);
    assertEquals(Kind.CANNOT_SAY, verdict.kind());
    assertTrue(verdict.sentence().contains("warmed"), verdict.sentence());
  }

  @Test
  void belowThePassLimitIsNoProof() {
    CheckVerdict verdict = verdict(0.9, 2.0, 1.85, 1.75, 1.68, 1.62, 1.56);
    assertEquals(Kind.CANNOT_SAY, verdict.kind());
    assertTrue(verdict.sentence().contains("below the pass limit"), verdict.sentence());
  }

  @Test
  void whatNothingExplainsIsNotJudged() {
    assertEquals(Kind.CANNOT_SAY, verdict(0.01, Verdict.Kind.UNEXPLAINED, List.of(), GOOD).kind());
  }
}
