package holdcurve.training;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.LeakFault;
import holdcurve.file.CircuitReader;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.SuspectGroup;
import holdcurve.inference.answer.Verdict;
import holdcurve.inference.ranking.RankingService;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.part.Injector;
import holdcurve.record.finding.Finding;
import holdcurve.record.finding.JointLook;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.Job;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every fault at its usual size, on a car that differs from its description: after the tests and
 * looks that can tell it, it stands first, alone or with those that no test tells from it.
 */
class EachFaultRankedFirstTest {
  private static final FaultCatalogue CATALOGUE = FaultCatalogue.load();
  private static final Circuit CIRCUIT =
      CircuitReader.read(
          Path.of(
              System.getProperty("holdcurve.root", ".."),
              "scenarios/circuits/six-cylinder-return-line.circuit.json"));

  /** Nobody can call an injector tired whose flow when new isn't known. */
  private static final Circuit STATED =
      CIRCUIT.map(
          part ->
              part.kind() == Injector.KIND
                  ? part.with(Injector.STATIC_FLOW, Unit.MILLILITRE_PER_MINUTE.toSi(250))
                  : part);

  private static final long SEED = 20;

  static Stream<String> faults() {
    return CATALOGUE.showingInHold().faults().stream()
        .filter(fault -> !fault.sites(CIRCUIT).isEmpty())
        .map(LeakFault::id);
  }

  static Stream<String> faultsOfTheRun() {
    return Stream.of(
        "weak-pump", "clogged-filter", "blocked-return", "trapped-air", "tired-injector");
  }

  /**
   * Pump, filter, return, air and injectors speak before the pump stops: a whole run logged, and
   * fuel drawn off, are the tests for them.
   */
  @ParameterizedTest
  @MethodSource("faultsOfTheRun")
  void standsFirstByTheRun(String id) {
    LeakFault fault = CATALOGUE.byId(id).orElseThrow();
    TrainingRunUp car = new TrainingRunUp(STATED, fault, GaugeSpec.usual(), SEED);
    Job job =
        new Job("each", STATED, GaugeSpec.usual(), List.of(car.logged()), Map.of(), List.of())
            .withFindings(List.of(car.drawnOff(1.9e5, 1e5), car.drawnOff(1e5, 0.2e5)));
    assertFirst(
        id + "@" + fault.sites(CIRCUIT).get(0).id(),
        new RankingService(CATALOGUE).rank(job, 1, Progress.NONE));
  }

  @ParameterizedTest
  @MethodSource("faults")
  void standsFirst(String fault) {
    Secret secret = new Secret(List.of(new HiddenFault(fault, "", Double.NaN)), SEED);
    List<Step> steps = Steps.of(CIRCUIT);
    Exercise exercise =
        new Exercise("each", 1, "each", CIRCUIT, GaugeSpec.usual(), steps, 1e6, secret);
    TrainingSession session = new TrainingSession(exercise, CATALOGUE);
    steps.forEach(step -> session.take(step, session.even()));
    Ranking ranking =
        new RankingService(CATALOGUE).rank(session.job(steps.size()), 1, Progress.NONE);
    assertFirst(session.car().truth(), ranking);
  }

  /** No hold shows a return joint; a look after wiping does, since spilt fuel is gone then. */
  @Test
  void returnJointStandsFirstWhenWetAgain() {
    Secret secret = new Secret(List.of(new HiddenFault("return-side-joint", "", Double.NaN)), SEED);
    List<Step> steps =
        List.of(
            new Step.Hold(List.of(), 10),
            new Step.Hold(List.of("return-hose"), 10),
            new Step.LookAtJoints());
    Exercise exercise =
        new Exercise("each", 1, "each", CIRCUIT, GaugeSpec.usual(), steps, 1e6, secret);
    TrainingSession session = new TrainingSession(exercise, CATALOGUE);
    steps.forEach(step -> session.take(step, session.even()));
    RankingService service = new RankingService(CATALOGUE);
    assertEquals("none", service.rank(session.job(2), 1, Progress.NONE).suspects().get(0).id());
    Job looked = session.job(3).withFindings(inTheReturn(session.job(3).findings()));
    Ranking ranking = service.rank(looked, 1, Progress.NONE);
    assertFirst(session.car().truth(), ranking);
    double chance = ranking.suspects().get(0).probability();
    assertTrue(chance > 0.95, () -> chance + " " + looked.findings());
  }

  /** Who looks says at which end of a part: the regulator's other one is the rail's. */
  private static List<Finding> inTheReturn(List<Finding> findings) {
    return findings.stream()
        .map(JointLook.class::cast)
        .<Finding>map(
            look ->
                new JointLook(
                    look.part(),
                    Optional.of("return-start"),
                    look.wet(),
                    look.wiped(),
                    look.when()))
        .toList();
  }

  private static void assertFirst(String truth, Ranking ranking) {
    String first = PossibleAnswers.canonical(ranking.suspects().get(0).id());
    assertTrue(
        first.equals(truth)
            || ranking.groups().stream()
                .map(SuspectGroup::suspects)
                .anyMatch(group -> group.contains(first) && group.contains(truth)),
        () -> truth + " is hidden, but " + first + " stands first");
    assertNotEquals(Verdict.Kind.UNEXPLAINED, ranking.verdict().kind(), truth);
  }
}
