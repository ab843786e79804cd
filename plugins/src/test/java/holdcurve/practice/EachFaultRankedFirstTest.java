package holdcurve.practice;

import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.circuit.Circuit;
import holdcurve.fault.FaultCatalogue;
import holdcurve.fault.LeakFault;
import holdcurve.file.CircuitReader;
import holdcurve.infer.Progress;
import holdcurve.infer.Ranking;
import holdcurve.infer.RankingService;
import holdcurve.infer.SuspectGroup;
import holdcurve.job.GaugeSpec;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every fault that a hold can show, at its usual size, on a car that differs from its description:
 * after every test and look there is, it stands first, alone or with those that no test tells from
 * it.
 */
class EachFaultRankedFirstTest {
  private static final FaultCatalogue CATALOGUE = FaultCatalogue.load();
  private static final Circuit CIRCUIT =
      CircuitReader.read(
          Path.of(
              System.getProperty("holdcurve.root", ".."),
              "scenarios/circuits/six-cylinder-return-line.circuit.json"));
  private static final long SEED = 20;

  static Stream<String> faults() {
    return CATALOGUE.showingInHold().faults().stream()
        .filter(fault -> !fault.sites(CIRCUIT).isEmpty())
        .map(LeakFault::id);
  }

  @ParameterizedTest
  @MethodSource("faults")
  void standsFirst(String fault) {
    Secret secret = new Secret(List.of(new HiddenFault(fault, "", Double.NaN)), SEED);
    List<Step> steps = Steps.of(CIRCUIT);
    Exercise exercise =
        new Exercise("each", 1, "each", CIRCUIT, GaugeSpec.usual(), steps, 1e6, secret);
    Session session = new Session(exercise, CATALOGUE);
    steps.forEach(step -> session.take(step, session.even()));
    Ranking ranking =
        new RankingService(CATALOGUE).rank(session.job(steps.size()), 1, Progress.NONE);
    String first = Suspicions.canonical(ranking.suspects().get(0).id());
    String truth = session.car().truth();
    assertTrue(
        first.equals(truth)
            || ranking.groups().stream()
                .map(SuspectGroup::suspects)
                .anyMatch(group -> group.contains(first) && group.contains(truth)),
        () -> truth + " is hidden, but " + first + " stands first");
  }
}
