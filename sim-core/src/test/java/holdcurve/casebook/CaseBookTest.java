package holdcurve.casebook;

import static org.junit.jupiter.api.Assertions.assertEquals;

import holdcurve.advice.check.CheckVerdict;
import holdcurve.inference.answer.Verdict;
import holdcurve.record.job.Holds;
import holdcurve.record.job.Repair;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a job counts for, from what it says and what was worked out about it. */
class CaseBookTest {
  private static final Path FILE = Path.of("car.job.json").toAbsolutePath();
  private static final Repair VALVE = repair("check-valve-seat");

  private static Repair repair(String fault) {
    return new Repair(LocalDate.of(2026, 4, 11), "check-valve", fault, "before", "");
  }

  private static CaseEntry entry(List<Repair> repairs, String... tests) {
    return CaseEntry.of(FILE, Holds.job(repairs, tests));
  }

  private static KnownAnswer answer(Verdict.Kind kind, CheckVerdict.Kind checkOrNull) {
    return new KnownAnswer(kind, true, "Check valve leaks", 0.72, Optional.ofNullable(checkOrNull));
  }

  private static CaseBook book(CaseEntry entry, Correction said) {
    return new CaseBook(List.of(entry), List.of(), Map.of(FILE, said));
  }

  @Test
  void aJobGoesFromHeldToProved() {
    assertEquals(JobState.HELD, entry(List.of(), "before").state());
    CaseEntry ranked = entry(List.of(), "before").with(answer(Verdict.Kind.LEAK, null));
    assertEquals(JobState.LEAKING, ranked.state());
    assertEquals(JobState.REPAIRED, entry(List.of(VALVE), "before").state());
    assertEquals(Proof.NOT_HELD, entry(List.of(VALVE), "before").proof());
    CaseEntry held = entry(List.of(VALVE), "before", "after");
    assertEquals(Proof.NOT_CHECKED, held.proof());
    CaseEntry proved = held.with(answer(Verdict.Kind.SOUND, CheckVerdict.Kind.HOLDS));
    assertEquals(JobState.PROVED, proved.state());
    assertEquals(Proof.PROVED, proved.proof());
    CaseEntry failed = held.with(answer(Verdict.Kind.LEAK, CheckVerdict.Kind.FAULTY));
    assertEquals(Proof.STILL_FAULTY, failed.proof());
  }

  @ParameterizedTest
  @CsvSource({"HOLDS, check-valve-seat, 1", "FAULTY, check-valve-seat, 0", "HOLDS, '', 0"})
  void oneRepairThatNamesAFaultAndIsProvedCounts(CheckVerdict.Kind check, String fault, int cases) {
    CaseEntry entry =
        entry(List.of(repair(fault)), "before", "after").with(answer(Verdict.Kind.SOUND, check));
    assertEquals(cases == 0 ? Map.of() : Map.of(fault, 1), book(entry, Correction.EMPTY).counts());
  }

  @Test
  void twoRepairsConfirmNothing() {
    CaseEntry entry =
        entry(List.of(VALVE, VALVE), "before", "after")
            .with(answer(Verdict.Kind.SOUND, CheckVerdict.Kind.HOLDS));
    assertEquals(Map.of(), book(entry, Correction.EMPTY).counts());
  }

  @Test
  void theUserHasTheLastWord() {
    CaseEntry entry =
        entry(List.of(VALVE), "before", "after")
            .with(answer(Verdict.Kind.SOUND, CheckVerdict.Kind.HOLDS));
    Correction other = Correction.EMPTY.withFault("injector-tip");
    assertEquals(Map.of("injector-tip", 1), book(entry, other).counts());
    assertEquals(Map.of(), book(entry, other.withFault(Correction.NONE)).counts());
    assertEquals(
        Map.of("check-valve-seat", 1), book(entry, other.withFault("").withCar("AB 1")).counts());
  }

  @Test
  void jobsOfOneCarAreFoundByWhatTheUserTyped() {
    Path other = Path.of("other.job.json").toAbsolutePath();
    CaseEntry one = entry(List.of(), "before 2025-04-11");
    CaseEntry next =
        new CaseEntry(other, "Blue one", "", one.facts(), 0, Optional.empty(), Optional.empty());
    assertEquals(List.of(), book(one, Correction.EMPTY).sameCar(one));
    CaseBook linked =
        new CaseBook(
            List.of(one, next),
            List.of(),
            Map.of(FILE, new Correction("", "AB 1"), other, new Correction("", "ab 1 ")));
    assertEquals(List.of(next), linked.sameCar(one));
  }

  @Test
  void searchingLooksForEveryWordAnywhere() {
    CaseEntry entry = entry(List.of(VALVE), "before 2026-04-10");
    CaseBook book = book(entry, new Correction("", "AB 1"));
    for (String found : List.of("", "INVENTED", "ab 1 valve", "2026-04", "hold again")) {
      CaseSelection selection = new CaseSelection(found, Optional.empty(), CaseSelection.Order.CAR);
      assertEquals(List.of(entry), selection.of(book), found);
    }
    assertEquals(
        List.of(),
        new CaseSelection("invented xy", Optional.empty(), CaseSelection.Order.CAR).of(book));
    assertEquals(
        List.of(),
        new CaseSelection("", Optional.of(JobState.SOUND), CaseSelection.Order.CAR).of(book));
  }
}
