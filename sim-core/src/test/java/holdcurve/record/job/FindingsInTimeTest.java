package holdcurve.record.job;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.record.finding.Finding;
import holdcurve.record.finding.JointLook;
import holdcurve.record.finding.Moment;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class FindingsInTimeTest {
  private static final List<Repair> REPAIR =
      List.of(new Repair(LocalDate.of(2026, 4, 11), "check-valve", "", "b", ""));

  private static Finding on(String day) {
    return JointLook.allDry().on(LocalDate.parse(day));
  }

  private static Finding during(String test) {
    return new JointLook(
        Optional.empty(),
        Optional.empty(),
        false,
        new Moment(Optional.of(test), OptionalDouble.empty()));
  }

  private static Job repaired(Finding... findings) {
    return Holds.job(REPAIR, "a 2025-04-26", "b 2026-04-10", "c 2026-04-11")
        .withFindings(List.of(findings));
  }

  private static void sorts(Job job, List<Finding> checked, List<Finding> before) {
    FindingsInTime sorted = new FindingsInTime(job, Timeline.of(job));
    assertEquals(checked, sorted.checked());
    assertEquals(before, sorted.before());
  }

  @Test
  void aDateTellsBeforeTheRepairFromAfterIt() {
    Finding then = on("2026-04-10");
    Finding now = on("2026-04-12");
    sorts(repaired(then, now), List.of(now), List.of(then));
    assertEquals(List.of(now), CurrentTests.of(repaired(then, now)).findings());
  }

  @Test
  void theTestItNamesTellsOnTheDayOfTheRepair() {
    Finding now = during("c");
    Finding then = during("b");
    sorts(repaired(now, then), List.of(now), List.of(then));
    assertEquals(List.of(now), CurrentTests.of(repaired(now, then)).findings());
  }

  @Test
  void whatLastYearShowedIsNotHeldAgainstThisSpring() {
    sorts(repaired(on("2025-04-26"), during("a")), List.of(), List.of());
  }

  @Test
  void ofTheDayOfTheRepairItIsTakenToBeFromBeforeAndSaid() {
    Job job = repaired(on("2026-04-11"));
    sorts(job, List.of(), List.of(on("2026-04-11")));
    List<String> notes = new FindingsInTime(job, Timeline.of(job)).notes();
    assertTrue(notes.toString().contains("on the day of the repair"), notes::toString);
    assertEquals(1, notes.size());
  }

  @Test
  void withoutADateItIsTakenToBeFromBeforeAndSaid() {
    Job job = repaired(JointLook.allDry());
    sorts(job, List.of(), job.findings());
    List<String> notes = new FindingsInTime(job, Timeline.of(job)).notes();
    assertEquals(
        List.of("What was seen and counted without a date was taken to be from before."), notes);
  }

  @Test
  void whereNothingCameBeforeAllBelongsToTheOneSession() {
    Job job = Holds.job(List.of(), "a 2026-04-10").withFindings(List.of(JointLook.allDry()));
    assertEquals(job.findings(), new FindingsInTime(job, Timeline.of(job)).checked());
  }

  @Test
  void anOlderTestIsCheckedWithWhatWasFoundThen() {
    Job job = repaired(on("2025-04-26"), on("2026-04-10"), on("2026-04-12"));
    assertEquals(
        List.of(on("2025-04-26")), new FindingsInTime(job, Timeline.of(job, "a")).checked());
  }
}
