package holdcurve.bench.flowsheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

class MatchedSetsTest {
  @Test
  void leavesTheOddOneOut() {
    MatchedSets matched = MatchedSets.of(Sheets.judge(100, 80, 101, 120, 121), 2, Sheets.LIMITS);
    assertEquals(List.of("2"), matched.left());
    assertEquals(List.of("1", "3"), matched.sets().get(0).ids());
    assertEquals(List.of("4", "5"), matched.sets().get(1).ids());
  }

  /** Against trying every pairing of six injectors. */
  @Property(tries = 200)
  void noPairingHasANarrowerWidestSet(
      @ForAll @Size(6) List<@DoubleRange(min = 100, max = 140) Double> flows) {
    double[] sorted = flows.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    MatchedSets matched = MatchedSets.of(Sheets.judge(sorted), 2, Sheets.LIMITS);
    double widest = matched.sets().stream().mapToDouble(s -> s.spread()).max().orElseThrow();
    assertEquals(bestPairing(sorted), widest, 1e-9);
  }

  private static double bestPairing(double[] flows) {
    if (flows.length == 0) {
      return 0;
    }
    double best = Double.POSITIVE_INFINITY;
    for (int partner = 1; partner < flows.length; partner++) {
      int left = partner;
      double[] rest =
          java.util.stream.IntStream.range(1, flows.length)
              .filter(i -> i != left)
              .mapToDouble(i -> flows[i])
              .toArray();
      double spread = 2 * Math.abs(flows[partner] - flows[0]) / (flows[partner] + flows[0]);
      best = Math.min(best, Math.max(spread, bestPairing(rest)));
    }
    return best;
  }

  @Test
  void refusesSetsThatAreTooLarge() {
    BenchReport report = Sheets.judge(100, 101);
    assertThrows(IllegalArgumentException.class, () -> MatchedSets.of(report, 3, Sheets.LIMITS));
  }

  /** Four of a set must go in, so one that is 12 % low goes with them, but not unsaid. */
  @Test
  void oneBeyondTheLimitIsFlagged() {
    MatchedSets matched = MatchedSets.of(Sheets.judge(100, 88, 100.5, 101), 4, Sheets.LIMITS);
    assertEquals(List.of("2 is 12 % low in this set: not matched."), matched.sets().get(0).flags());
    assertEquals(
        List.of(),
        MatchedSets.of(Sheets.judge(100, 99, 100.5, 101), 4, Sheets.LIMITS).sets().get(0).flags());
  }

  /** Two that are alike but far from the rest are a set of their own, and that is said. */
  @Test
  void oneBeyondTheLimitOfTheSheetIsFlaggedToo() {
    MatchedSets matched =
        MatchedSets.of(Sheets.judge(80, 80.5, 100, 100.5, 101, 101.5), 2, Sheets.LIMITS);
    assertEquals(2, matched.sets().get(0).flags().size());
    assertEquals(List.of(), matched.sets().get(1).flags());
  }
}
