package holdcurve.record.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.advice.check.RepairCheckService;
import holdcurve.common.input.InputException;
import holdcurve.common.input.NoAnswerException;
import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Which tests are checked, and which came before. */
class TimelineTest {
  private static Repair repair(String date, String afterTest) {
    return new Repair(LocalDate.parse(date), "check-valve", "", afterTest, "");
  }

  private static List<List<String>> sessions(Job job) {
    return Timeline.sessions(job).stream()
        .map(session -> session.tests().stream().map(test -> test.id()).toList())
        .toList();
  }

  @Test
  void withoutDatesAllTestsAreOneSession() {
    assertEquals(List.of(List.of("a", "b")), sessions(Holds.job(List.of(), "a", "b")));
  }

  @Test
  void aNewDateBeginsASession() {
    Job job = Holds.job(List.of(), "a 2025-04-26", "b 2026-04-10", "c 2026-04-10");
    assertEquals(List.of(List.of("a"), List.of("b", "c")), sessions(job));
    assertEquals(1, Timeline.of(job).earlier().size());
    assertTrue(Timeline.of(job).repair().isEmpty());
  }

  @Test
  void aRepairBeginsASession() {
    Job job = Holds.job(List.of(repair("2026-04-10", "a")), "a 2026-04-10", "b 2026-04-10");
    assertEquals(List.of(List.of("a"), List.of("b")), sessions(job));
    assertEquals("check-valve", Timeline.of(job).repair().orElseThrow().part());
    assertTrue(Timeline.of(job, "a").repair().isEmpty());
  }

  @Test
  void datesTellBeforeFromAfterWhereTheyCan() {
    Job job = Holds.job(List.of(repair("2026-04-11", "")), "a 2026-04-10", "b 2026-04-12");
    assertEquals(List.of(List.of("a"), List.of("b")), sessions(job));
  }

  @Test
  void whereDatesCannotTellItIsAsked() {
    Job sameDay = Holds.job(List.of(repair("2026-04-10", "")), "a 2026-04-10", "b 2026-04-10");
    String message = assertThrows(InputException.class, () -> Timeline.of(sameDay)).getMessage();
    assertTrue(message.contains("'a' and the repair are of the same day"), message);
    assertTrue(message.contains("after_test"), message);
    Job undated = Holds.job(List.of(repair("2026-04-10", "")), "a", "b");
    assertThrows(InputException.class, () -> Timeline.of(undated));
  }

  @Test
  void aRepairAfterTheLastHoldIsNotProvedAndNotJudgedByTheHoldsBefore() {
    Job before = Holds.job(List.of(repair("2026-04-10", "b")), "a 2026-04-10", "b 2026-04-10");
    assertEquals("b", Timeline.unproved(before).orElseThrow().afterTest());
    RepairCheckService service = RepairCheckService.of(new FaultCatalogue(List.of(), List.of()));
    String message =
        assertThrows(
                NoAnswerException.class,
                () -> service.check(before, Optional.empty(), 1, Progress.NONE))
            .getMessage();
    assertEquals(
        "Nothing was held since the repair of 2026-04-10. Hold again, then check.", message);
    Job after = Holds.job(List.of(repair("2026-04-10", "a")), "a 2026-04-10", "b 2026-04-10");
    assertTrue(Timeline.unproved(after).isEmpty());
  }

  @Test
  void anUnknownTestIsRefused() {
    Job job = Holds.job(List.of(), "a", "b");
    String message = assertThrows(InputException.class, () -> Timeline.of(job, "c")).getMessage();
    assertTrue(message.endsWith("use one of a, b."), message);
  }
}
