package holdcurve.advice.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.file.JobReader;
import holdcurve.inference.answer.Verdict;
import holdcurve.record.job.Job;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class BuildUpLogTest {
  private static List<String> notes(String scenario, Verdict.Kind kind) {
    Path file =
        Path.of(System.getProperty("holdcurve.root", ".."), "scenarios", scenario + ".job.json");
    Job job = JobReader.read(file);
    return BuildUpLog.notes(job, new Verdict(kind, ""), List.of());
  }

  @Test
  void isAdvisedWhereOnlyHoldsWereReadAndNoLeakStandsOut() {
    List<String> notes = notes("acceptable-fall", Verdict.Kind.SOUND);
    assertEquals(1, notes.size());
    assertTrue(notes.get(0).contains("film gauge and stopwatch"), notes.get(0));
    assertEquals(1, notes("acceptable-fall", Verdict.Kind.OPEN).size());
  }

  @Test
  void isNotAdvisedWhereALeakStandsOut() {
    assertEquals(List.of(), notes("check-valve", Verdict.Kind.LEAK));
  }

  @Test
  void isNotAdvisedWhereItWasDone() {
    assertEquals(List.of(), notes("blocked-return", Verdict.Kind.OPEN));
  }
}
