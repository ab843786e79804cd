package holdcurve.ui.window.job;

import holdcurve.physics.circuit.Circuit;
import holdcurve.record.finding.DropCount;
import holdcurve.record.finding.Finding;
import holdcurve.record.finding.JointLook;
import holdcurve.record.finding.Moment;
import holdcurve.record.finding.ReferenceHoseLook;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.log.GaugeLog;
import holdcurve.record.log.Reading;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Set;
import java.util.function.UnaryOperator;

/** Changes of a job, each a new job. */
public final class JobEdits {
  /** What the first test of a new job is called. */
  public static final String FIRST_TEST = "as it stands";

  private JobEdits() {}

  /** A new job about a circuit: one hold without clamps, nothing read yet. */
  public static Job blank(String title, Circuit circuit) {
    return new Job(
        title, circuit, GaugeSpec.usual(), List.of(emptyTest(FIRST_TEST)), Map.of(), List.of());
  }

  /** Whether nothing was read, found or repaired yet. */
  public static boolean isBlank(Job job) {
    return job.findings().isEmpty()
        && job.upkeep().repairs().isEmpty()
        && job.tests().stream().allMatch(test -> test.log().readings().isEmpty());
  }

  private static HoldTest emptyTest(String id) {
    return HoldTest.of(id, Set.of(), new GaugeLog(id, List.of(), 0));
  }

  /**
   * @throws NoSuchElementException if there is none
   */
  public static HoldTest test(Job job, String id) {
    return job.tests().stream()
        .filter(test -> test.id().equals(id))
        .findFirst()
        .orElseThrow(() -> new NoSuchElementException("no test '" + id + "'"));
  }

  /** The job with one test changed. */
  public static Job change(Job job, String id, UnaryOperator<HoldTest> change) {
    return job.withTests(
        job.tests().stream()
            .map(test -> test.id().equals(id) ? change.apply(test) : test)
            .toList());
  }

  /** The job with one more test at the end, nothing read yet. */
  public static Job addTest(Job job, String id, Set<String> clamped) {
    List<HoldTest> tests = new ArrayList<>(job.tests());
    tests.add(HoldTest.of(id, clamped, new GaugeLog(id, List.of(), 0)));
    return job.withTests(tests);
  }

  public static Job removeTest(Job job, String id) {
    return job.withTests(job.tests().stream().filter(test -> !test.id().equals(id)).toList());
  }

  /** Whether a finding or a repair names a test. */
  public static boolean isNamed(Job job, String id) {
    return job.upkeep().repairs().stream().anyMatch(repair -> repair.afterTest().equals(id))
        || job.findings().stream()
            .anyMatch(finding -> moment(finding).test().equals(Optional.of(id)));
  }

  private static Moment moment(Finding finding) {
    if (finding instanceof JointLook look) {
      return look.when();
    }
    if (finding instanceof DropCount count) {
      return count.when();
    }
    return finding instanceof ReferenceHoseLook look ? look.when() : Moment.PRIMED;
  }

  /** An id that no test has, after {@code wanted}. */
  public static String freeId(Job job, String wanted) {
    Set<String> taken = Set.copyOf(job.tests().stream().map(HoldTest::id).toList());
    String id = wanted;
    for (int i = 2; taken.contains(id); i++) {
      id = wanted + " " + i;
    }
    return id;
  }

  public static Job titled(Job job, String title) {
    return with(job, title, job.circuit(), job.gauge());
  }

  public static Job withCircuit(Job job, Circuit circuit) {
    return with(job, job.title(), circuit, job.gauge());
  }

  public static Job withGauge(Job job, GaugeSpec gauge) {
    return with(job, job.title(), job.circuit(), gauge);
  }

  private static Job with(Job job, String title, Circuit circuit, GaugeSpec gauge) {
    return new Job(
        title,
        circuit,
        gauge,
        job.tests(),
        job.findings(),
        job.priors(),
        job.understood(),
        job.upkeep());
  }

  /** The log with one more reading, where its time places it. */
  public static GaugeLog withReading(GaugeLog log, Reading reading) {
    return withReadings(log, List.of(reading));
  }

  /** The log with more readings, each in its place. */
  public static GaugeLog withReadings(GaugeLog log, List<Reading> more) {
    List<Reading> readings = new ArrayList<>(log.readings());
    readings.addAll(more);
    return ordered(log, readings);
  }

  /** The log with one reading replaced, or taken out if {@code now} is null. */
  public static GaugeLog withReading(GaugeLog log, Reading before, Reading now) {
    List<Reading> readings = new ArrayList<>(log.readings());
    int index = readings.indexOf(before);
    if (index < 0) {
      return log;
    }
    readings.remove(index);
    if (now != null) {
      readings.add(index, now);
    }
    return ordered(log, readings);
  }

  private static GaugeLog ordered(GaugeLog log, List<Reading> readings) {
    readings.sort(Comparator.comparingDouble(Reading::time));
    return new GaugeLog(log.source(), readings, log.events(), log.pumpStop());
  }
}
