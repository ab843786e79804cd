package holdcurve.record.finding;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.inference.answer.Ranking;
import holdcurve.inference.finding.CircuitState;
import holdcurve.inference.finding.FindingFacts;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Ports;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Whatever part is wet, at whichever end, has a place in the ranking, and that place leads. */
class EveryPartBelongsToAStretchTest {
  static Stream<Circuit> circuits() {
    Stream<Circuit> shipped =
        Stream.of(
                "four-cylinder-damper",
                "four-cylinder-no-damper",
                "four-cylinder-outline",
                "six-cylinder-return-line",
                "six-cylinder-ring-rail")
            .map(Cars::shipped);
    return Stream.concat(shipped, outlines());
  }

  static Stream<Circuit> outlines() {
    return IntStream.rangeClosed(3, 8)
        .boxed()
        .flatMap(
            cylinders ->
                Stream.of(
                    Cars.outline(cylinders, false, false),
                    Cars.outline(cylinders, true, false),
                    Cars.outline(cylinders, false, true),
                    Cars.outline(cylinders, true, true)));
  }

  private static List<JointLook> looks(Circuit circuit, boolean ends) {
    List<JointLook> looks = new ArrayList<>();
    for (Part part : circuit.parts()) {
      looks.add(look(part, Optional.empty()));
      if (ends && part.kind().ports() == Ports.TWO) {
        looks.add(look(part, Optional.of(part.from())));
        looks.add(look(part, Optional.of(part.to())));
      }
    }
    return looks;
  }

  private static JointLook look(Part part, Optional<String> end) {
    return new JointLook(Optional.of(part.id()), end, true, true, Moment.PRIMED);
  }

  @ParameterizedTest
  @MethodSource("circuits")
  void everyPartHasAPlace(Circuit circuit) {
    for (JointLook look : looks(circuit, true)) {
      assertFalse(pointedAt(Cars.job(circuit, List.of(), look)).isEmpty(), look::inWords);
    }
  }

  /** Looks that point at the same places are one to the likelihood, so one of each is ranked. */
  @ParameterizedTest
  @MethodSource("ranked")
  void thatPlaceLeads(Circuit circuit) {
    HoldTest hold = Cars.hold("base", Condition.sound(circuit), Set.of());
    Set<List<String>> done = new HashSet<>();
    for (JointLook look : looks(circuit, false)) {
      Job job = Cars.job(circuit, List.of(hold), look);
      List<String> ids = pointedAt(job);
      if (done.add(ids)) {
        Ranking ranking = Cars.rank(job);
        double probability = Cars.probability(ranking, ids);
        assertTrue(
            probability >= 0.95, () -> look.inWords() + ": " + probability + Cars.leading(ranking));
        assertTrue(
            ids.stream().anyMatch(List.of(ranking.suspects().get(0).id().split("\\+"))::contains),
            () -> look.inWords() + ":" + Cars.leading(ranking));
      }
    }
  }

  static Stream<Circuit> ranked() {
    return Stream.concat(
        circuits().limit(5),
        IntStream.rangeClosed(3, 8).mapToObj(n -> Cars.outline(n, n % 2 == 0, n % 3 == 0)));
  }

  private static List<String> pointedAt(Job job) {
    return FindingFacts.of(job).pointsAt(job.findings().get(0), Cars.CATALOGUE).stream()
        .map(CircuitState.Member::id)
        .toList();
  }
}
