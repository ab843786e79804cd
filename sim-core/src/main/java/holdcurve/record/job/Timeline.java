package holdcurve.record.job;

import holdcurve.common.input.InputException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The tests of a job in sessions: a new one begins after each repair, and where more than {@value
 * #SAME_STATE} days lie between two tests. The order of the tests in the job is the order in which
 * they were done.
 *
 * @param earlier sessions before the one that is checked, oldest first
 * @param checked the session that is checked
 * @param repair the last repair before it, if there was one
 */
public record Timeline(List<Session> earlier, Session checked, Optional<Repair> repair) {
  /** Days over which a circuit that nobody touched is taken to stay as it is: assumed. */
  private static final int SAME_STATE = 14;

  public Timeline {
    earlier = List.copyOf(earlier);
  }

  /** Checks the last session. */
  public static Timeline of(Job job) {
    List<Session> sessions = sessions(job);
    int last = sessions.size() - 1;
    return new Timeline(
        sessions.subList(0, last), sessions.get(last), repairBefore(job, sessions.get(last)));
  }

  /**
   * Checks one test alone.
   *
   * @throws InputException if the job has no such test
   */
  public static Timeline of(Job job, String testId) {
    List<Session> sessions = sessions(job);
    for (int i = 0; i < sessions.size(); i++) {
      for (HoldTest test : sessions.get(i).tests()) {
        if (test.id().equals(testId)) {
          Session alone = new Session(sessions.get(i).day(), List.of(test));
          return new Timeline(sessions.subList(0, i), alone, repairBefore(job, alone));
        }
      }
    }
    throw InputException.at(
        "command line",
        "--test " + testId,
        "the job has no such hold test",
        "use one of " + String.join(", ", job.tests().stream().map(HoldTest::id).toList()));
  }

  /**
   * All sessions of a job, oldest first; tests without readings are left out.
   *
   * @throws InputException if no test has readings, or tests and repairs can't be put in order
   */
  public static List<Session> sessions(Job job) {
    List<HoldTest> tests = job.tests().stream().filter(t -> t.log().holdSpan() > 0).toList();
    if (tests.isEmpty()) {
      throw InputException.at(
          job.title(), "tests", "no hold test has readings", "read the gauge, or import a log");
    }
    List<Session> sessions = new ArrayList<>();
    List<HoldTest> open = new ArrayList<>();
    for (HoldTest test : tests) {
      HoldTest last = open.isEmpty() ? test : open.get(open.size() - 1);
      if (isLater(last, test) || repairBetween(job, last, test)) {
        sessions.add(session(open));
        open.clear();
      }
      open.add(test);
    }
    sessions.add(session(open));
    return sessions;
  }

  /**
   * The last repair that no hold followed yet; empty where one did, or nothing was repaired.
   *
   * @throws InputException as {@link #sessions}
   */
  public static Optional<Repair> unproved(Job job) {
    if (job.upkeep().repairs().isEmpty()) {
      return Optional.empty();
    }
    List<HoldTest> last = of(job).checked().tests();
    return job.upkeep().repairs().stream()
        .filter(repair -> !isBefore(job, repair, last.get(last.size() - 1)))
        .reduce((first, second) -> second);
  }

  /** What to do about a repair that no hold followed yet. */
  public static String holdAgain(Repair repair) {
    return "Nothing was held since the repair of " + repair.date() + ". Hold again, then check.";
  }

  private static Session session(List<HoldTest> tests) {
    return new Session(tests.stream().flatMap(t -> t.day().stream()).findFirst(), tests);
  }

  private static boolean isLater(HoldTest before, HoldTest test) {
    return test.day().isPresent()
        && before.day().isPresent()
        && test.day().get().isAfter(before.day().get().plusDays(SAME_STATE));
  }

  private static boolean repairBetween(Job job, HoldTest before, HoldTest test) {
    return job.upkeep().repairs().stream()
        .anyMatch(repair -> !isBefore(job, repair, before) && isBefore(job, repair, test));
  }

  private static Optional<Repair> repairBefore(Job job, Session session) {
    return repairBefore(job, session.tests().get(0));
  }

  /** The last repair before a test. */
  private static Optional<Repair> repairBefore(Job job, HoldTest test) {
    return job.upkeep().repairs().stream()
        .filter(repair -> isBefore(job, repair, test))
        .reduce((first, second) -> second);
  }

  /**
   * Whether the tests of a job were done after something was repaired.
   *
   * @throws InputException if tests and repairs can't be put in order
   */
  public static boolean isAfterRepair(Job job) {
    return !job.tests().isEmpty()
        && !job.upkeep().repairs().isEmpty()
        && repairBefore(job, job.tests().get(0)).isPresent();
  }

  /** Whether a repair was done before a test. */
  private static boolean isBefore(Job job, Repair repair, HoldTest test) {
    if (!repair.afterTest().isEmpty()) {
      List<String> ids = job.tests().stream().map(HoldTest::id).toList();
      return ids.indexOf(test.id()) > ids.indexOf(repair.afterTest());
    }
    if (test.day().isEmpty() || test.day().get().equals(repair.date())) {
      throw InputException.at(
          job.title(),
          "repairs",
          test.day().isEmpty()
              ? "the test '" + test.id() + "' has no date to set beside the repair's"
              : "the test '" + test.id() + "' and the repair are of the same day",
          "say with 'after_test' which test was the last before the repair");
    }
    return test.day().get().isAfter(repair.date());
  }
}
