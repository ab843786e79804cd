package holdcurve.training;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class ScoreTest {
  private static final List<String> ANSWERS = List.of("none", "a", "b", "c");
  private static final StatedOdds EVEN = StatedOdds.even(ANSWERS);

  private static StatedOdds odds(Map<String, Double> stated) {
    return StatedOdds.of(ANSWERS, stated);
  }

  @Test
  void sureWhereTheTestsAreSureIsAllAndAnEvenSpreadIsNothing() {
    StatedOdds sure = odds(Map.of("a", 1.0));
    assertEquals(Score.ODDS, Score.odds(sure, sure, EVEN), 1e-9);
    assertEquals(0, Score.odds(EVEN, sure, EVEN), 1e-9);
    assertEquals(0, Score.odds(EVEN, EVEN, EVEN), 1e-9);
  }

  /** Saying what everybody knows beforehand takes no test. */
  @Test
  void thePriorsEarnNothing() {
    StatedOdds prior = odds(Map.of("none", 0.5));
    StatedOdds evidence = odds(Map.of("none", 0.9));
    assertEquals(0, Score.odds(prior, evidence, prior), 1e-9);
    assertTrue(Score.odds(EVEN, evidence, prior) < 0);
    assertTrue(Score.odds(evidence, evidence, prior) > 0);
  }

  /** Nothing was found out: whoever is sure loses, right or wrong. */
  @Test
  void certaintyWithoutEvidenceCosts() {
    assertEquals(-Score.ODDS, Score.odds(odds(Map.of("a", 1.0)), EVEN, EVEN), 1e-9);
  }

  /** Brier's own score of a forecast of 0.7, 0.1, 0.1, 0.1 where it comes true: 0.12. */
  @Test
  void isBriersScoreOverThatOfAnEvenSpread() {
    assertEquals(
        Score.ODDS * (1 - 0.12 / 0.75),
        Score.odds(odds(Map.of("a", 0.7)), odds(Map.of("a", 1.0)), EVEN),
        1e-9);
  }

  /** What makes a rule proper (Gneiting and Raftery, J. Am. Stat. Assoc. 102 (2007) 359). */
  @Property(tries = 200)
  void nobodyGainsByOverstating(
      @ForAll @DoubleRange(min = 0, max = 1) double supported,
      @ForAll @DoubleRange(min = 0, max = 1) double said) {
    StatedOdds evidence = odds(Map.of("a", supported, "b", 1 - supported));
    assertTrue(
        Score.odds(odds(Map.of("a", said, "b", 1 - said)), evidence, EVEN)
            <= Score.odds(evidence, evidence, EVEN) + 1e-9);
  }

  @Test
  void testsCountByTimeWellSpentAndByWhatIsLeftOpen() {
    List<Score.Spent> half = List.of(new Score.Spent(1, 10), new Score.Spent(0, 10));
    assertEquals(Score.TESTS / 2.0, Score.tests(half, 2, 0), 1e-9);
    assertEquals(Score.TESTS / 4.0, Score.tests(half, 2, 2), 1e-9);
    assertEquals(0, Score.tests(List.of(), 0, 2), 1e-9);
  }

  @Test
  void aRightRepairCountsAsFarAsTheTestsPointedAtIt() {
    RepairScore right = new RepairScore(10, List.of("it"), List.of(), List.of(), List.of());
    Score score = new Score(30, 40, 10, 0);
    assertEquals(Score.REPAIR, score.with(right, 0.7).repair(), 1e-9);
    assertEquals(Score.REPAIR / 5.0, score.with(right, 0.1).repair(), 1e-9);
  }

  @Test
  void noTotalIsBelowNothing() {
    assertEquals(0, new Score(-60, 0, 0, 20).total());
    assertEquals(Score.MOST, new Score(Score.ODDS, Score.ODDS, Score.TESTS, Score.REPAIR).total());
  }

  @Test
  void certaintiesMustAddUp() {
    assertEquals(0.2, StatedOdds.of(ANSWERS, Map.of("a", 0.4)).shares().get("b"), 1e-12);
    String message =
        assertThrows(
                IllegalArgumentException.class,
                () -> StatedOdds.of(ANSWERS, Map.of("a", 0.7, "b", 0.6)))
            .getMessage();
    assertTrue(message.contains("add up to 130 %"), message);
  }

  /** From one in four to certainty: two bits. */
  @Test
  void learningIsCountedInBits() {
    assertEquals(2, StatedOdds.of(ANSWERS, Map.of("a", 1.0)).gainedOver(EVEN), 1e-12);
    assertEquals(0, EVEN.gainedOver(EVEN), 1e-12);
  }
}
