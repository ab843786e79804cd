package holdcurve.record.finding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.finding.CircuitState;
import holdcurve.inference.finding.FindingFacts;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What a mechanic sees is believed whatever the gauge shows. The bounds are what a mechanic may ask
 * for: a joint that is wet again after wiping leaks, one that was wet once leaks as a rule.
 */
class WetIsALeakTest {
  private static final Circuit OUTLINE = Cars.shipped("four-cylinder-outline");
  private static final Circuit SIX = Cars.shipped("six-cylinder-return-line");
  private static final Circuit LITTLE = Cars.outline(4, false, false);

  /** Falls by 1.2 bar in ten minutes. */
  private static final HoldTest FALLS = Cars.sinking(2.52, 1.31);

  private static final HoldTest SOUND = Cars.hold("base", Condition.sound(LITTLE), Set.of());

  private static final HoldTest FAST = Cars.sinking(2.5, 0.3);

  /** A check valve that leaks, told by a clamped feed hose: all of the fall is spoken for. */
  private static List<HoldTest> valve() {
    Condition leaking = Cars.with(SIX, "check-valve-seat", 0.3);
    return List.of(
        Cars.hold("base", leaking, Set.of()), Cars.hold("feed", leaking, Set.of("feed-hose")));
  }

  private static double pointedAt(Job job, Ranking ranking, Finding finding) {
    List<String> ids =
        FindingFacts.of(job).pointsAt(finding, Cars.CATALOGUE).stream()
            .map(CircuitState.Member::id)
            .toList();
    return Cars.probability(ranking, ids);
  }

  private static void assertBelieved(double least, Job job) {
    Ranking ranking = Cars.rank(job);
    double probability = pointedAt(job, ranking, job.findings().get(0));
    assertTrue(
        probability >= least,
        () -> job.findings().get(0).inWords() + ": " + probability + Cars.leading(ranking));
    assertNotEquals(Suspect.NONE, ranking.suspects().get(0).id());
  }

  private static JointLook again(String part) {
    return JointLook.of(part, true).afterWiping();
  }

  static Stream<Job> certain() {
    Finding hose = new ReferenceHoseLook(true, Moment.PRIMED);
    Finding[] drops = {
      DropCount.ofOne("injectors", 4, 27, 300),
      DropCount.ofOne("injectors", 1, 0, 300),
      DropCount.ofOne("injectors", 2, 1, 300),
      DropCount.ofOne("injectors", 3, 0, 300)
    };
    Stream<Job> alone =
        Stream.of(SOUND, FALLS, FAST)
            .flatMap(
                hold ->
                    Stream.of(
                        Cars.job(LITTLE, List.of(hold), again("rail-pipe")),
                        Cars.job(LITTLE, List.of(hold), again("injectors")),
                        Cars.job(LITTLE, List.of(hold), again("return-hose")),
                        Cars.job(LITTLE, List.of(hold), hose),
                        Cars.job(LITTLE, List.of(hold), drops)));
    Stream<Job> beside =
        Stream.of(
            Cars.job(OUTLINE, List.of(Cars.sinking(2.02, 0.82)), again("rail-pipe")),
            Cars.job(SIX, valve(), again("ring-line")),
            Cars.job(SIX, valve(), hose),
            Cars.job(SIX, valve(), drops));
    return Stream.concat(alone, beside);
  }

  @ParameterizedTest
  @MethodSource("certain")
  void leadsWhateverTheGaugeShows(Job job) {
    assertBelieved(0.95, job);
  }

  @Test
  void wetOnceLeaksAsARuleWhereTheHoldFallsToo() {
    JointLook rail = JointLook.of("rail-pipe", true);
    assertBelieved(0.8, Cars.job(LITTLE, List.of(FALLS), rail));
    assertBelieved(0.8, Cars.job(OUTLINE, List.of(Cars.sinking(2.02, 0.82)), rail));
    assertBelieved(0.8, Cars.job(OUTLINE, List.of(FALLS), rail));
    assertBelieved(0.8, Cars.job(LITTLE, List.of(FAST), JointLook.of("feed-hose", true)));
  }

  /** What counts as a clear drip is believed to be one, at the least such count. */
  @ParameterizedTest
  @MethodSource("leastDrips")
  void aClearDripLeads(DropCount count) {
    assertBelieved(0.95, Cars.job(Cars.outline(4, false, true), List.of(SOUND), count));
  }

  static Stream<DropCount> leastDrips() {
    return Stream.of(
            DropCount.ofOne("injectors", 4, 0, 120),
            DropCount.ofAll("injectors", 0, 300),
            DropCount.ofAll("cold-start-injector", 0, 180))
        .map(WetIsALeakTest::leastDrip);
  }

  private static DropCount leastDrip(DropCount of) {
    Circuit circuit = Cars.outline(4, false, true);
    for (int n = 1; n < 500; n++) {
      DropCount count = new DropCount(of.part(), of.number(), n, of.duration(), of.when());
      if (!FindingFacts.of(Cars.job(circuit, List.of(), count)).drips().isEmpty()) {
        return count;
      }
    }
    throw new IllegalStateException("no count is a drip");
  }

  /** A leak sits at one joint of its stretch, but its fuel runs along the hose. */
  @Test
  void twoWetJointsOfOneStretchAreOneLeak() {
    Job job = Cars.job(LITTLE, List.of(FALLS), again("feed-pipe"), again("filter"));
    assertBelieved(0.95, job);
    assertEquals("feed-side-joint@feed-start", Cars.rank(job).suspects().get(0).id());
  }

  /** Neither is used, so what is left is what the gauge says. */
  @Test
  void findingsThatContradictEachOtherSayNothing() {
    Job none = Cars.job(LITTLE, List.of(SOUND));
    Job both = none.withFindings(List.of(JointLook.of("feed-hose", true), JointLook.allDry()));
    Ranking ranking = Cars.rank(both);
    assertEquals(Cars.rank(none).suspects().get(0).probability(), first(ranking), 1e-9);
    assertEquals(1, FindingFacts.of(both).contradictions().size());
  }

  private static double first(Ranking ranking) {
    return ranking.suspects().get(0).probability();
  }
}
